import { DRAIN_GAP, type GapTrouble, type YearOfGap } from '../materials/gap-today.js';
import { SEATING } from '../materials/seating.js';
import { sourceText } from '../measure/figure-text.js';
import type { Display } from '../measure/quantities.js';
import { onTheRule } from './on-tape.js';

const VERDICTS: Readonly<Record<GapTrouble['kind'], string>> = {
  closes: 'closes',
  'holds-water': 'holds water',
  finger: 'traps fingers',
  head: 'traps a head',
};

/** "fine", or what is wrong: "closes", "traps fingers". */
export function verdictOf({ troubles }: YearOfGap): string {
  if (troubles.length === 0) return 'fine';
  return troubles.map(({ kind }) => VERDICTS[kind]).join(', ');
}

/** A sentence for each trouble, with the rule it goes by; one sentence when there is none. */
export function troubleWords(gap: YearOfGap, display: Display): readonly string[] {
  if (gap.troubles.length === 0) {
    return ['Drains when wettest, and at no time holds a finger or a head by these rules.'];
  }
  return gap.troubles.map(trouble => TROUBLES[trouble.kind](gap, display));
}

type Worder = (gap: YearOfGap, display: Display) => string;

const TROUBLES: Readonly<Record<GapTrouble['kind'], Worder>> = {
  closes: ({ wet }, display) =>
    `Closes: when wettest the boards push each other by ${onTheRule(-wet, display)}.`,
  'holds-water': ({ wet }, display) =>
    `Holds water: ${onTheRule(wet, display)} when wettest, and ${onTheRule(DRAIN_GAP.value, display)} is wanted (${sourceText(DRAIN_GAP.source)}).`,
  finger: (gap, display) => trapWords('a finger', gap, display, SEATING.fingerTrap),
  head: (gap, display) => trapWords('a child’s head', gap, display, SEATING.headTrap),
};

function trapWords(
  what: string,
  { wet, dry }: YearOfGap,
  display: Display,
  { from, to, source }: (typeof SEATING)['fingerTrap' | 'headTrap'],
): string {
  const length = (mm: number) => onTheRule(mm, display);
  return `May hold ${what}: from ${length(wet)} to ${length(dry)} through the year, and ${length(from)} to ${length(to)} is to be kept out of (${sourceText(source)}).`;
}
