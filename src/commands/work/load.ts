import {
  FLOOR_WORDS,
  floorCheck,
  footLoads,
  GUARD_WORDS,
  piecesOnDeck,
} from '../../materials/floor-check.js';
import { DECK_LIVE_LOAD, STEP_LOAD } from '../../materials/loads.js';
import { formatArea, squareMeters } from '../../measure/area.js';
import { ANSWERED, type Source } from '../../measure/figure.js';
import { figure } from '../../measure/figure-text.js';
import { formatFloorLoad, type KgPerSquareMeter, psf } from '../../measure/floor-load.js';
import { feet, inches } from '../../measure/inch.js';
import type { Kilograms, SquareMm } from '../../measure/quantities.js';
import { formatWeight, pounds } from '../../measure/weight.js';
import { filledOf, SOIL_OPTIONS, soilFigures } from './load-soil.js';
import type { Answered, Given, WorkResult, WorkRule } from './rule.js';

const FOOTPRINT = { kind: 'length', least: inches(1), most: feet(100) } as const;
const DECK = { kind: 'length', usual: '', least: feet(1), most: feet(300) } as const;

/** `notchbook work load`: a heavy thing on a deck. */
export const LOAD_RULE: WorkRule = {
  name: 'load',
  say: 'a heavy thing on a deck: load on its area and under each foot, and how many the deck may take',
  example: 'notchbook work load --weight 200lb --length 20in --width 14in',
  options: [
    {
      name: 'weight',
      kind: 'weight',
      say: 'soaked, with all that is in it; with --soil, everything but the soil',
      example: '200lb',
      least: pounds(1),
      most: pounds(100_000),
    },
    { ...FOOTPRINT, name: 'length', say: 'length of what it stands on', example: '20in' },
    { ...FOOTPRINT, name: 'width', say: 'width of what it stands on', example: '14in' },
    {
      name: 'feet',
      kind: 'count',
      say: 'feet that it stands on',
      example: '4',
      usual: '4',
      least: 1,
      most: 100,
    },
    {
      name: 'limit',
      kind: 'number',
      say: 'what the floor may carry as its owner says: lb/sq ft, or kg/m2 with --units metric',
      example: '40',
      usual: '',
      least: 1,
      most: 20_000,
    },
    ...SOIL_OPTIONS,
    { ...DECK, name: 'deck-length', say: 'length of the whole deck', example: '10ft' },
    { ...DECK, name: 'deck-width', say: 'width of the whole deck', example: '10ft' },
  ],
  work,
};

function work(given: Given): WorkResult {
  const { display } = given;
  if (given.has('deck-length') !== given.has('deck-width'))
    return { ok: false, problems: [HALF_A_DECK] };
  const read = filledOf(given);
  if (!read.ok) return { ok: false, problems: [read.problem] };
  const { filled } = read;
  const weight = given.number('weight') + (filled === undefined ? 0 : filled.weight);
  const footprint = given.number('length') * given.number('width');
  const limit = limitOf(given);
  const check = floorCheck(weight, footprint, limit.value);
  const over = check.share > 1;
  const deck = deckOf(given);
  return {
    ok: true,
    figures: [
      ...(filled === undefined ? [] : soilFigures(filled, limit.value, given)),
      ...areaFigures({ weight, footprint, limit, given }),
      ...footFigures(weight, given),
      ...(deck === undefined ? [] : [deckFigure(deck, { weight, limit, given })]),
    ],
    more: { verdict: over ? 'look again' : 'holds by this sum' },
    notes: [
      over
        ? `More than the ${formatFloorLoad(limit.value, display)} that ${limit.words}: set it across two or more joists on planks, near the house wall or right over a beam, never at the edge of an overhang.`
        : `Not more than the ${formatFloorLoad(limit.value, display)} that ${limit.words}. People and furniture come on top.`,
      FLOOR_WORDS,
      GUARD_WORDS,
    ],
  };
}

const HALF_A_DECK =
  'The whole deck needs both sides: for example --deck-length 10ft --deck-width 10ft.';

type Limit = {
  readonly value: KgPerSquareMeter;
  readonly words: string;
  readonly source: Source;
};

function limitOf(given: Given): Limit {
  if (!given.has('limit')) {
    const words = 'decks are usually meant for, people included';
    return { value: DECK_LIVE_LOAD.value, words, source: DECK_LIVE_LOAD.source };
  }
  const typed = given.number('limit');
  const value = given.display.system === 'inch' ? psf(typed) : typed;
  return { value, words: 'you were told it may carry', source: ANSWERED };
}

type OnArea = {
  readonly weight: Kilograms;
  readonly footprint: SquareMm;
  readonly limit: Limit;
  readonly given: Given;
};

function areaFigures({ weight, footprint, limit, given }: OnArea): readonly Answered[] {
  const { display } = given;
  const check = floorCheck(weight, footprint, limit.value);
  const sum = `${formatWeight(weight, display)} on ${formatArea(footprint, display)}`;
  const needs = (weight / limit.value) * squareMeters(1);
  return [
    {
      name: 'spread',
      say: 'on what it covers',
      figure: figure(check.spread, 'kg/m2', sum, ANSWERED),
    },
    {
      name: 'share',
      say: 'share of the limit',
      figure: figure(
        check.share * 100,
        'percent',
        `against ${formatFloorLoad(limit.value, display)}, which ${limit.words}`,
        limit.source,
      ),
    },
    {
      name: 'uses_up',
      say: 'uses up',
      figure: figure(
        needs,
        'mm2',
        `as much floor as is meant for ${formatWeight(weight, display)}`,
        limit.source,
      ),
    },
  ];
}

function footFigures(weight: Kilograms, given: Given): readonly Answered[] {
  const count = given.number('feet');
  const { level, rocking } = footLoads(weight, count);
  const yardstick = formatWeight(STEP_LOAD.value, given.display);
  return [
    {
      name: 'per_foot',
      say: 'on one foot',
      figure: figure(
        level,
        'kg',
        `shared by ${count}; a stair tread has to carry ${yardstick} on 4 sq in`,
        STEP_LOAD.source,
      ),
    },
    {
      name: 'per_foot_rocking',
      say: 'when it rocks',
      figure: figure(rocking, 'kg', 'on two feet, where the floor is uneven', STEP_LOAD.source),
    },
  ];
}

function deckOf(given: Given): SquareMm | undefined {
  return given.has('deck-length') && given.has('deck-width')
    ? given.number('deck-length') * given.number('deck-width')
    : undefined;
}

const KEPT_FOR_PEOPLE = 0.5;

function deckFigure(area: SquareMm, { weight, limit, given }: Omit<OnArea, 'footprint'>): Answered {
  const { display } = given;
  const people = KEPT_FOR_PEOPLE;
  const count = piecesOnDeck({ area, each: weight, people, limit: limit.value });
  const total = (limit.value * area) / squareMeters(1);
  return {
    name: 'pieces',
    say: 'of these at most',
    figure: figure(
      count,
      'count',
      `${formatWeight(total, display)} on the whole deck, half of it kept for people, by ${formatWeight(weight, display)} each`,
      limit.source,
    ),
  };
}
