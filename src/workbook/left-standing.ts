import { COMMON_PRACTICE, type Source } from '../measure/figure.js';
import { formatFigure } from '../measure/figure-text.js';
import type { Minutes } from '../measure/quantities.js';
import { glueDayOf } from '../plan/day-verdict.js';
import { isOpenTime } from '../plan/open-time.js';
import type { Plan, Step } from '../plan/plan.js';
import { toldToday } from '../plan/told-day.js';
import type { Leaving, LeavingLine } from './before-leaving.js';
import { clockWords } from './clock-words.js';
import type { Event } from './events.js';
import { standingEvents } from './taken-back.js';
import { endsAtMs, isUp } from './timers.js';
import type { Timer } from './workbook.js';

const GLUE_SOURCE: Source = {
  publication: 'PVA glue maker guides',
  place: 'no stress on a new joint for 24 h',
  standing: 'checked',
};

/** Waits under way, each with what it wants until then; open glue before all others. */
export function runningTimers({ progress, plan, nowMs, zone }: Leaving): readonly LeavingLine[] {
  return progress.timers
    .filter(timer => !isUp(timer, nowMs))
    .sort((one, other) => Number(isOpenTime(other)) - Number(isOpenTime(one)))
    .map(timer => {
      const until = clockWords(endsAtMs(timer), nowMs, zone);
      return {
        id: `timer:${timer.id}`,
        say: `${timer.name}: until ${until}. ${leftWords(timer, plan)}`,
        why: `Then: ${timer.then}`,
        source: COMMON_PRACTICE,
      };
    });
}

function leftWords(timer: Timer, plan: Plan): string {
  if (isOpenTime(timer)) return OPEN_UNTIL;
  return isWet(timer, plan) ? WET_UNTIL : CLAMPED_UNTIL;
}

const OPEN_UNTIL = 'Glue lies open: close and clamp this glue-up before you go.';
const WET_UNTIL = 'Nothing may touch the wet faces.';
const CLAMPED_UNTIL = 'Leave everything as it stands until then.';

/** When the newest glue has its full strength, by the cold of the day it was brushed on; none where it has it already. */
export function curedAtMs({ workbook, plan }: Pick<Leaving, 'workbook' | 'plan'>) {
  const events = standingEvents(workbook.events);
  const ends = events.flatMap((event, at) => {
    if (event.kind !== 'timer-started' || stepOf(event.step, plan)?.phase !== 'assemble') return [];
    const cures = cureMinutes(events.slice(0, at), event.atMs, plan);
    const lastsMinutes = Math.max(cures, event.lastsMinutes);
    return [endsAtMs({ startedAtMs: event.atMs, lastsMinutes })];
  });
  return ends.length === 0 ? undefined : Math.max(...ends);
}

/** From the brush to the full strength, at the coldest that was told for that day; the plan's where nobody told. */
function cureMinutes(before: readonly Event[], atMs: number, { glue }: Plan): Minutes {
  const glueTold = before.findLast(event => event.kind === 'day-told' && event.work === 'glue');
  if (glueTold?.kind !== 'day-told') return glue.cureTime.value;
  const told = toldToday({ glue: glueTold }, 'glue', atMs);
  const day = told && glueDayOf(told);
  return day?.verdict === 'today' ? day.fullCureHours * 60 : glue.cureTime.value;
}

/** Glue that is not at its full strength. */
export function curingGlue(leaving: Leaving): readonly LeavingLine[] {
  const { plan, nowMs, zone } = leaving;
  const until = curedAtMs(leaving);
  if (until === undefined || until <= nowMs) return [];
  const lowest = formatFigure(plan.glue.lowest, plan.display);
  return [
    {
      id: 'glue',
      say: `Glue is curing until ${clockWords(until, nowMs, zone)}: keep it dry and above ${lowest}, all night. Put no load on the joints.`,
      why: 'Glue that gets too cold before it has set dries chalky and stays weak; a new joint gains strength for about a day, longer in the cold.',
      source: GLUE_SOURCE,
    },
  ];
}

/** Does this wait stand for a wet coat? */
export function isWet({ step }: Timer, plan: Plan): boolean {
  return stepOf(step, plan)?.phase === 'finish';
}

function stepOf(id: string, { steps }: Plan): Step | undefined {
  return steps.find(step => step.id === id);
}
