import { type BoardYear, boardYear } from '../materials/board-year.js';
import { gapToday, yearOfGap } from '../materials/gap-today.js';
import { figure } from '../measure/figure-text.js';
import { formatLength, formatLengthExact } from '../measure/format-length.js';
import type { Mm } from '../measure/quantities.js';
import { troubleWords, verdictOf } from './gap-words.js';
import { onTheRule } from './on-tape.js';
import type { GapYear } from './plan.js';
import type { Setting } from './setting.js';

/**
 * What becomes of a gap between boards of this width, each held in its middle: today with boards as dry as
 * they were sold, in the wettest and in the driest time of the place.
 */
export function gapYear(gap: Mm, piece: Mm, setting: Setting): GapYear {
  const { species, dryness, swing, display } = setting;
  const wood = { size: piece, across: 'width', wood: species, grain: 'unknown' } as const;
  const moisture = dryness.moisturePercent.value;
  const year = boardYear(wood, moisture, swing);
  const shown = yearOfGap(gap, year);
  const better = gapToday(year).set.now;
  return {
    today: figure(
      gap,
      'mm',
      `set with boards of about ${moisture} % moisture`,
      dryness.moisturePercent.source,
    ),
    wettest: figure(shown.wet, 'mm', growth(gap, year.swell, setting, year), year.source),
    driest: figure(shown.dry, 'mm', shrinking(gap, year, setting), year.source),
    better: figure(
      better,
      'mm',
      `drains at ${swing.wettest.percent.toFixed(1)} % and holds no finger at ${swing.driest.percent.toFixed(1)} %; on the tape ${formatLength(better, display)}`,
      year.source,
    ),
    verdict: verdictOf(shown),
    words: [
      ...troubleWords(shown, display),
      ...(shown.troubles.length === 0
        ? []
        : [`Set today, ${onTheRule(better, display)} would go well all year.`]),
    ],
  };
}

function growth(gap: Mm, swell: Mm, { display, swing }: Setting, { wet }: BoardYear): string {
  const length = (mm: Mm) => formatLengthExact(mm, display);
  return `${length(gap)} less ${length(swell)} that a board grows to ${swing.wettest.percent.toFixed(1)} % (${swing.wettest.when}); ${wet.why}`;
}

function shrinking(gap: Mm, { shrink }: BoardYear, { display, swing }: Setting): string {
  const length = (mm: Mm) => formatLengthExact(mm, display);
  return `${length(gap)} and ${length(shrink)} that a board shrinks to ${swing.driest.percent.toFixed(1)} % (${swing.driest.when})`;
}
