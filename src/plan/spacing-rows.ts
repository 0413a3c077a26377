import { COMPUTED, type Figure } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import { formatLength, formatLengthExact } from '../measure/format-length.js';
import type { Display, Mm } from '../measure/quantities.js';
import { snap } from '../measure/round.js';
import { lengthKey } from '../measure/tolerance.js';
import type { Model, Spread } from '../model/part.js';
import type { CutPieces } from './as-cut.js';
import { gapYear } from './gap-year.js';
import type { SpacingRow } from './plan.js';
import { gapsOf, withRemedy } from './row-remedy.js';
import type { Setting } from './setting.js';

/**
 * Each different even spacing of the model once: marks from the datum rounded one by one, the sum that
 * has to close, the spacer to use and how far it would drift if it alone were trusted. What is cut
 * decides which ways out are still open where a gap goes wrong.
 */
export function spacingRows(
  model: Model,
  setting: Setting,
  cut: readonly CutPieces[],
): readonly SpacingRow[] {
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
    const year = withRemedy(gapYear(first.gap, first.piece, setting), first, {
      model,
      setting,
      cut,
    });
    return [{ ...spacingRow(first, title, spreads.length, display), year }];
  });
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
