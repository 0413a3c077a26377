import { sectionNamed } from '../materials/section.js';
import { usualLengths } from '../materials/store-lengths.js';
import { feet } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import { toUnits } from '../measure/round.js';
import { atMost, lessThan, sameLength } from '../measure/tolerance.js';
import type { CuttingProblem, Stock } from '../solve/cutting/problem.js';
import type { CutRow } from './plan.js';
import type { Setting } from './setting.js';

/** The boards of one section as a problem on whole units, and what its stock ids mean. */
export type SectionProblem = {
  readonly problem: CuttingProblem;
  readonly stock: ReadonlyMap<string, { readonly length: Mm; readonly onHand: boolean }>;
  readonly priced: boolean;
};

/**
 * Kerf, trim and piece lengths are rounded up and board lengths down to 1/320 mm, so no rounding can
 * make a plan that does not fit. Without prices a board costs its length, a hundredth of a millimeter
 * being a cent; the fewest boards at that length is the solver's own second wish.
 */
export function sectionProblem(
  rows: readonly CutRow[],
  section: string,
  setting: Setting,
): SectionProblem {
  const kerf = toUnits(setting.saw.kerf.value, 'up');
  const trimStart = toUnits(setting.trim + setting.saw.kerf.value, 'up');
  const ends = { trimStart, trimEnd: 0 };
  const longest = Math.max(...rows.map(row => row.length.value));
  const { lengths, priced } = storeOffer(section, longest, setting);
  const stock: Stock[] = [];
  const meaning = new Map<string, { length: Mm; onHand: boolean }>();
  for (const [at, board] of onHandOf(section, setting).entries()) {
    const id = `hand-${at + 1}`;
    meaning.set(id, { length: board.length, onHand: true });
    stock.push({
      id,
      length: toUnits(board.length, 'down'),
      cost: 0,
      available: board.count,
      ...ends,
    });
  }
  for (const { length, cents } of lengths) {
    const id = `store-${stock.length + 1}`;
    meaning.set(id, { length, onHand: false });
    stock.push({ id, length: toUnits(length, 'down'), cost: cents, ...ends });
  }
  const pieces = rows.map(row => ({
    id: row.mark,
    length: toUnits(row.length.value, 'up'),
    count: row.count,
  }));
  return { problem: { pieces, stock, kerf }, stock: meaning, priced };
}

type StoreLength = { readonly length: Mm; readonly cents: number };

function storeOffer(
  section: string,
  longest: Mm,
  setting: Setting,
): { lengths: StoreLength[]; priced: boolean } {
  const offered = setting.offers.filter(offer => sameSection(offer.section, section));
  const priced = offered.length > 0 && offered.every(offer => offer.cents !== undefined);
  if (priced) {
    return { priced, lengths: offered.map(({ length, cents = 0 }) => ({ length, cents })) };
  }
  const lengths =
    offered.length > 0 ? offered.map(offer => offer.length) : usualOf(section, longest, setting);
  const sorted = [...lengths].sort((a, b) => a - b);
  const different = sorted.filter(
    (length, at) => at === 0 || lessThan(sorted[at - 1] ?? 0, length),
  );
  return { priced, lengths: different.map(length => ({ length, cents: lengthCost(length) })) };
}

function lengthCost(length: Mm): number {
  return Math.round(length * 100);
}

/** What a car takes inside or on its roof; common practice. */
const CARRIED: Mm = feet(12);

/**
 * Without offers, what yards usually sell, up to what can be carried home; longer boards only where a
 * piece needs them.
 */
function usualOf(section: string, longest: Mm, { saw, trim }: Setting): readonly Mm[] {
  const known = sectionNamed(section);
  const lengths = known ? usualLengths(known) : [];
  const needed = longest + trim + saw.kerf.value;
  const enough = lengths.find(length => atMost(needed, length)) ?? CARRIED;
  return lengths.filter(length => atMost(length, Math.max(CARRIED, enough)));
}

/** Boards on hand of this section, equal ones together. */
function onHandOf(section: string, setting: Setting): readonly { length: Mm; count: number }[] {
  const merged: { length: Mm; count: number }[] = [];
  for (const board of setting.onHand.filter(it => sameSection(it.section, section))) {
    const same = merged.find(it => sameLength(it.length, board.length));
    if (same) same.count += board.count;
    else merged.push({ length: board.length, count: board.count });
  }
  return merged.sort((a, b) => a.length - b.length);
}

/** Two names of one section, `2x4` and `2 x 4`. */
export function sameSection(a: string, b: string): boolean {
  return sectionNamed(a)?.name === sectionNamed(b)?.name;
}
