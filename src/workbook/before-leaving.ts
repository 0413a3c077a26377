import { COMMON_PRACTICE, COMPUTED, type Source } from '../measure/figure.js';
import { formatFigure } from '../measure/figure-text.js';
import type { Plan, Step } from '../plan/plan.js';
import { count } from '../text/plural.js';
import { clockWords } from './clock-words.js';
import { neededNext } from './needed-next.js';
import { isBegun, isDone, tallyOf } from './next-step.js';
import { ragsOf } from './rags.js';
import { sessionTools } from './session-tools.js';
import { standingEvents } from './taken-back.js';
import { endsAtMs, isUp } from './timers.js';
import type { Progress, Timer, Workbook } from './workbook.js';

/** One thing to see to before the door is shut. */
export type LeavingLine = {
  readonly id: string;
  readonly say: string;
  readonly why: string;
  readonly source: Source;
  /** The session is not closed without it. */
  readonly must?: boolean;
  /** It was seen to already, by the journal. */
  readonly seen?: boolean;
};

export type Leaving = {
  readonly workbook: Workbook;
  readonly plan: Plan;
  readonly progress: Progress;
  /** Boards that are still to be bought besides, one text a section. */
  readonly toBuy: readonly string[];
  readonly nowMs: number;
  /** Time zone of the wall clock; the machine's own where none is given. */
  readonly zone?: string;
};

const GLUE_SOURCE: Source = {
  publication: 'PVA glue maker guides',
  place: 'no stress on a new joint for 24 h',
  standing: 'checked',
};

/**
 * What has to be looked after before leaving, most pressing first: rags, waits under way, glue that
 * cures, dew, the saw as it is set, boards that are cut, what to have by next time, tools.
 */
export function beforeLeaving(leaving: Leaving): readonly LeavingLine[] {
  return [
    ...ragsOf(leaving),
    ...runningTimers(leaving),
    ...curingGlue(leaving),
    ...dew(leaving),
    ...sawSetting(leaving),
    ...cutBoards(leaving),
    ...toBuy(leaving),
    ...sessionTools(leaving),
  ];
}

function runningTimers({ progress, plan, nowMs, zone }: Leaving): readonly LeavingLine[] {
  return progress.timers
    .filter(timer => !isUp(timer, nowMs))
    .map(timer => {
      const until = clockWords(endsAtMs(timer), nowMs, zone);
      return {
        id: `timer:${timer.id}`,
        say: `${timer.name}: until ${until}. ${isWet(timer, plan) ? WET_UNTIL : CLAMPED_UNTIL}`,
        why: `Then: ${timer.then}`,
        source: COMMON_PRACTICE,
      };
    });
}

const WET_UNTIL = 'Nothing may touch the wet faces.';
const CLAMPED_UNTIL = 'Leave everything as it stands until then.';

/** When the newest glue has its full strength; none where it has it already. */
export function curedAtMs({ workbook, plan }: Pick<Leaving, 'workbook' | 'plan'>) {
  const cures = plan.glue.cureTime.value;
  const glued = standingEvents(workbook.events)
    .filter(event => event.kind === 'timer-started')
    .filter(event => stepOf(event.step, plan)?.phase === 'assemble')
    .map(({ atMs, lastsMinutes }) =>
      endsAtMs({ startedAtMs: atMs, lastsMinutes: Math.max(cures, lastsMinutes) }),
    );
  return glued.length === 0 ? undefined : Math.max(...glued);
}

function curingGlue(leaving: Leaving): readonly LeavingLine[] {
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

/** What is wet, young or stands outdoors already must not be dewed on. */
function dew(leaving: Leaving): readonly LeavingLine[] {
  const { progress, plan, nowMs } = leaving;
  const wet = progress.timers.some(timer => !isUp(timer, nowMs) && isWet(timer, plan));
  const curing = (curedAtMs(leaving) ?? 0) > nowMs;
  return wet || curing ? [COVER] : [];
}

const COVER: LeavingLine = {
  id: 'cover',
  say: 'Cover it against rain and dew where it is not under a roof: a sheet that touches nothing wet, open at the sides.',
  why: 'Dew falls on clear nights, clouds wet sealer and softens young glue; a sheet closed all round makes dew of its own.',
  source: COMMON_PRACTICE,
};

/** A stop in the middle of its pieces would have to be found again. */
function sawSetting({ plan, progress }: Leaving): readonly LeavingLine[] {
  return plan.steps
    .filter(step => step.phase === 'cut' && step.big !== undefined && !isDone(step, progress))
    .flatMap(step => {
      const tally = tallyOf(step, progress);
      if (tally === undefined || tally.done === 0 || tally.done === tally.count) return [];
      const far = `${tally.done} of ${count(tally.count, tally.of)} cut`;
      return [
        {
          id: `set:${step.id}`,
          say: `The stop stands at ${step.big?.text ?? ''}, ${far}: leave it set, with a note on the saw.`,
          why: 'Set anew it comes out a little different, and the rest of these pieces with it.',
          source: COMMON_PRACTICE,
        },
      ];
    });
}

/** From the first cut until the last board is fixed. */
function cutBoards({ plan, progress }: Leaving): readonly LeavingLine[] {
  const begun = plan.steps.some(step => isCutting(step) && isBegun(step, progress));
  const fixed = plan.steps.filter(({ phase }) => phase === 'assemble');
  const loose = fixed.length === 0 || fixed.some(step => !isDone(step, progress));
  return begun && loose ? [STACK] : [];
}

const STACK: LeavingLine = {
  id: 'stack',
  say: 'Every cut piece has its mark. Stack them flat on stickers, one above the other every 16 to 24 in (40 to 60 cm), off the floor, out of the sun, with weight on top.',
  why: 'Boards from the yard go on drying and twist within days where they lie loose.',
  source: COMMON_PRACTICE,
};

/** Boards for pieces that no wood is left for, and what is used for the first time next. */
function toBuy(leaving: Leaving): readonly LeavingLine[] {
  const boards = leaving.toBuy;
  const needed = neededNext(leaving);
  return [
    ...(boards.length === 0
      ? []
      : [
          {
            id: 'buy',
            say: `Buy before next time: ${boards.join('; ')}.`,
            why: 'Wood was spoiled or measured otherwise than planned, and what is left on the rack is not enough for the pieces still to be cut.',
            source: COMPUTED,
          },
        ]),
    ...(needed.length === 0
      ? []
      : [
          {
            id: 'have',
            say: `Next time needs, for the first time: ${needed.join('; ')}. Buy what is missing.`,
            why: 'A session that stops for a missing bottle is a session lost.',
            source: COMPUTED,
          },
        ]),
  ];
}

function isCutting({ phase }: Step): boolean {
  return phase === 'cut' || phase === 'notch';
}

function isWet({ step }: Timer, plan: Plan): boolean {
  return stepOf(step, plan)?.phase === 'finish';
}

function stepOf(id: string, { steps }: Plan): Step | undefined {
  return steps.find(step => step.id === id);
}
