import { betterWords, longestSpan } from '../../materials/beam-better.js';
import { type BeamCase, checkBeam } from '../../materials/beam-check.js';
import { strengthOf } from '../../materials/design-values-species.js';
import { SAG_LIMITS } from '../../materials/sag-limits.js';
import { feet, inches } from '../../measure/inch.js';
import { pounds } from '../../measure/weight.js';
import { beamFigures, beamNotes, type WorkedBeam } from './beam-figures.js';
import {
  problemsOf,
  SECTION_OPTION,
  STANDS_OPTION,
  sectionOf,
  TIME_OPTION,
  usedAs,
  WEATHER_OPTION,
} from './hold-options.js';
import type { Given, WorkResult, WorkRule } from './rule.js';
import { WOOD_OPTION, woodOf } from './wood-options.js';

/** Nobody spans more than this with one board. */
const LONGEST_SPAN = feet(30);

/** `notchbook work beam`: does a board hold a load between two supports, and how far may they be apart. */
export const BEAM_RULE: WorkRule = {
  name: 'beam',
  say: 'does a board hold between two supports, how far does it sag, how far may they be apart',
  example: 'notchbook work beam --section 2x4 --span 45in --load 250lb --wood redwood',
  options: [
    SECTION_OPTION,
    {
      name: 'span',
      kind: 'length',
      say: 'between the faces of the supports',
      example: '45in',
      least: inches(2),
      most: LONGEST_SPAN,
    },
    STANDS_OPTION,
    {
      name: 'load',
      kind: 'weight',
      say: 'what it carries, all boards together',
      example: '250lb',
      least: pounds(0.1),
      most: pounds(20_000),
    },
    {
      name: 'where',
      kind: 'word',
      say: 'middle: at any one point; spread: evenly over the span',
      example: 'middle',
      usual: 'middle',
      choices: ['middle', 'spread'],
    },
    {
      name: 'boards',
      kind: 'count',
      say: 'equal boards side by side that share the load alike',
      example: '2',
      usual: '1',
      least: 1,
      most: 50,
    },
    WOOD_OPTION,
    WEATHER_OPTION,
    TIME_OPTION,
  ],
  work,
};

function work(given: Given): WorkResult {
  const section = sectionOf(given);
  const wood = woodOf(given);
  if (!section.ok || !wood.ok) return { ok: false, problems: problemsOf(section, wood) };
  const beam: BeamCase = {
    use: { board: section.value, ...usedAs(given) },
    wood: strengthOf(wood.value, section.value.width),
    boards: given.number('boards'),
    span: given.number('span'),
    load:
      given.word('where') === 'spread'
        ? { kind: 'spread', weight: given.number('load') }
        : { kind: 'point', weight: given.number('load'), over: 0 },
    sagRatio: SAG_LIMITS.seat.value,
  };
  const { display } = given;
  const worked: WorkedBeam = {
    beam,
    section: section.value,
    species: wood.value,
    check: checkBeam(beam, display),
    longest: longestSpan(beam, display, LONGEST_SPAN),
    better: betterWords(beam, { wood: wood.value, section: section.value }, display),
    display,
  };
  const { check } = worked;
  return {
    ok: true,
    figures: beamFigures(worked),
    more: { verdict: check.verdict, governs: check.governing.of, assumed: beam.wood.assumed },
    notes: beamNotes(worked),
  };
}
