import { formatClock } from '../../../measure/clock.js';
import { formatMinutes } from '../../../measure/duration.js';
import { isOpenTime } from '../../../plan/open-time.js';
import type { Step } from '../../../plan/plan.js';
import { count } from '../../../text/plural.js';
import { cut, wrap } from '../../../text/wrap.js';
import { isUp, remainingMinutes } from '../../../workbook/timers.js';
import type { Build, Context } from '../../screen.js';
import { plainer } from '../../widgets/facts.js';
import { BLANK, plainRows, type Row } from '../../widgets/rows.js';
import { todaysVerdict } from '../step/next-move.js';
import { freeWork, leftToDo } from './meanwhile.js';

const MOST_MEANWHILE = 5;

/** What can be done until the first wait is over, or on a day that is none for glue or sealer. */
export function meanwhileRows(build: Build, at: Context): readonly Row[] {
  const waiting = build.progress.timers.filter(
    timer => !isUp(timer, at.nowMs) && !isOpenTime(timer),
  );
  const barred = barredSteps(build, at.nowMs);
  if (waiting.length === 0 && barred.length === 0) return [];
  const { nowMs } = at;
  const leftMinutes = Math.min(...waiting.map(timer => remainingMinutes(timer, nowMs)));
  const steps = [...waiting.map(({ step }) => step), ...barred];
  const { fits, partly, longer, loud } = freeWork(build, steps, { leftMinutes, nowMs });
  const { columns } = at.size;
  const rows = [
    ...fits.map(step => stepRow(step, '', { build, at })),
    ...partly.map(step => stepRow(step, ', some of it', { build, at })),
    ...longer.map(step => stepRow(step, ', longer than the wait', { build, at })),
  ];
  const quiet = quietRows(loud, { build, at });
  if (rows.length === 0) {
    return [
      BLANK,
      ...plainRows(wrap(nothingWords(waiting.length, loud.length), columns)),
      ...quiet,
    ];
  }
  const more = rows.length - MOST_MEANWHILE;
  const head =
    waiting.length === 0
      ? 'What can be done instead'
      : `Meanwhile, in ${formatMinutes(Math.ceil(leftMinutes))}, without moving what is clamped or wet`;
  return [
    BLANK,
    { text: cut(head, columns), tone: 'strong' },
    ...rows.slice(0, MOST_MEANWHILE),
    ...(more > 0 ? [{ text: `  and ${more} more: the list in a step is on the key l` }] : []),
    ...quiet,
  ];
}

function nothingWords(waiting: number, loud: number): string {
  if (loud > 0) return 'Nothing quiet can be done until then.';
  return waiting > 0
    ? 'Nothing else can be done until then: the rest needs these parts.'
    : 'Nothing else can be done before that: the rest needs these parts.';
}

/** Steps that want another day than this one. */
function barredSteps(build: Build, nowMs: number): readonly string[] {
  return build.plan.steps
    .filter(({ id }) => !build.progress.done.has(id))
    .filter(({ day }) => day && todaysVerdict(day, build, nowMs)?.kind === 'not-today')
    .map(({ id }) => id);
}

type Shown = { readonly build: Build; readonly at: Context };

function stepRow(step: Step, note: string, { build, at }: Shown): Row {
  const number = build.plan.steps.indexOf(step) + 1;
  const lasts = formatMinutes(leftToDo(step, build));
  const end = ` (about ${lasts}${note})`;
  const title = plainer(at.ascii)(`- step ${number}: ${step.title}`);
  return { text: cut(title, Math.max(10, at.size.columns - end.length)) + end };
}

function quietRows(loud: readonly Step[], { build, at }: Shown): readonly Row[] {
  if (loud.length === 0) return [];
  const until = formatClock(build.plan.time.noiseUntil);
  const text = `Saws and other loud tools rest after ${until}: ${count(loud.length, 'step')} left out.`;
  return plainRows(wrap(text, at.size.columns));
}
