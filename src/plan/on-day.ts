import { glueOf } from '../materials/glue.js';
import { formatMinutes } from '../measure/duration.js';
import type { Display } from '../measure/quantities.js';
import { formatTemperature } from '../measure/temperature.js';
import { glueDayOf } from './day-verdict.js';
import { GLUE } from './glue-plan.js';
import { glueUpRow } from './glue-rows.js';
import { BESIDE_GLUE, besideWords, glueUpLines } from './glue-up-words.js';
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
  const steps = plan.steps.map(step =>
    step.day === 'glue' ? glued(step, today, plan.glueUps) : step,
  );
  if (today.openMinutes === plan.glue.openTime.value) return { ...plan, steps };
  const glueUps = rowsToday(plan, today);
  return { ...plan, glueUps, steps: steps.map(step => splitToday(step, glueUps)) };
}

/** In the heat fewer joints fit one glue-up, and the clamps go on sooner. */
function rowsToday(plan: Plan, { openMinutes }: GlueToday): Plan['glueUps'] {
  const { model, glue, steps } = plan;
  const openTime = { ...glue.openTime, value: openMinutes };
  return plan.glueUps.map(row => {
    const step = steps.find(({ id }) => id === row.step);
    const given = { model, glue: { ...glue, openTime } };
    return (step && glueUpRow(step, row.people, given)) ?? row;
  });
}

function splitToday(step: Step, rows: Plan['glueUps']): Step {
  const row = rows.find(it => it.step === step.id);
  if (row === undefined) return step;
  const at = step.settings.findIndex(({ glueUp }) => glueUp);
  const others = step.settings.filter(({ glueUp }) => glueUp !== true);
  return { ...step, settings: others.toSpliced(Math.max(0, at), 0, ...glueUpLines(row)) };
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

function glued(step: Step, today: GlueToday, rows: Plan['glueUps']): Step {
  const row = rows.find(it => it.step === step.id);
  return {
    ...step,
    timers: step.timers.map(timer => timerToday(timer, today)),
    settings: step.settings.map(line =>
      row !== undefined && line.name === BESIDE_GLUE
        ? { ...line, text: besideWords(row, today) }
        : line,
    ),
  };
}

function timerToday(
  timer: StepTimer,
  { clampMinutes, cureMinutes, because }: GlueToday,
): StepTimer {
  if (timer.lasts === 'glue-clamp') return { ...timer, minutes: clampMinutes, because };
  if (timer.lasts === 'glue-cure') return { ...timer, minutes: cureMinutes, because };
  return timer;
}
