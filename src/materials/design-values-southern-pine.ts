import { inches } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import { psi } from '../measure/stress.js';
import { atMost } from '../measure/tolerance.js';
import type { NdsValues } from './design-values-nds.js';
import { recalled } from './sources.js';

export type SouthernPineGrade = 'Select Structural' | 'No.1' | 'No.2';
type Size = '2x4' | '2x6' | '2x8';

/** Dressed widths up to which a size goes, green lumber included. */
const WIDEST: Readonly<Record<Size, Mm>> = {
  '2x4': inches(3.5625),
  '2x6': inches(5.625),
  '2x8': inches(7.5),
};

/**
 * Fb, Ft, Fc along in psi. The transcription at hand prints the metric edition, which agrees within
 * its rounding; the pound figures themselves are remembered.
 */
const ROWS: Readonly<
  Record<SouthernPineGrade, Readonly<Record<Size, readonly [number, number, number]>>>
> = {
  'Select Structural': {
    '2x4': [2350, 1650, 1900],
    '2x6': [2100, 1450, 1800],
    '2x8': [1950, 1350, 1700],
  },
  'No.1': { '2x4': [1500, 1000, 1650], '2x6': [1350, 875, 1550], '2x8': [1250, 800, 1500] },
  'No.2': { '2x4': [1100, 675, 1450], '2x6': [1000, 600, 1400], '2x8': [925, 550, 1350] },
};

/** E and Emin in million psi. */
const STIFFNESS: Readonly<Record<SouthernPineGrade, readonly [number, number]>> = {
  'Select Structural': [1.8, 0.66],
  'No.1': [1.6, 0.58],
  'No.2': [1.4, 0.51],
};

const SHEAR = 175;
const ACROSS = 565;

/**
 * Southern pine of a grade and width: NDS Supplement, Table 4B, where the size is in the value and no
 * size factor is added. Undefined for boards wider than a 2x8, which are not kept here.
 * @example southernPine('No.2', inches(3.5))?.bending // 7.58 N/mm2: 1100 psi
 */
export function southernPine(grade: SouthernPineGrade, width: Mm): NdsValues | undefined {
  const size = (Object.keys(WIDEST) as Size[]).find(name => atMost(width, WIDEST[name]));
  if (size === undefined) return undefined;
  const [bending, tension, along] = ROWS[grade][size];
  const [stiffness, least] = STIFFNESS[grade];
  return {
    kind: 'nds',
    group: 'Southern Pine',
    grade,
    bending: psi(bending),
    tension: psi(tension),
    shear: psi(SHEAR),
    across: psi(ACROSS),
    along: psi(along),
    stiffness: psi(stiffness * 1e6),
    stiffnessLeast: psi(least * 1e6),
    sized: true,
    source: recalled('nds-supplement', `Table 4B, Southern Pine, ${grade}, ${size}`),
  };
}

/** Every row, for the list of sources. */
export const SOUTHERN_PINE: readonly NdsValues[] = (
  Object.keys(ROWS) as SouthernPineGrade[]
).flatMap(grade =>
  Object.values(WIDEST).flatMap(width => {
    const row = southernPine(grade, width);
    return row === undefined ? [] : [row];
  }),
);
