import { formatLength } from '../../../measure/format-length.js';
import type { Display, Mm } from '../../../measure/quantities.js';
import { lessThan } from '../../../measure/tolerance.js';
import { cutPieces } from '../../../plan/as-cut.js';
import type { MeasureRow } from '../../../plan/measures.js';
import {
  finer,
  isOutOfTrue,
  MAY_BE_APART,
  type Readings,
  readingsOf,
} from '../../../plan/readings.js';
import { listWords } from '../../../text/list.js';
import { count } from '../../../text/plural.js';
import type { Event } from '../../../workbook/events.js';
import type { Build } from '../../screen.js';
import { stepAtHand } from '../step/shown-step.js';
import { outlook } from './outlook.js';
import type { Answer, Bench } from './state.js';

/** What follows if these readings count instead of the plan; nothing is written by asking. */
export function answerToLength(row: MeasureRow, readings: readonly Mm[], bench: Bench): Answer {
  const { build, at } = bench;
  const { display } = build.plan;
  const found = readingsOf(readings, row, display);
  const cut = cutPieces(build.plan, build.progress);
  const about = { atMs: at.nowMs, step: stepId(bench), what: row.id, readings, value: found.value };
  const taken: Event = { kind: 'size-measured', ...about, isTaken: true, cut };
  const left: Event = { kind: 'size-measured', ...about, isTaken: false, cut: [] };
  const measured = new Map(build.progress.found.measured).set(row.id, found.value);
  const verdict = verdictOf(row, readings, found, build);
  if (isOutOfTrue(found, row)) {
    const blocks = [{ title: 'What to do', lines: parallelLines(row, readings, display) }];
    return { verdict, blocks, take: [left], does: 'write it down, back to the step' };
  }
  const first = outOfTrueBlocks(row, found, display);
  const { stands, blocks } = outlook(build, measured, cut);
  const told = [...first, ...blocks];
  if (!stands)
    return { verdict, blocks: told, take: [left], does: 'write it down, leave the plan' };
  const leave = { does: 'leave as planned', events: [left] };
  return { verdict, blocks: told, take: [taken], does: 'take it over', leave };
}

/** The same distance at two places: nothing is cut by it before it is the same. */
function parallelLines(
  { planned }: MeasureRow,
  readings: readonly Mm[],
  display: Display,
): readonly string[] {
  const agree = `${readings.length > 2 ? 'all' : 'both'} agree within ${formatLength(MAY_BE_APART, display)}`;
  return [
    `Move one end until ${agree}, at ${formatLength(planned.value, display)} if that can be.`,
    'Then measure again at the same places and enter it.',
    'An average is not taken over: what is cut by it would fit at neither place.',
  ];
}

/** Of frames and boxes the tightest place counts; but one and the same may stand out of true, and can still be pushed. */
function outOfTrueBlocks(
  { kind }: MeasureRow,
  { spread }: Readings,
  display: Display,
): Answer['blocks'] {
  if (kind === 'board' || !lessThan(MAY_BE_APART, spread)) return [];
  const agree = formatLength(MAY_BE_APART, display);
  return [
    {
      title: 'First',
      lines: [
        `Are two of these readings of one frame or box? Then it is not parallel: while it can be moved, push it until they agree within ${agree}, and measure again.`,
      ],
    },
  ];
}

/** What follows if the planned length counts again. */
export function answerToDropping(row: MeasureRow, bench: Bench): Answer {
  const { build, at } = bench;
  const { display } = build.plan;
  const cut = cutPieces(build.plan, build.progress);
  const measured = new Map(build.progress.found.measured);
  measured.delete(row.id);
  const { stands, blocks } = outlook(build, measured, cut);
  if (!stands) return { verdict: 'It has to stay.', blocks, take: [], does: 'back' };
  return {
    blocks,
    verdict: `Planned again: ${formatLength(row.planned.value, display)}.`,
    take: [{ kind: 'measure-dropped', atMs: at.nowMs, step: stepId(bench), what: row.id, cut }],
    does: 'count on the plan again',
  };
}

function stepId({ build, at }: Bench): string {
  return stepAtHand(build, at)?.id ?? build.plan.steps.at(-1)?.id ?? '';
}

function verdictOf(
  row: MeasureRow,
  readings: readonly Mm[],
  found: Readings,
  { plan }: Build,
): string {
  const { value, spread } = found;
  const say = (mm: Mm) => formatLength(mm, finer(plan.display));
  const planned = `planned ${say(row.planned.value)}.`;
  if (isOutOfTrue(found, row))
    return `Not parallel: ${listWords(readings.map(say))}, ${say(spread)} apart; ${planned}`;
  const by = `Measured ${say(value)}, ${planned}`;
  if (readings.length < 2) return by;
  const apart = `${count(readings.length, 'reading')}, ${say(spread)} apart.`;
  const isMuch = row.kind === 'board' && lessThan(MAY_BE_APART, spread);
  return `${by} ${apart}${isMuch ? ' That is much: sort them, or measure each place.' : ''}`;
}
