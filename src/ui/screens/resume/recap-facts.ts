import { count } from '../../../text/plural.js';
import { clockWords } from '../../../workbook/clock-words.js';
import { type HalfDone, type Recap, recap } from '../../../workbook/recap.js';
import { timerWords } from '../../../workbook/timers.js';
import type { Build, Context } from '../../screen.js';
import type { NamedText } from '../../widgets/facts.js';
import { boardFacts } from './board-facts.js';
import { forecastFacts } from './forecast-facts.js';
import { lastFacts } from './last-facts.js';
import { nextFacts } from './next-facts.js';
import { readyParts } from './ready-parts.js';
import { dayFacts, glueFacts, ragFacts } from './today-facts.js';

/** Of what was begun long ago only so much is told. */
const MOST_HALF_DONE = 3;

/** Where a build was left, in the order in which it matters to somebody who comes back. */
export function recapFacts(
  build: Build,
  { nowMs, looking }: Pick<Context, 'nowMs' | 'looking'>,
): readonly NamedText[] {
  const { workbook, plan, progress } = build;
  const told = recap(workbook, plan.steps, progress, nowMs);
  return [
    ...lastFacts(told, nowMs),
    ...noteFacts(told, nowMs),
    ...(looking ? [] : ragFacts(build)),
    ...told.ranOut.map(({ timer }) => ({
      name: 'Time is up',
      text: `${timer.name}, ${timerWords(timer, nowMs)}. ${timer.then}`,
    })),
    ...told.running.map(({ timer }) => ({
      name: 'Waiting',
      text: `${timer.name}: ${timerWords(timer, nowMs)}. Then: ${timer.then}`,
    })),
    ...boardFacts(build),
    ...glueFacts(build, nowMs),
    ...nextFacts(build),
    ...dayFacts(build, nowMs),
    ...forecastFacts(build, nowMs),
    ...told.halfDone.slice(0, MOST_HALF_DONE).flatMap(halfDoneFacts),
    ...readyFacts(build),
  ];
}

function noteFacts({ note }: Recap, nowMs: number): readonly NamedText[] {
  if (note === undefined) return [];
  return [{ name: 'Your note', text: `${note.text} (${clockWords(note.atMs, nowMs)})` }];
}

function halfDoneFacts({ title, tally, checksMade, checksInAll }: HalfDone): readonly NamedText[] {
  const parts = [
    ...(tally === undefined ? [] : [`${tally.done} of ${count(tally.count, tally.of)}`]),
    ...(checksMade > 0 ? [`${checksMade} of ${count(checksInAll, 'check')}`] : []),
  ];
  return parts.length === 0 ? [] : [{ name: 'Half done', text: `${title}: ${parts.join(', ')}` }];
}

function readyFacts(build: Build): readonly NamedText[] {
  const ready = readyParts(build);
  if (ready.length === 0) return [];
  const words = ready.map(({ mark, name, count: pieces }) => `${pieces} x ${mark} ${name}`);
  return [{ name: 'Lies ready', text: words.join(', ') }];
}
