import { inches } from './inch.js';
import type { Display, Mm } from './quantities.js';
import { tidy } from './round.js';

export type LengthUnit = 'ft' | 'in' | 'm' | 'cm' | 'mm';

type Scale = { readonly system: Display['system']; readonly times: number };

/** Inch units in inches and metric ones in mm, so that a sum is converted once and stays exact. */
const SCALES: Readonly<Record<LengthUnit, Scale>> = {
  ft: { system: 'inch', times: 12 },
  in: { system: 'inch', times: 1 },
  m: { system: 'metric', times: 1000 },
  cm: { system: 'metric', times: 10 },
  mm: { system: 'metric', times: 1 },
};

const SPELLINGS: ReadonlyMap<string, LengthUnit> = new Map([
  ["'", 'ft'],
  ['ft', 'ft'],
  ['foot', 'ft'],
  ['feet', 'ft'],
  ['"', 'in'],
  ['in', 'in'],
  ['inch', 'in'],
  ['inches', 'in'],
  ['m', 'm'],
  ['meter', 'm'],
  ['meters', 'm'],
  ['metre', 'm'],
  ['metres', 'm'],
  ['cm', 'cm'],
  ['centimeter', 'cm'],
  ['centimeters', 'cm'],
  ['centimetre', 'cm'],
  ['centimetres', 'cm'],
  ['mm', 'mm'],
  ['millimeter', 'mm'],
  ['millimeters', 'mm'],
  ['millimetre', 'mm'],
  ['millimetres', 'mm'],
]);

export const UNIT_WORDS: readonly string[] = [...SPELLINGS.keys()].filter(word => word.length > 1);

/** The unit a word or prime stands for, undefined when it is none: `unitOf('feet')` is "ft". */
export function unitOf(word: string): LengthUnit | undefined {
  return SPELLINGS.get(word);
}

export function systemOf(unit: LengthUnit): Display['system'] {
  return SCALES[unit].system;
}

/** True when `unit` is coarser than `other`, as feet before inches. */
export function isCoarser(unit: LengthUnit, other: LengthUnit): boolean {
  return SCALES[unit].times > SCALES[other].times;
}

export type Amount = { readonly value: number; readonly unit: LengthUnit };

/** The sum in mm of amounts of one system: 5 ft and 3.5 in are 1612.9. */
export function totalLength(amounts: readonly Amount[], system: Display['system']): Mm {
  const total = amounts.reduce((sum, { value, unit }) => sum + value * SCALES[unit].times, 0);
  return tidy(system === 'inch' ? inches(total) : total);
}
