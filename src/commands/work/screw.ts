import { chooseScrew, type ScrewChoice } from '../../materials/choose-screw.js';
import { metricScrew } from '../../materials/metric-screw.js';
import { screwName } from '../../materials/screw-words.js';
import type { Species } from '../../materials/species.js';
import { inches } from '../../measure/inch.js';
import { pounds } from '../../measure/weight.js';
import { problemsOf, TIME_OPTION, timeOf, WEATHER_OPTION } from './hold-options.js';
import type { Given, WorkOption, WorkResult, WorkRule } from './rule.js';
import { choiceFigures, noScrewResult } from './screw-choice.js';
import { heldFigures, heldNotes } from './screw-held.js';
import { WOOD_OPTION, woodOf } from './wood-options.js';

const WOOD_THICK = { kind: 'length', least: inches(1 / 8), most: inches(24) } as const;

const GRAIN_HIT: WorkOption = {
  name: 'grain',
  kind: 'word',
  say: 'what the point meets: side grain, or the end of a board',
  example: 'side',
  usual: 'side',
  choices: ['side', 'end'],
};

/** `notchbook work screw`: which screw for two boards, its holes and what it holds. */
export const SCREW_RULE: WorkRule = {
  name: 'screw',
  say: 'the screw for two boards: length, gauge, drills, bite, and what it carries',
  example: 'notchbook work screw --through 1.75in --into 3.5in --wood redwood',
  options: [
    {
      ...WOOD_THICK,
      name: 'through',
      say: 'wood under the head, after notching',
      example: '1.75in',
    },
    { ...WOOD_THICK, name: 'into', say: 'wood that the point goes into', example: '3.5in' },
    WOOD_OPTION,
    GRAIN_HIT,
    {
      name: 'gauge',
      kind: 'word',
      say: 'a gauge to keep to: 6, 8, 10, 12 or 14',
      example: '10',
      usual: '',
      choices: ['6', '8', '10', '12', '14'],
    },
    {
      name: 'load',
      kind: 'weight',
      say: 'a load that hangs across the screws',
      example: '250lb',
      usual: '',
      least: pounds(1),
      most: pounds(20_000),
    },
    WEATHER_OPTION,
    TIME_OPTION,
  ],
  work,
};

function work(given: Given): WorkResult {
  const wood = woodOf(given);
  if (!wood.ok) return { ok: false, problems: problemsOf(wood) };
  const grain = given.word('grain') === 'end' ? 'end' : 'side';
  const through = given.number('through');
  const gauge = given.has('gauge') ? { gauge: Number(given.word('gauge')) } : {};
  const choice = chooseScrew(
    { through, into: given.number('into'), grain, wood: wood.value, ...gauge },
    given.display,
  );
  return choice.kind === 'screw' ? screwResult(choice, wood.value, given) : noScrewResult(choice);
}

function screwResult(choice: ScrewChoice, wood: Species, given: Given): WorkResult {
  const { display } = given;
  const held = {
    choice,
    wood,
    through: given.number('through'),
    grain: choice.endGrain ? 'end' : 'side',
    wet: given.word('weather') === 'wet',
    time: timeOf(given),
    display,
    ...(given.has('load') ? { load: given.number('load') } : {}),
  } as const;
  return {
    ok: true,
    figures: [...choiceFigures(choice, wood, given), ...heldFigures(held)],
    more: { fits: true, screw: screwName(choice), drills: drillsOf(choice) },
    notes: [
      `${screwName(choice)}: pilot ${choice.holes.pilot.drill}, clearance ${choice.holes.clearance.drill}.`,
      ...metricWords(choice),
      ...choice.notes,
      ...heldNotes(held),
    ],
  };
}

function drillsOf({ holes }: ScrewChoice) {
  return { pilot: holes.pilot.drill, clearance: holes.clearance.drill };
}

function metricWords(choice: ScrewChoice): readonly string[] {
  const metric = metricScrew(choice);
  return metric === undefined ? [] : [`In metric boxes: ${metric.name}, common practice.`];
}
