import { formatLength } from '../../../measure/format-length.js';
import { inches } from '../../../measure/inch.js';
import type { Mm } from '../../../measure/quantities.js';
import { lessThan } from '../../../measure/tolerance.js';
import { cutPieces } from '../../../plan/as-cut.js';
import type { MeasureRow } from '../../../plan/measures.js';
import { finer, type Readings, readingsOf } from '../../../plan/readings.js';
import { count } from '../../../text/plural.js';
import type { Event } from '../../../workbook/events.js';
import type { Build } from '../../screen.js';
import { stepAtHand } from '../step/shown-step.js';
import { outlook } from './outlook.js';
import type { Answer, Bench } from './state.js';

/** Readings further apart than this are boards to be sorted, or a frame out of true; common practice. */
const WIDE_APART: Mm = inches(1 / 16);

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
  const { stands, blocks } = outlook(build, measured, cut);
  if (!stands) return { verdict, blocks, take: [left], does: 'write it down, leave the plan' };
  const leave = { does: 'leave as planned', events: [left] };
  return { verdict, blocks, take: [taken], does: 'take it over', leave };
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
  { planned }: MeasureRow,
  readings: readonly Mm[],
  { value, spread }: Readings,
  { plan }: Build,
): string {
  const say = (mm: Mm) => formatLength(mm, finer(plan.display));
  const by = `Measured ${say(value)}, planned ${say(planned.value)}.`;
  if (readings.length < 2) return by;
  const apart = `${count(readings.length, 'reading')}, ${say(spread)} apart.`;
  return `${by} ${apart}${lessThan(WIDE_APART, spread) ? ' That is much: sort them, or measure each place.' : ''}`;
}
