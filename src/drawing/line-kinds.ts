import type { LineKind } from './strokes.js';

/** How a line is drawn. */
export type LineLook = {
  /** Number of the line type and its use in ISO 128-2:2020; not re-checked. */
  readonly type: string;
  /** Wide lines are twice as wide as narrow ones (ISO 128-2:2020; not re-checked). */
  readonly wide: boolean;
  /** Dash, gap, dash, gap … in widths of the line; none for a continuous line. */
  readonly dashes: readonly number[];
};

/** Lengths of ISO 128-2:2020, annex on line elements (not re-checked): in widths of the line. */
const DASH = 12;
const LONG_DASH = 24;
const GAP = 3;
const DOT = 0.5;

/** Line kinds as ISO 128-2 names them. The ends of a cutting plane are wide; its middle may be left out. */
export const LINE_LOOKS: Readonly<Record<LineKind, LineLook>> = {
  visible: { type: '01.2 continuous wide', wide: true, dashes: [] },
  hidden: { type: '02.1 dashed narrow', wide: false, dashes: [DASH, GAP] },
  center: {
    type: '04.1 long-dashed dotted narrow',
    wide: false,
    dashes: [LONG_DASH, GAP, DOT, GAP],
  },
  'cutting-plane': {
    type: '04.2 long-dashed dotted wide',
    wide: true,
    dashes: [LONG_DASH, GAP, DOT, GAP],
  },
  break: { type: '01.1 continuous narrow, with zigzags', wide: false, dashes: [] },
  hatch: { type: '01.1 continuous narrow', wide: false, dashes: [] },
  phantom: {
    type: '05.1 long-dashed double-dotted narrow',
    wide: false,
    dashes: [LONG_DASH, GAP, DOT, GAP, DOT, GAP],
  },
};
