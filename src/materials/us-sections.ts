import { inches } from '../measure/inch.js';
import type { Section } from './section.js';
import { seen } from './sources.js';

/** Thickness in inches by nominal thickness: dry, then green (PS 20). */
const THICKNESS = {
  '1': [3 / 4, 25 / 32],
  '5/4': [1, 1 + 1 / 32],
  '2': [1 + 1 / 2, 1 + 9 / 16],
  '4': [3 + 1 / 2, 3 + 9 / 16],
  '6': [5 + 1 / 2, 5 + 1 / 2],
} as const;

/** Width in inches by nominal width: dry, then green (PS 20). */
const WIDTH = {
  '2': [1 + 1 / 2, 1 + 9 / 16],
  '3': [2 + 1 / 2, 2 + 9 / 16],
  '4': [3 + 1 / 2, 3 + 9 / 16],
  '6': [5 + 1 / 2, 5 + 5 / 8],
  '8': [7 + 1 / 4, 7 + 1 / 2],
  '10': [9 + 1 / 4, 9 + 1 / 2],
  '12': [11 + 1 / 4, 11 + 1 / 2],
} as const;

/** The nominal sizes kept here, each thickness with the widths that the standard prints for it. */
const NOMINAL = [
  ['1', ['2', '3', '4', '6', '8', '10', '12']],
  ['5/4', ['4', '6', '8']],
  ['2', ['2', '3', '4', '6', '8', '10', '12']],
  ['4', ['4', '6']],
] as const;

const PS20 = seen('ps20', 'nominal and minimum dressed sizes');

/** The 6x6 is a timber: one row of its own, 5-1/2 in square dry and green. */
const SIX_BY_SIX = { thickness: '6', width: '6' } as const;

function sectionOf(
  nominal: { thickness: keyof typeof THICKNESS; width: keyof typeof WIDTH },
  dry: boolean,
): Section {
  const column = dry ? 0 : 1;
  const timber = nominal.thickness === SIX_BY_SIX.thickness;
  const width = timber ? THICKNESS['6'][column] : WIDTH[nominal.width][column];
  return {
    name: `${nominal.thickness}x${nominal.width}`,
    thickness: inches(THICKNESS[nominal.thickness][column]),
    width: inches(width),
    family: dry ? 'us-dry' : 'us-green',
    sold: dry ? 'dressed, dry, 19 % moisture or less' : 'dressed, green, more than 19 % moisture',
    source: PS20,
  };
}

function family(dry: boolean): Section[] {
  const pairs = NOMINAL.flatMap(([thickness, widths]) =>
    widths.map(width => ({ thickness, width })),
  );
  return [...pairs, SIX_BY_SIX].map(nominal => sectionOf(nominal, dry));
}

/** American softwood sections, dressed dry and dressed green. */
export const US_SECTIONS: readonly Section[] = [...family(true), ...family(false)];
