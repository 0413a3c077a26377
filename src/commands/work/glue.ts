import { glueOf } from '../../materials/glue.js';
import { type GlueDay, glueDay } from '../../materials/glue-day.js';
import { GLUE_NEED_SOURCE, glueNeed } from '../../materials/glue-need.js';
import { glueVerdict, glueWhen } from '../../materials/glue-words.js';
import { figure } from '../../measure/figure-text.js';
import { formatTemperature } from '../../measure/temperature.js';
import { containerWords } from '../../plan/container-words.js';
import { glueUpFigures } from './glue-figures.js';
import { GLUE_OPTIONS, glueGiven, glueWeather, unaskedWords } from './glue-options.js';
import type { Answered, Given, WorkResult, WorkRule } from './rule.js';

/** `notchbook work glue`: may I glue today, for how long, in how many goes, with how much glue. */
export const GLUE_RULE: WorkRule = {
  name: 'glue',
  say: 'may I glue today: times, glue-ups and how much glue',
  example:
    'notchbook work glue --joints 14 --length 3-1/2in --width 3-1/2in --temperature 65F --low 55F --wood dry',
  options: GLUE_OPTIONS,
  work,
};

function work(given: Given): WorkResult {
  const { display } = given;
  const id = glueGiven(given);
  const glue = glueOf(id);
  const day = glueDay(id, glueWeather(given));
  const area = given.number('length') * given.number('width');
  const need = glueNeed(area * given.number('joints'), id);
  return {
    ok: true,
    verdict: glueVerdict(day, display),
    figures: [
      ...(day.verdict === 'today' ? timeFigures(day, given) : []),
      ...(day.verdict === 'today' ? glueUpFigures(day.openMinutes, area, given) : []),
      {
        name: 'lowest',
        say: 'no colder than',
        figure: figure(
          glue.lowest.value,
          'C',
          'wood, glue and air until it has cured; below, the film never forms and stays weak',
          glue.lowest.source,
        ),
      },
      {
        name: 'glue_ml',
        say: 'glue',
        figure: figure(
          need.milliliters,
          'ml',
          'both faces of every joint brushed, 15% for squeeze-out and the brush',
          GLUE_NEED_SOURCE,
        ),
      },
    ],
    more: {
      verdict: day.verdict,
      obstacles: day.verdict === 'today' ? [] : day.obstacles,
      watch_hours: day.watchHours,
    },
    notes: [
      ...(day.verdict === 'today' ? [] : [glueWhen(day, display)]),
      `Buy ${containerWords(need.bottles[display.system])}: ${glue.name}.`,
      ...unaskedWords(given),
      ...glue.notes,
      'The label of the bottle in hand comes before all of this. Not checked: humidity, and whether the joint fits.',
    ],
  };
}

function timeFigures(
  day: Extract<GlueDay, { verdict: 'today' }>,
  given: Given,
): readonly Answered[] {
  const { now, coldest } = glueWeather(given);
  const glue = glueOf(glueGiven(given));
  const at = (celsius: number) => formatTemperature(celsius, given.display);
  const night = `at ${at(Math.min(now, coldest))}, the coldest it will see; twice as long for each 10 °C (18 °F) colder`;
  return [
    {
      name: 'open',
      say: 'open time',
      figure: figure(
        day.openMinutes,
        'min',
        `at ${at(now)}, glue lying open; shorter in the heat`,
        glue.openMinutes.source,
      ),
    },
    {
      name: 'assembly',
      say: 'until clamps are tight',
      figure: figure(
        day.assemblyMinutes,
        'min',
        'from the first brush stroke',
        glue.assemblyMinutes.source,
      ),
    },
    {
      name: 'clamp',
      say: 'clamps stay on',
      figure: figure(day.clampMinutes, 'min', night, glue.clampMinutes.source),
    },
    {
      name: 'cure',
      say: 'no load before',
      figure: figure(day.fullCureHours * 60, 'min', night, glue.fullCureHours.source),
    },
  ];
}
