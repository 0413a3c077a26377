import { COMPUTED, type Figure } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import { formatLength, formatLengthExact } from '../measure/format-length.js';
import type { Display, Mm } from '../measure/quantities.js';
import { snap } from '../measure/round.js';
import { lengthKey, sameLength } from '../measure/tolerance.js';
import type { Model, Spread } from '../model/part.js';
import { gapYear } from './gap-year.js';
import { onTheRule, onTheTape } from './on-tape.js';
import type { GapYear, SpacingRow } from './plan.js';
import type { Setting } from './setting.js';

/**
 * Each different even spacing of the model once: marks from the datum rounded one by one, the sum that
 * has to close, the spacer to use and how far it would drift if it alone were trusted.
 */
export function spacingRows(model: Model, setting: Setting): readonly SpacingRow[] {
  const { display } = setting;
  const alike = new Map<string, Spread[]>();
  for (const spread of model.spreads.filter(it => it.count > 0)) {
    const key = [
      spread.layout,
      spread.count,
      lengthKey(spread.over),
      lengthKey(spread.piece),
    ].join();
    alike.set(key, [...(alike.get(key) ?? []), spread]);
  }
  const nameByPath = new Map(model.parts.map(part => [part.path, part.name]));
  return [...alike.values()].flatMap(spreads => {
    const [first] = spreads;
    if (!first) return [];
    const name = nameByPath.get(first.spreads) ?? first.layout;
    const title = `${name} over ${formatLengthExact(first.over, display)}`;
    const year = withRemedy(gapYear(first.gap, first.piece, setting), first, display);
    return [{ ...spacingRow(first, title, spreads.length, display), year }];
  });
}

/** How the row or its pieces have to change so that as many of them leave the better gap. */
function withRemedy(year: GapYear, { gap, count, ends }: Spread, display: Display): GapYear {
  const longer = (year.better.value - gap) * gapsOf(count, ends);
  if (year.verdict === 'fine' || count === 0 || sameLength(longer, 0)) return year;
  const row = `make the row ${onTheTape(Math.abs(longer), display)}`;
  const narrower = `rip each ${onTheRule(longer / count, display)} narrower`;
  const change = longer > 0 ? `${row} longer, or ${narrower}` : `${row} shorter`;
  const words = `For that with ${count} pieces, ${change}.`;
  return { ...year, words: [...year.words, words] };
}

function spacingRow(
  spread: Spread,
  name: string,
  places: number,
  display: Display,
): Omit<SpacingRow, 'year'> {
  const { count, gap, over, piece, ends, endGap } = spread;
  const spacer = snap(gap, display.grid);
  const gaps = gapsOf(count, ends);
  const drift = (spacer - gap) * gaps;
  return {
    id: `${spread.layout}/${spread.spreads}`,
    name,
    count,
    over: figure(over, 'mm', 'the length that is filled', COMPUTED),
    piece: figure(piece, 'mm', 'width of one piece along the row', COMPUTED),
    gap: figure(gap, 'mm', gapWords(spread, display), COMPUTED),
    endGap: figure(endGap, 'mm', END_WORDS[ends], COMPUTED),
    ends,
    marks: spread.marks.map(mark => snap(mark, display.grid)),
    closing: closingWords(spread, display),
    spacer: spacerFigure(spacer, display),
    drift: figure(
      drift,
      'mm',
      `${gaps} gaps, each ${formatLengthExact(Math.abs(spacer - gap), display)} ${spacer < gap ? 'under' : 'over'}`,
      COMPUTED,
    ),
    beside: [count - 1, count + 1].flatMap(other => {
      const beside = gapFor(other, spread);
      return beside === undefined ? [] : [{ count: other, gap: beside }];
    }),
    places,
  };
}

function spacerFigure(spacer: Mm, display: Display): Figure {
  return figure(
    spacer,
    'mm',
    `the gap on the nearest mark, ${formatLength(spacer, display)}`,
    COMPUTED,
  );
}

const END_WORDS = {
  flush: 'the first and the last piece stand at the ends',
  gap: 'the same gap at both ends',
  half: 'half a gap at both ends',
} as const;

/** How many whole gaps lie in a row: n - 1, n + 1, or n with a half at each end. */
function gapsOf(count: number, ends: Spread['ends']): number {
  if (ends === 'flush') return count - 1;
  return ends === 'gap' ? count + 1 : count;
}

function gapFor(count: number, { over, piece, ends }: Spread): Mm | undefined {
  const gaps = gapsOf(count, ends);
  if (count < 1 || gaps < 1) return undefined;
  const gap = (over - count * piece) / gaps;
  return gap >= 0 ? gap : undefined;
}

function gapWords({ over, piece, count, ends }: Spread, display: Display): string {
  const length = (mm: Mm) => formatLengthExact(mm, display);
  return `(${length(over)} - ${count} x ${length(piece)}) / ${gapsOf(count, ends)} gaps, ${END_WORDS[ends]}`;
}

function closingWords({ over, piece, count, ends, gap }: Spread, display: Display): string {
  const gaps = gapsOf(count, ends);
  const sum = count * piece + gaps * gap;
  const length = (mm: Mm) => formatLengthExact(mm, display);
  return `${count} x ${length(piece)} + ${gaps} x ${length(gap)} = ${length(sum)} of ${length(over)}`;
}
