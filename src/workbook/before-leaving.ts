import { COMMON_PRACTICE, COMPUTED, type Source } from '../measure/figure.js';
import type { Plan, Step } from '../plan/plan.js';
import { count } from '../text/plural.js';
import { curedAtMs, curingGlue, isWet, runningTimers } from './left-standing.js';
import { neededNext } from './needed-next.js';
import { isBegun, isDone, tallyOf } from './next-step.js';
import { ragsOf } from './rags.js';
import { sessionTools } from './session-tools.js';
import { isUp } from './timers.js';
import type { Progress, Workbook } from './workbook.js';

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
