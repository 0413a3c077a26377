import { type AgeBand, type HelperShare, helperShare } from '../materials/helper-ages.js';
import { COMMON_PRACTICE, type Figure } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import type { Minutes } from '../measure/quantities.js';
import type { SplitStep } from './glue-rows.js';
import type { Step } from './plan.js';

/** Those who build: the helper's age, or nobody beside the lead. */
export type Crew = { readonly helper: AgeBand | undefined };

/** Looking, fetching and tidying beside the work that is counted; common practice. */
const AROUND = 1.25;

/**
 * What a shared step takes of the time of one: not half of it with two, since one of them often waits; common
 * practice. Where the helper may not hold its tools they save the lead the marking, fetching and clamping.
 */
const WITH_TWO: Readonly<Record<HelperShare, number>> = { all: 0.55, some: 0.75, none: 1 };

/** Longer waits are left to fall between sessions, or other work is done meanwhile; common practice. */
export const STOOD_OUT: Minutes = 45;

/** Talking, measuring the place, buying and handing over last as long as they last. */
const TALK: readonly Step['phase'][] = ['plan', 'buy', 'hand-over'];

/** The steps before the first session: they are not done in the garage. */
export function isInGarage({ phase }: Pick<Step, 'phase'>): boolean {
  return phase !== 'plan' && phase !== 'buy';
}

type Given = {
  readonly crew: Crew;
  readonly build: readonly Step[];
  /** Its glue-ups, where it has some. */
  readonly glueUps: Pick<SplitStep, 'count' | 'kinds'> | undefined;
};

/**
 * How long a step keeps those who do it, from the minutes that its counts come to for one person. `step.who` is what
 * the recipe says: a step of the helper that the lead has to stand beside goes no faster for it.
 */
export function lastingOf(step: Step, { crew, build, glueUps }: Given): Figure {
  const { phase, who, minutes } = step;
  const talk = TALK.includes(phase);
  const share =
    crew.helper === undefined || who !== 'both' ? undefined : helperShare(step, crew.helper);
  const around = talk ? 1 : AROUND;
  const shared = talk || share === undefined ? 1 : WITH_TWO[share];
  const stood = stoodOut(step, build);
  const words = [
    minutes.because,
    ...(talk ? [] : ['a quarter more for fetching and tidying']),
    ...(talk || share === undefined ? [] : [SHARE_WORDS[share]]),
    ...(stood === 0 ? [] : [`${stood} min of it stood out beside it`]),
  ];
  const counted = minutes.value * around * shared;
  const atGlue = glueUps === undefined ? 0 : gluedMinutes(glueUps);
  const gluing = atGlue > counted ? [GLUE_WORDS] : [];
  const whole = Math.max(1, Math.round(Math.max(counted, atGlue) + stood));
  return figure(whole, 'min', [...words, ...gluing].join(', '), COMMON_PRACTICE);
}

const GLUE_WORDS = 'no less than its glue-ups take one after the other';

/**
 * Glue-ups follow one another: each is closed before the next is begun, and what the next needs is fetched between.
 * Each is told in whole minutes of the longest of its step, and their sum is no more than this either.
 */
function gluedMinutes({ count, kinds }: Pick<SplitStep, 'count' | 'kinds'>): Minutes {
  const gluing = kinds.reduce((sum, { count: times, minutes }) => sum + times * minutes.value, 0);
  const told = Math.max(...kinds.map(({ minutes }) => Math.ceil(minutes.value - 1e-9)));
  return Math.max(gluing * AROUND, told * count.value);
}

const SHARE_WORDS: Readonly<Record<HelperShare, string>> = {
  all: 'two people at it take a little over half of it',
  some: 'a quarter less since the helper marks, fetches and holds',
  none: 'no less with a helper who needs somebody beside them',
};

/** Short waits that belong to the step itself, such as sealer soaking in before it is wiped back. */
function stoodOut({ timers }: Step, build: readonly Step[]): Minutes {
  return timers
    .filter(({ id, minutes }) => minutes < STOOD_OUT && build.every(it => !it.after.includes(id)))
    .reduce((sum, { minutes }) => sum + minutes, 0);
}
