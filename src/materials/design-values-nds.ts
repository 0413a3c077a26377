import type { Source } from '../measure/figure.js';
import { type Megapascals, psi } from '../measure/stress.js';
import { recalled, seen } from './sources.js';

/** Reference design values of one grade, before any adjustment, in N/mm2. */
export type NdsValues = {
  readonly kind: 'nds';
  readonly group: string;
  readonly grade: string;
  /** Bending, tension, shear, compression across the grain, compression along it. */
  readonly bending: Megapascals;
  readonly tension: Megapascals;
  readonly shear: Megapascals;
  readonly across: Megapascals;
  readonly along: Megapascals;
  readonly stiffness: Megapascals;
  /** For stability of posts; not used for sag. */
  readonly stiffnessLeast: Megapascals;
  /** True where the table is by size already, so that no size factor is added. */
  readonly sized: boolean;
  readonly source: Source;
};

/** Grade; source; Fb, Ft, Fv, Fc across, Fc along in psi; E and Emin in million psi. */
type Row = readonly [
  grade: string,
  source: (place: string) => Source,
  bending: number,
  tension: number,
  shear: number,
  across: number,
  along: number,
  stiffness: number,
  least: number,
];

const SEEN = (place: string) => seen('lumber-values', place);
const QUOTED = (place: string) => seen('redwood-values', place);
const RECALLED = (place: string) => recalled('nds-supplement', place);

/** Dimension lumber 2 to 4 in thick, 2 in and wider, as printed. */
const ROWS: Readonly<Record<string, readonly Row[]>> = {
  'Douglas Fir-Larch': [
    ['Select Structural', SEEN, 1500, 1000, 180, 625, 1700, 1.9, 0.69],
    ['No.1 & Btr', SEEN, 1200, 800, 180, 625, 1550, 1.8, 0.66],
    ['No.1', SEEN, 1000, 675, 180, 625, 1500, 1.7, 0.62],
    ['No.2', SEEN, 900, 575, 180, 625, 1350, 1.6, 0.58],
    ['No.3', SEEN, 525, 325, 180, 625, 775, 1.4, 0.51],
  ],
  'Hem-Fir': [
    ['Select Structural', SEEN, 1400, 925, 150, 405, 1500, 1.6, 0.58],
    ['No.1 & Btr', SEEN, 1100, 725, 150, 405, 1350, 1.5, 0.55],
    ['No.1', SEEN, 975, 625, 150, 405, 1350, 1.5, 0.55],
    ['No.2', SEEN, 850, 525, 150, 405, 1300, 1.3, 0.47],
    ['No.3', SEEN, 500, 300, 150, 405, 725, 1.2, 0.44],
  ],
  'Spruce-Pine-Fir': [
    ['Select Structural', SEEN, 1150, 700, 135, 425, 1400, 1.5, 0.55],
    ['No.1/No.2', SEEN, 875, 450, 135, 425, 1150, 1.4, 0.51],
    ['No.3', SEEN, 500, 250, 135, 425, 650, 1.2, 0.44],
  ],
  Redwood: [
    ['Clear Structural', RECALLED, 1750, 1000, 160, 650, 1850, 1.4, 0.51],
    ['Select Structural', RECALLED, 1350, 800, 160, 650, 1500, 1.4, 0.51],
    ['No.1', RECALLED, 975, 575, 160, 650, 1200, 1.3, 0.47],
    ['No.1, open grain', RECALLED, 775, 450, 160, 425, 900, 1.1, 0.4],
    ['No.2', RECALLED, 925, 525, 160, 650, 950, 1.2, 0.44],
    ['No.2, open grain', RECALLED, 725, 425, 160, 425, 700, 1.0, 0.37],
    ['Select Structural, open grain', QUOTED, 1100, 625, 160, 425, 1100, 1.1, 0.4],
  ],
  'Western Cedars': [
    ['Select Structural', RECALLED, 1000, 600, 155, 425, 1000, 1.1, 0.4],
    ['No.1', RECALLED, 725, 425, 155, 425, 825, 1.0, 0.37],
    ['No.2', RECALLED, 700, 425, 155, 425, 650, 1.0, 0.37],
    ['No.3', RECALLED, 400, 250, 155, 425, 375, 0.9, 0.33],
  ],
  'Northern Species': [
    ['Select Structural', RECALLED, 975, 425, 110, 350, 1100, 1.1, 0.4],
    ['No.1/No.2', RECALLED, 625, 275, 110, 350, 850, 1.1, 0.4],
  ],
  'Eastern Softwoods': [
    ['Select Structural', RECALLED, 1250, 575, 140, 335, 1200, 1.2, 0.44],
    ['No.1', RECALLED, 775, 350, 140, 335, 1000, 1.1, 0.4],
    ['No.2', RECALLED, 575, 275, 140, 335, 825, 1.1, 0.4],
  ],
  'Northern White Cedar': [
    ['Select Structural', RECALLED, 775, 450, 120, 370, 750, 0.8, 0.29],
    ['No.1', RECALLED, 575, 325, 120, 370, 600, 0.7, 0.26],
    ['No.2', RECALLED, 550, 325, 120, 370, 475, 0.7, 0.26],
  ],
  'White Oak': [
    ['Select Structural', RECALLED, 1200, 700, 220, 800, 1100, 1.1, 0.4],
    ['No.1', RECALLED, 875, 500, 220, 800, 900, 1.0, 0.37],
    ['No.2', RECALLED, 850, 500, 220, 800, 700, 0.9, 0.33],
  ],
};

/** Visually graded dimension lumber by species group and grade: NDS Supplement, Table 4A. */
export const NDS_4A: readonly NdsValues[] = Object.entries(ROWS).flatMap(([group, rows]) =>
  rows.map(row => valuesOf(group, row)),
);

function valuesOf(group: string, row: Row): NdsValues {
  const [grade, source, bending, tension, shear, across, along, stiffness, least] = row;
  return {
    kind: 'nds',
    group,
    grade,
    bending: psi(bending),
    tension: psi(tension),
    shear: psi(shear),
    across: psi(across),
    along: psi(along),
    stiffness: psi(stiffness * 1e6),
    stiffnessLeast: psi(least * 1e6),
    sized: false,
    source: source(`Table 4A, ${group}, ${grade}`),
  };
}

/**
 * The row of a species group and grade, or undefined when the table has none.
 * @example ndsValues('Hem-Fir', 'No.2') // bending 850 psi, E 1.3 million psi
 */
export function ndsValues(group: string, grade: string): NdsValues | undefined {
  return NDS_4A.find(row => row.group === group && row.grade === grade);
}
