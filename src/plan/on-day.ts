import { glueOf } from '../materials/glue.js';
import { formatMinutes } from '../measure/duration.js';
import type { Display } from '../measure/quantities.js';
import { formatTemperature } from '../measure/temperature.js';
import { glueDayOf } from './day-verdict.js';
import { GLUE } from './glue-plan.js';
import type { Plan, Step, StepTimer } from './plan.js';
import type { ToldDay } from './told-day.js';

/** Times of glue at the warmth that was told, with the sum. */
type GlueToday = {
  readonly openMinutes: number;
  readonly clampMinutes: number;
  readonly cureMinutes: number;
  readonly because: string;
};

/**
 * The plan on a day that was told: waits of glue by the coldest hour to come, working time by the warmth now. Where
 * it was not told, or is no day for glue, the times stay those of the plan.
 */
export function onDay(plan: Plan, told: ToldDay | undefined): Plan {
  const today = told && glueToday(told, plan.display);
  if (today === undefined) return plan;
  return {
    ...plan,
    steps: plan.steps.map(step => (step.day === 'glue' ? glued(step, today) : step)),
  };
}

function glueToday(told: ToldDay, display: Display): GlueToday | undefined {
  const day = glueDayOf(told);
  if (day?.verdict !== 'today' || told.now === undefined) return undefined;
  const { clampMinutes: usual, timesAt } = glueOf(GLUE);
  const coldest = Math.min(told.now, told.coldest ?? told.now);
  const say = (celsius: number) => formatTemperature(celsius, display);
  const seen =
    told.coldest === undefined
      ? `${say(coldest)} now, the night not told`
      : `${say(coldest)} at the coldest`;
  return {
    openMinutes: day.openMinutes,
    clampMinutes: day.clampMinutes,
    cureMinutes: day.fullCureHours * 60,
    because: `${formatMinutes(usual.value)} at ${say(timesAt)}, twice as long for each ${display.system === 'metric' ? '10 °C' : '18 °F'} colder; told today: ${seen}`,
  };
}

function glued(step: Step, today: GlueToday): Step {
  return {
    ...step,
    timers: step.timers.map(timer => timerToday(timer, today)),
    settings: step.settings.map(setting =>
      setting.name === CLOSE_WITHIN
        ? { ...setting, text: `${today.openMinutes} min of the first brush stroke` }
        : setting,
    ),
  };
}

/** Name of the setting that tells the open time. */
export const CLOSE_WITHIN = 'Close within';

function timerToday(
  timer: StepTimer,
  { clampMinutes, cureMinutes, because }: GlueToday,
): StepTimer {
  if (timer.lasts === 'glue-clamp') return { ...timer, minutes: clampMinutes, because };
  if (timer.lasts === 'glue-cure') return { ...timer, minutes: cureMinutes, because };
  return timer;
}
