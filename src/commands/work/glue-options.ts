import { GLUES, type GlueId } from '../../materials/glue.js';
import type { GlueWeather } from '../../materials/glue-day.js';
import { sourced } from '../../materials/sourced.js';
import { practice } from '../../materials/sources.js';
import { lengthOption, temperatureOption, usualTemperature } from './length-option.js';
import type { Given, WorkOption } from './rule.js';

/** What to reckon with where nobody holds a meter on the board. */
const FEELS = sourced(
  { dry: 12, damp: 20, dripping: 30 } as const,
  practice('dry, damp or dripping, by weight and by how cool it feels'),
);

type Feel = keyof typeof FEELS.value;

export const GLUE_OPTIONS: readonly WorkOption[] = [
  { name: 'joints', kind: 'count', say: 'how many joints', example: '14', least: 1, most: 500 },
  lengthOption('length', 'length of the face of one joint', '3-1/2in'),
  lengthOption('width', 'width of that face', '3-1/2in'),
  temperatureOption('temperature', 'coldest of wood, glue and air now', '65F'),
  temperatureOption('low', 'coldest there in the next 24 to 36 h', '55F'),
  {
    name: 'wood',
    kind: 'word',
    say: 'dry, damp or dripping, by its weight and how cool it feels',
    example: 'dry',
    choices: Object.keys(FEELS.value),
  },
  {
    name: 'moisture',
    kind: 'number',
    say: 'what a meter shows, in percent',
    example: '12',
    usual: '',
    least: 4,
    most: 200,
  },
  usualTemperature('slept', 'where the wood lay last night', '30F'),
  {
    name: 'hours-warm',
    kind: 'number',
    say: 'hours it has been in the warm since',
    example: '6',
    usual: '0',
    least: 0,
    most: 1000,
  },
  { name: 'people', kind: 'count', say: '1 or 2', example: '2', usual: '1', least: 1, most: 2 },
  {
    name: 'glue',
    kind: 'word',
    say: GLUES.map(({ id }) => id).join(', '),
    example: 'pva-type-1',
    usual: 'pva-type-1',
    choices: GLUES.map(({ id }) => id),
  },
];

/** The glue that was asked for. */
export function glueGiven(given: Given): GlueId {
  const word = given.word('glue');
  const glue = GLUES.find(({ id }) => id === word);
  if (glue === undefined) throw new Error(`glue ${word} was let through`);
  return glue.id;
}

/** The weather as given; wood of an unknown night slept where it lies now. */
export function glueWeather(given: Given): GlueWeather {
  const now = given.number('temperature');
  const feel = given.word('wood') as Feel;
  return {
    now,
    coldest: given.number('low'),
    slept: given.has('slept') ? given.number('slept') : now,
    hoursWarm: given.number('hours-warm'),
    moisturePercent: given.has('moisture') ? given.number('moisture') : FEELS.value[feel],
  };
}

/** What the answer leans on that nobody measured. */
export function unaskedWords(given: Given): readonly string[] {
  const feel = given.word('wood') as Feel;
  const moisture = given.has('moisture')
    ? []
    : [`Wood that feels ${feel} is reckoned at ${FEELS.value[feel]}%; a meter knows better.`];
  const slept = given.has('slept')
    ? []
    : ['Not asked: where the wood lay last night (--slept). Cold wood chills the glue.'];
  return [...moisture, ...slept];
}
