import type { BoardYear } from '../../materials/board-year.js';
import { DRAIN_GAP, type GapToday, gapToday, yearOfGap } from '../../materials/gap-today.js';
import { SEATING } from '../../materials/seating.js';
import { ANSWERED, type Figure } from '../../measure/figure.js';
import { figure } from '../../measure/figure-text.js';
import { formatLength, formatLengthExact } from '../../measure/format-length.js';
import type { Display, Mm } from '../../measure/quantities.js';
import { troubleWords, verdictOf } from '../../plan/gap-words.js';
import type { Answered, Given, WorkResult, WorkRule } from './rule.js';
import { swingWords } from './season-options.js';
import { oneWayWords, YEAR_OPTIONS, yearGiven } from './year-given.js';

/** `notchbook work gap`: the gap to set between boards today. */
export const GAP_RULE: WorkRule = {
  name: 'gap',
  say: 'the gap to set between boards today, for a whole year of weather',
  example:
    'notchbook work gap --width 5.5in --wood redwood --grain flat --today 12 --place "wet coast"',
  options: [
    {
      name: 'width',
      kind: 'length',
      say: 'width of one board',
      example: '5.5in',
      least: 1,
      most: 2000,
    },
    {
      name: 'gap',
      kind: 'length',
      say: 'a gap to judge, in place of the one to set',
      example: '1/4in',
      usual: '',
      least: 0,
      most: 1000,
    },
    ...YEAR_OPTIONS,
  ],
  work,
};

function work(given: Given): WorkResult {
  const width = given.number('width');
  const read = yearGiven(given, width);
  if (!read.ok) return { ok: false, problems: [`${read.problem} ${read.hint}`] };
  const { year, swing } = read.value;
  const { display } = given;
  const advice = gapToday(year);
  const shown = given.has('gap') ? yearOfGap(given.number('gap'), year) : advice.set;
  const now = given.has('gap')
    ? figure(shown.now, 'mm', 'the gap that is asked about', ANSWERED)
    : gapFigure(advice, year, display);
  return {
    ok: true,
    figures: [
      { name: 'gap', say: 'gap today', figure: now },
      ...limits(advice, year, display),
      ...yearFigures(shown.now, year, { width, display }),
    ],
    more: { verdict: verdictOf(shown), kind: advice.kind },
    notes: [
      ...troubleWords(shown, display),
      ...adviceWords(advice, given),
      ...oneWayWords(year),
      `Boards wetter and drier than these end alike when near edges are set ${formatLengthExact(width + shown.now, display)} apart, not by a spacer.`,
      swingWords(swing),
      'For boards that are each held in the middle. Not checked: local rules for guards and decks.',
    ],
  };
}

function gapFigure(
  { set, least, most, kind }: GapToday,
  year: BoardYear,
  display: Display,
): Figure {
  const length = (mm: Mm) => formatLengthExact(mm, display);
  const because =
    kind === 'narrow'
      ? `the middle of ${length(least)} and ${length(most)}, on the tape ${formatLength(set.now, display)}`
      : `${length(year.swell)} of growth beyond gaps that hold a finger, all year; on the tape ${formatLength(set.now, display)}`;
  return figure(set.now, 'mm', because, year.source);
}

/** Between which gaps the year goes well. */
function limits(
  { least, most, kind }: GapToday,
  year: BoardYear,
  display: Display,
): readonly Answered[] {
  const length = (mm: Mm) => formatLengthExact(mm, display);
  const narrow = kind === 'narrow';
  const upper = narrow ? SEATING.fingerTrap.from : SEATING.headTrap.from;
  const from = narrow
    ? `${length(DRAIN_GAP.value)} left when wettest + ${length(year.swell)} of growth, not below 0`
    : `just over ${length(SEATING.fingerTrap.to)} when wettest + ${length(year.swell)} of growth`;
  return [
    { name: 'least', say: 'at least', figure: figure(least, 'mm', from, year.source) },
    {
      name: 'most',
      say: 'less than',
      figure: figure(
        most,
        'mm',
        `${length(upper)} when driest - ${length(year.shrink)} of shrinking`,
        year.source,
      ),
    },
  ];
}

function yearFigures(
  now: Mm,
  year: BoardYear,
  { width, display }: { width: Mm; display: Display },
): readonly Answered[] {
  const length = (mm: Mm) => formatLengthExact(mm, display);
  const sum = (factor: string) => `${length(now)} - ${length(width)} x ${factor}`;
  return [
    {
      name: 'gap_wet',
      say: 'when wettest',
      figure: figure(
        now - year.swell,
        'mm',
        `${sum(year.wet.factor)}; ${year.wet.why}`,
        year.source,
      ),
    },
    {
      name: 'gap_dry',
      say: 'when driest',
      figure: figure(now + year.shrink, 'mm', sum(year.dry.factor), year.source),
    },
  ];
}

function adviceWords(advice: GapToday, given: Given): readonly string[] {
  if (advice.kind === 'narrow') return [];
  const { drains } = advice;
  const length = (mm: Mm) => formatLengthExact(mm, given.display);
  return [
    `These boards move too much for a gap below ${length(SEATING.fingerTrap.from)} all year: ${length(drains.now)} today would drain but open to ${length(drains.dry)}. Narrower, quarter-sawn or drier boards would do.`,
  ];
}
