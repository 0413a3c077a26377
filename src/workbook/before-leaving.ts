import { COMMON_PRACTICE, COMPUTED, type Source } from '../measure/figure.js';
import type { Step } from '../plan/plan.js';
import type { Phase } from '../recipe/recipe.js';
import { clockWords } from './clock-words.js';
import type { Event } from './events.js';
import { isDone } from './next-step.js';
import { standingEvents } from './taken-back.js';
import { thisSession } from './this-session.js';
import { endsAtMs, isUp } from './timers.js';
import type { Progress, Timer, Workbook } from './workbook.js';

/** One thing to see to before the door is shut. */
export type LeavingLine = {
  readonly id: string;
  readonly say: string;
  readonly why: string;
  readonly source: Source;
};

export type Leaving = {
  readonly workbook: Workbook;
  readonly steps: readonly Step[];
  readonly progress: Progress;
  /** Boards that are still to be bought after slips, one text a section. */
  readonly toBuy: readonly string[];
  readonly nowMs: number;
  /** Time zone of the wall clock; the machine's own where none is given. */
  readonly zone?: string;
};

const RAGS_SOURCE: Source = {
  publication: 'NFPA on oily rags',
  place: 'water-filled metal can with a tight lid',
  standing: 'checked',
};

const GLUE_SOURCE: Source = {
  publication: 'PVA glue maker guides',
  place: 'no stress on a new joint for 24 h',
  standing: 'checked',
};

const FULL_STRENGTH_MS = 24 * 3_600_000;

/**
 * What has to be looked after before leaving, most pressing first: rags, waits under way, glue that
 * cures, boards that are cut, tools.
 */
export function beforeLeaving(leaving: Leaving): readonly LeavingLine[] {
  return [
    ...rags(leaving),
    ...runningTimers(leaving),
    ...curingGlue(leaving),
    ...cutBoards(leaving),
    ...boardsToBuy(leaving),
    BATTERIES,
  ];
}

/** Nobody knows which finish was in the can: said whenever a coat was worked on in this session. */
function rags({ workbook, steps }: Leaving): readonly LeavingLine[] {
  const finished = standingEvents(thisSession(workbook.events)).some(
    event => isWork(event) && phaseOf(event.step, steps) === 'finish',
  );
  return finished ? [RAGS] : [];
}

function isWork(event: Event): event is Extract<Event, { readonly step: string }> {
  return (
    event.kind === 'step-done' || event.kind === 'piece-done' || event.kind === 'timer-started'
  );
}

function runningTimers({ progress, steps, nowMs, zone }: Leaving): readonly LeavingLine[] {
  return progress.timers
    .filter(timer => !isUp(timer, nowMs))
    .map(timer => {
      const until = clockWords(endsAtMs(timer), nowMs, zone);
      const wet = phaseOf(timer.step, steps) === 'finish';
      return {
        id: `timer:${timer.id}`,
        say: `${timer.name}: until ${until}. ${wet ? WET_UNTIL : CLAMPED_UNTIL}`,
        why: `Then: ${timer.then}`,
        source: COMMON_PRACTICE,
      };
    });
}

const WET_UNTIL = 'Nothing may touch the wet faces, and no rain or dew may fall on them.';
const CLAMPED_UNTIL = 'Leave everything as it stands until then.';

/** Glue is young for a day after its clamp timer was started, longer where the timer itself is. */
function curingGlue({ workbook, steps, nowMs, zone }: Leaving): readonly LeavingLine[] {
  const glued = standingEvents(workbook.events)
    .filter(event => event.kind === 'timer-started')
    .filter(event => phaseOf(event.step, steps) === 'assemble')
    .map(({ atMs, lastsMinutes }) => atMs + Math.max(FULL_STRENGTH_MS, lastsMinutes * 60_000));
  const until = Math.max(...glued);
  if (glued.length === 0 || until <= nowMs) return [];
  return [
    {
      id: 'glue',
      say: `Glue is curing until ${clockWords(until, nowMs, zone)}: keep it dry, out of dew and above the lowest temperature on its label, all night. Put no load on the joints.`,
      why: 'Glue that gets too cold before it has set dries chalky and stays weak; a new joint gains strength for about a day, longer in the cold.',
      source: GLUE_SOURCE,
    },
  ];
}

/** Pieces that no board is left for. */
function boardsToBuy({ toBuy }: Leaving): readonly LeavingLine[] {
  if (toBuy.length === 0) return [];
  return [
    {
      id: 'buy',
      say: `Buy before next time: ${toBuy.join('; ')}.`,
      why: 'Wood was spoiled, and what is left on the rack is not enough for the pieces still to be cut.',
      source: COMPUTED,
    },
  ];
}

/** From the first cut until the last board is fixed. */
function cutBoards({ steps, progress }: Leaving): readonly LeavingLine[] {
  const begun = steps.some(step => isCutting(step) && isBegun(step, progress));
  const fixed = steps.filter(({ phase }) => phase === 'assemble');
  const loose = fixed.length === 0 || fixed.some(step => !isDone(step, progress));
  return begun && loose ? [STACK] : [];
}

function isCutting({ phase }: Step): boolean {
  return phase === 'cut' || phase === 'notch';
}

function isBegun(step: Step, progress: Progress): boolean {
  return isDone(step, progress) || (progress.tallies.get(step.id) ?? 0) > 0;
}

function phaseOf(id: Timer['step'], steps: readonly Step[]): Phase | undefined {
  return steps.find(step => step.id === id)?.phase;
}

const RAGS: LeavingLine = {
  id: 'rags',
  say: 'Rags, brushes and gloves with oil or stain on them: into a metal can full of water with a tight lid. Never in a heap, never in the trash, never indoors overnight.',
  why: 'Drying oil makes heat; a crumpled rag can catch fire by itself hours later. The label says what this finish needs.',
  source: RAGS_SOURCE,
};

const STACK: LeavingLine = {
  id: 'stack',
  say: 'Stack the cut boards flat on stickers, one above the other every 16 to 24 in (40 to 60 cm), off the floor, out of the sun, with weight on top.',
  why: 'Boards from the yard go on drying and twist within days where they lie loose.',
  source: COMMON_PRACTICE,
};

const BATTERIES: LeavingLine = {
  id: 'batteries',
  say: 'Unplug the saw, take the batteries out of the tools and charge them where it does not freeze.',
  why: 'No tool starts by accident or in the wrong hands, and the next session does not begin with a wait.',
  source: COMMON_PRACTICE,
};
