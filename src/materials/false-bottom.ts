import type { Kilograms, Mm } from '../measure/quantities.js';
import { type FillId, fillWeight } from './loads.js';
import { type Inside, spaceOf } from './soil.js';

export type FalseBottom = {
  /** From floor to rim. */
  readonly inside: Inside;
  readonly soil: Mm;
  readonly belowRim: Mm;
  /** Bars that the screen lies on. */
  readonly bar: Mm;
  readonly bars: number;
  readonly fill: FillId;
};

export type BarMarks = {
  /** Both from the floor up. Below zero there is no room for bars. */
  readonly barTop: Mm;
  readonly barUnderside: Mm;
  /** Soaked soil that one bar carries, as heavy as it gets. */
  readonly eachCarries: Kilograms;
};

/**
 * Where the bars of a false bottom go, as marks on the inside wall.
 * @example 17 in deep, 8 in of soil, 1 in below the rim, 1-1/2 in bars // top 8 in, underside 6-1/2 in
 */
export function falseBottom({ inside, soil, belowRim, bar, bars, fill }: FalseBottom): BarMarks {
  const barTop = inside.depth - soil - belowRim;
  const { heavy } = fillWeight(spaceOf({ ...inside, depth: soil }), fill);
  return { barTop, barUnderside: barTop - bar, eachCarries: heavy / bars };
}
