import { formatLengthExact } from '../../measure/format-length.js';
import type { Display } from '../../measure/quantities.js';
import type { BoardBox, BoardSize } from '../../model/frame-of-board.js';
import type { Part } from '../../model/part.js';
import type { Span } from '../sight.js';
import { BLANK, type Drawing, type Label, type Stroke } from '../strokes.js';
import { drawSide, type Side } from './faces-of-piece.js';
import { type LyingPiece, lyingPiece } from './lying.js';

export type TemplateInput = {
  /** What is marked with it: `B, E`. */
  readonly marks: string;
  readonly part: Part;
  readonly display: Display;
};

/**
 * A paper to be folded round the board, at true size: its face, its upper edge, its back, with the waste
 * hatched and the end of the board at the left. For the end with the first notch, or for a notch
 * farther in, from a board's width before it.
 */
export function drawTemplate({ marks, part, display }: TemplateInput): Drawing {
  const whole = lyingPiece(part);
  const { size } = whole;
  const zone = zoneOf(whole);
  const piece: LyingPiece = {
    size,
    wood: whole.wood.flatMap(box => inZone(box, zone)),
    waste: whole.waste.flatMap(box => inZone(box, zone)),
  };
  const foldTop = size.across + size.through;
  const height = foldTop + size.across;
  const sides = foldedSides(size).map(side => drawSide(piece, side, marks));
  const width = zone.to - zone.from;
  const fold = (v: number): Stroke => ({
    from: { u: 0, v },
    to: { u: width, v },
    kind: 'phantom',
    bright: false,
  });
  const title = `Marking template for ${marks}, true size`;
  const starts = formatLengthExact(zone.from, display);
  return {
    ...BLANK,
    title,
    trueSize: true,
    width,
    height,
    strokes: [
      ...sides.flatMap(({ strokes }) => strokes).filter(it => !liesOn(it, [size.across, foldTop])),
      fold(size.across),
      fold(foldTop),
    ],
    patches: sides.flatMap(({ patches }) => patches),
    labels: [
      label('Face', width, size.across / 4),
      label('Edge', width, size.across + size.through / 2),
      label('Back', width, height - size.across / 4),
    ],
    notes: [
      'Print at 100 %, measure the ruler first, cut out, fold along the dash-dot lines.',
      zone.from === 0
        ? 'The left border is the end of the board.'
        : `The left border lies ${starts} from the end of the board.`,
      'Hatched is waste. The board that lies in it has the last word: mark from it where it differs.',
    ],
    inWords: `${title}: face, edge and back of the board, to be folded round it.`,
  };
}

/** Face, edge and back one above the other, as they lie on a paper that goes round the board. */
function foldedSides({ across: wide, through: thick }: BoardSize): readonly Side[] {
  const face: Side = ({ along, across, through }) => ({
    on: { u: along, v: across },
    depth: -through.to,
  });
  const edge: Side = ({ along, across, through }) => ({
    on: { u: along, v: { from: wide + thick - through.to, to: wide + thick - through.from } },
    depth: -across.to,
  });
  const top = 2 * wide + thick;
  const back: Side = ({ along, across, through }) => ({
    on: { u: along, v: { from: top - across.to, to: top - across.from } },
    depth: through.from,
  });
  return [face, edge, back];
}

/** From a notch's end of the board to half a width past it; farther in, half a width on both sides. */
function zoneOf({ size, waste }: LyingPiece): Span {
  const [first] = waste;
  if (first === undefined) throw new Error('a template needs a notch');
  const { from, to } = first.along;
  const beside = size.across / 2;
  return {
    from: from - 2 * beside <= 0 ? 0 : from - beside,
    to: Math.min(size.along, to + beside),
  };
}

function inZone(box: BoardBox, zone: Span): readonly BoardBox[] {
  const from = Math.max(box.along.from, zone.from) - zone.from;
  const to = Math.min(box.along.to, zone.to) - zone.from;
  return from < to ? [{ ...box, along: { from, to } }] : [];
}

/** A level stroke on one of these lines. */
function liesOn({ from, to }: Stroke, lines: readonly number[]): boolean {
  return from.v === to.v && lines.some(line => Math.abs(line - from.v) < 1e-6);
}

function label(text: string, width: number, v: number): Label {
  return { text, at: { u: width * 0.8, v }, bright: false };
}
