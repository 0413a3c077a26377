import { formatMinutes } from '../../../measure/duration.js';
import type { DayVerdict } from '../../../plan/day-verdict.js';
import { hanging } from '../../../text/page-lines.js';
import { timerWords } from '../../../workbook/timers.js';
import { plainer } from '../../widgets/facts.js';
import type { Row } from '../../widgets/rows.js';
import { timerById, todaysVerdict, wasStarted } from './next-move.js';
import type { Work } from './work-rows.js';

/** The day as it was told, and the timers of this step: still to start, running, up. */
export function timerRows(work: Work, columns: number): readonly Row[] {
  const verdict = verdictOf(work);
  const day =
    verdict === undefined || verdict.kind === 'not-today'
      ? []
      : verdictRows(verdict, work, columns);
  return [...day, ...waitRows(work, columns)];
}

/** Why the glue or the sealer stays shut today: it stands above everything else of the step. */
export function notTodayRows(work: Work, columns: number): readonly Row[] {
  const verdict = verdictOf(work);
  return verdict?.kind === 'not-today' ? verdictRows(verdict, work, columns) : [];
}

function verdictOf({ step, build, at }: Work): DayVerdict | undefined {
  return step.day && todaysVerdict(step.day, build, at.nowMs);
}

function verdictRows(verdict: DayVerdict, { at }: Work, columns: number): readonly Row[] {
  const words = [verdict.words, verdict.when].filter(it => it !== '').join(' ');
  return hanging('Today  ', plainer(at.ascii)(words), columns).map(
    (text): Row => (verdict.kind === 'not-today' ? { text, tone: 'heed' } : { text }),
  );
}

function waitRows({ step, build, at }: Work, columns: number): readonly Row[] {
  return step.timers.flatMap(timer => {
    const running = timerById(timer.id, build);
    const stopped = wasStarted(timer, build)
      ? 'stopped'
      : `${formatMinutes(timer.minutes)}, not started`;
    const words = running === undefined ? stopped : timerWords(running, at.nowMs);
    const text = plainer(at.ascii)(`${timer.name}: ${words}`);
    return hanging('Timer  ', text, columns).map(
      (line): Row => (running === undefined ? { text: line } : { text: line, tone: 'heed' }),
    );
  });
}
