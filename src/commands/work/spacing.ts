import { compareCounts } from '../../model/spacing-compare.js';
import { centersOf, checkMark } from '../../model/spacing-marks.js';
import type { Given, WorkResult, WorkRule } from './rule.js';
import { spacingFigures } from './spacing-figures.js';
import { layOut } from './spacing-layout.js';
import { SPACING_OPTIONS, spacingAsk } from './spacing-options.js';
import {
  besideWords,
  checkWords,
  driftWords,
  lapsWords,
  marksWords,
  stackWords,
  trapWords,
} from './spacing-words.js';

/** `notchbook work spacing`: equal pieces along a length, with every mark from one end. */
export const SPACING_RULE: WorkRule = {
  name: 'spacing',
  say: 'equal pieces along a length: the gap, and every mark from one end',
  example: 'notchbook work spacing --over 96in --piece 5.5in --count 12 --ends flush',
  options: SPACING_OPTIONS,
  work,
};

function work(given: Given): WorkResult {
  const ask = spacingAsk(given);
  const { display } = given;
  const laid = layOut(ask, display);
  if (!laid.ok) return { ok: false, problems: [laid.problem] };
  const { spacing, spreadAt, laps } = laid.layout;
  const { marks, count, gap } = spacing;
  const centers = centersOf(marks, ask.piece);
  // A single flush piece has no gap to compare.
  const compared = compareCounts(count, spreadAt).filter(
    it => it.count > 1 || ask.way !== 'flush' || count === 1,
  );
  const check = checkMark(marks, ask.over);
  const steps = ask.way === 'gap' ? count : count - 1;
  return {
    ok: true,
    figures: spacingFigures(ask, laid.layout, display),
    more: {
      count,
      ends: ask.way,
      centers_mm: centers,
      marks_mm: marks,
      beside: compared.map(it => ({
        count: it.count,
        gap_mm: it.spacing.gap,
        end_gap_mm: it.spacing.endGap,
      })),
      ...(laps === undefined ? {} : { backing_marks_mm: laps.backingMarks }),
    },
    notes: [
      `Near edges: ${marksWords(marks, display)}`,
      `Centers: ${marksWords(centers, display)}`,
      ...lapsWords(laps, display),
      ...besideWords(compared, count, display),
      ...driftWords(gap, steps, display),
      ...(given.has('stack') ? stackWords(given.number('stack'), { gap, steps }, display) : []),
      ...(check === undefined ? [] : [checkWords(check, display)]),
      ...trapWords(gap, display),
    ],
  };
}
