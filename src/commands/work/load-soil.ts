import {
  deepestFill,
  SOIL_WEIGHTS,
  type SoilId,
  soilWeight,
} from '../../materials/soil-weights.js';
import { formatArea } from '../../measure/area.js';
import { figure } from '../../measure/figure-text.js';
import { type KgPerSquareMeter, spread } from '../../measure/floor-load.js';
import { formatLengthExact } from '../../measure/format-length.js';
import { feet, inches } from '../../measure/inch.js';
import type { Kilograms, Mm } from '../../measure/quantities.js';
import { snapDown } from '../../measure/round.js';
import { formatSpace } from '../../measure/volume.js';
import type { Answered, Given, WorkOption } from './rule.js';

const SOILS = Object.keys(SOIL_WEIGHTS) as readonly SoilId[];

/** A box of soil on top of the weight that is given: its kind, its depth, the walls round it. */
export const SOIL_OPTIONS: readonly WorkOption[] = [
  {
    name: 'soil',
    kind: 'word',
    say: `what it is filled with: ${SOILS.join(', ')}`,
    example: 'potting-soil-moist',
    usual: '',
    choices: SOILS,
  },
  {
    name: 'fill',
    kind: 'length',
    say: 'how deep it is filled',
    example: '16in',
    usual: '',
    least: inches(1),
    most: feet(10),
  },
  {
    name: 'wall',
    kind: 'length',
    say: 'how thick its walls are, taken off all round for the soil',
    example: '1-1/2in',
    usual: '0 mm',
    least: 0,
    most: feet(2),
  },
];

/** Soil as filled: its weight at the heavy end, and the area it stands on itself. */
export type Filled = {
  readonly soil: SoilId;
  readonly weight: Kilograms;
  readonly length: Mm;
  readonly width: Mm;
  readonly depth: Mm;
};

export type ReadFilled =
  | { readonly ok: true; readonly filled: Filled | undefined }
  | { readonly ok: false; readonly problem: string };

/** The soil that was asked about; none without the options, a problem where half of them is missing. */
export function filledOf(given: Given): ReadFilled {
  if (!given.has('soil') && !given.has('fill')) return { ok: true, filled: undefined };
  const soil = SOILS.find(id => given.has('soil') && id === given.word('soil'));
  if (soil === undefined || !given.has('fill')) {
    return {
      ok: false,
      problem: 'Soil needs its kind and its depth: for example --soil loam --fill 16in.',
    };
  }
  const wall = given.number('wall');
  const length = given.number('length') - 2 * wall;
  const width = given.number('width') - 2 * wall;
  if (length <= 0 || width <= 0) {
    return {
      ok: false,
      problem: '--wall: the walls meet in the middle. For example --wall 1-1/2in.',
    };
  }
  const depth = given.number('fill');
  const weight = soilWeight(length * width * depth, soil).to;
  return { ok: true, filled: { soil, weight, length, width, depth } };
}

/** Weight of the soil, what it presses with on its own area, and how deep it may be for a limit. */
export function soilFigures(
  { soil, weight, length, width, depth }: Filled,
  limit: KgPerSquareMeter,
  { display }: Given,
): readonly Answered[] {
  const { value, source } = SOIL_WEIGHTS[soil];
  const say = (mm: Mm) => formatLengthExact(mm, display);
  const space = formatSpace(length * width * depth, display);
  const area = formatArea(length * width, display);
  return [
    {
      name: 'soil_weight',
      say: 'soil weighs',
      figure: figure(
        weight,
        'kg',
        `${say(length)} x ${say(width)} x ${say(depth)}, ${space} of ${soil}, at the heavy end`,
        source,
      ),
    },
    {
      name: 'soil_load',
      say: 'on its own area',
      figure: figure(
        spread(weight, length * width),
        'kg/m2',
        `soil alone, on the ${area} it stands on`,
        source,
      ),
    },
    {
      name: 'deepest_fill',
      say: 'soil at most',
      figure: figure(
        snapDown(deepestFill(limit, value.to), display.grid),
        'mm',
        'so that the soil alone keeps to the limit on its own area; rounded down',
        source,
      ),
    },
  ];
}
