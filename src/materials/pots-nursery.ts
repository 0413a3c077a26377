import { inches } from '../measure/inch.js';
import type { CubicMm, Milliliters, Mm } from '../measure/quantities.js';
import type { Pot } from './pot.js';
import { type Sourced, sourced } from './sourced.js';
import { recalled, seen } from './sources.js';

/** A nursery container class, "#5": a name for a range of volumes, not a number of gallons. */
export type NurseryClass = {
  readonly id: string;
  /** What may be sold under this class. */
  readonly range: Sourced<{ readonly least: CubicMm; readonly most: CubicMm }>;
  /** What one grower's pots really hold; left out where the list has none. */
  readonly holds?: Sourced<Milliliters>;
};

function cubicInches(n: number): CubicMm {
  return n * inches(1) ** 3;
}

function range(least: number, most: number, standing: 'seen' | 'recalled'): NurseryClass['range'] {
  const source =
    standing === 'seen'
      ? seen('ansi-z60', 'container classes #1 to #5, cubic inches')
      : recalled('ansi-z60', 'container classes #7 to #25, cubic inches');
  return sourced({ least: cubicInches(least), most: cubicInches(most) }, source);
}

function holds(liters: number): Sourced<Milliliters> {
  return sourced(liters * 1000, seen('nursery-volumes', 'declared true volume'));
}

export const NURSERY_CLASSES: readonly NurseryClass[] = [
  { id: '#1', range: range(152, 251, 'seen'), holds: holds(2.8) },
  { id: '#2', range: range(320, 474, 'seen'), holds: holds(6) },
  { id: '#3', range: range(628, 742, 'seen'), holds: holds(9) },
  { id: '#5', range: range(785, 1242, 'seen'), holds: holds(14.9) },
  { id: '#7', range: range(1337, 1790, 'recalled'), holds: holds(24.6) },
  { id: '#10', range: range(2080, 2646, 'recalled'), holds: holds(34.1) },
  { id: '#15', range: range(2768, 3696, 'recalled'), holds: holds(54.9) },
  { id: '#20', range: range(4520, 5152, 'recalled'), holds: holds(74.2) },
  { id: '#25', range: range(5775, 6861, 'recalled'), holds: holds(104.5) },
];

function listed(n: number): Sourced<Mm> {
  return sourced(inches(n), seen('nursery-diameters', 'top diameters'));
}

function charted(n: number): Sourced<Mm> {
  return sourced(inches(n), seen('nursery-chart', 'sizes of classes #7 and #10'));
}

function recalledSize(n: number): Sourced<Mm> {
  return sourced(inches(n), recalled('pot-catalogs', 'nursery containers'));
}

/** Sizes of the usual nursery containers. */
export const NURSERY_POTS: readonly Pot[] = [
  nursery('#1', recalledSize(6.5), recalledSize(6.5), 5.25),
  nursery('#2', listed(8.75), recalledSize(8.5), 7.25),
  nursery('#3', listed(11), recalledSize(9.5), 9),
  nursery('#5', listed(10.75), recalledSize(11.5), 9),
  nursery('#7', listed(14), charted(11.5), 11.5),
  nursery('#10', charted(15.75), charted(15), 13.5),
  nursery('#15', listed(17.75), recalledSize(15.5), 15),
];

function nursery(id: string, top: Sourced<Mm>, height: Sourced<Mm>, bottom: number): Pot {
  return {
    id,
    name: `nursery container ${id}`,
    shape: 'round',
    top,
    height,
    bottom: recalledSize(bottom),
  };
}
