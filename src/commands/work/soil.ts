import { drainGrid, HOLE_DIAMETER, HOLE_PITCH, OPEN_SHARE } from '../../materials/drainage.js';
import { FILLS, type FillId, fillWeight } from '../../materials/loads.js';
import {
  bagsFor,
  depthOfBags,
  type Inside,
  insideOf,
  looseFill,
  SETTLING,
  SOIL_BAGS,
  spaceOf,
} from '../../materials/soil.js';
import { COMPUTED } from '../../measure/figure.js';
import { figure } from '../../measure/figure-text.js';
import { formatLength, formatLengthExact } from '../../measure/format-length.js';
import { feet } from '../../measure/inch.js';
import type { Mm } from '../../measure/quantities.js';
import { formatSpace } from '../../measure/volume.js';
import { lengthOption, usualLength } from './length-option.js';
import type { Answered, Given, WorkResult, WorkRule } from './rule.js';
import { falseBottomAnswer } from './soil-bars.js';

/** `notchbook work soil`: what a planter holds, weighs and how it drains. */
export const SOIL_RULE: WorkRule = {
  name: 'soil',
  say: 'soil in a planter: inside, bags, soaked weight, drain holes, false bottom',
  example: 'notchbook work soil --length 8ft --width 2ft --height 1ft --wall 3/4in',
  options: [
    lengthOption('length', 'outside length', '8ft'),
    lengthOption('width', 'outside width', '2ft'),
    lengthOption('height', 'outside height', '1ft'),
    lengthOption('wall', 'thickness of the walls', '3/4in'),
    usualLength('floor', 'thickness of the floor; else that of the walls', {
      example: '3/4in',
      usual: '',
    }),
    usualLength('rim', 'left open below the rim', { example: '1in', usual: '1in' }),
    {
      name: 'fill',
      kind: 'word',
      say: Object.keys(FILLS).join(' or '),
      example: 'potting-mix',
      usual: 'potting-mix',
      choices: Object.keys(FILLS),
    },
    { ...lengthOption('hole', 'diameter of drain holes', '1/2in'), usual: '1/2in', most: 50 },
    usualLength('soil-depth', 'less soil on a false bottom', { example: '8in', usual: '' }),
    usualLength('bar', 'height of the bars under it', { example: '1-1/2in', usual: '1-1/2in' }),
    {
      name: 'bars',
      kind: 'count',
      say: 'how many bars',
      example: '3',
      usual: '3',
      least: 2,
      most: 50,
    },
  ],
  work,
};

function work(given: Given): WorkResult {
  const wall = given.number('wall');
  const floor = given.has('floor') ? given.number('floor') : wall;
  const belowRim = given.number('rim');
  const [length, width, height] = ['length', 'width', 'height'].map(given.number);
  if (length === undefined || width === undefined || height === undefined)
    throw new Error('a side of the box is missing');
  const inside = insideOf({ length, width, height, wall, floor, belowRim });
  if (Math.min(inside.length, inside.width, inside.depth) <= 0)
    return {
      ok: false,
      problems: ['Walls, floor and rim leave no room inside. Check which sizes are outside ones.'],
    };
  const bars = falseBottomAnswer({ ...inside, depth: height - floor }, belowRim, given);
  if (!bars.ok) return { ok: false, problems: [bars.problem] };
  const filled = given.has('soil-depth')
    ? { ...inside, depth: given.number('soil-depth') }
    : inside;
  return {
    ok: true,
    figures: [
      ...insideFigures(inside, given),
      ...soilFigures(filled, given),
      ...holeFigures(inside, given),
      ...bars.figures,
    ],
    more: marksOf(inside, given),
    notes: [
      ...bagWords(inside, given),
      ...markWords(inside, given),
      'Lay fabric or mesh over the holes and pierce a liner at every one of them. Raise the box so that they stay open.',
      ...bars.notes,
      'Weigh the site before you fill: wet soil on a deck or balcony is for somebody licensed to judge.',
    ],
  };
}

function insideFigures(inside: Inside, { display }: Given): readonly Answered[] {
  const length = (mm: Mm) => formatLengthExact(mm, display);
  const sizes = `${length(inside.length)} x ${length(inside.width)} x ${length(inside.depth)}`;
  return [
    {
      name: 'inside_length',
      say: 'inside length',
      figure: figure(inside.length, 'mm', 'outside less two walls', COMPUTED),
    },
    {
      name: 'inside_width',
      say: 'inside width',
      figure: figure(inside.width, 'mm', 'outside less two walls', COMPUTED),
    },
    {
      name: 'soil_depth',
      say: 'room for soil',
      figure: figure(inside.depth, 'mm', 'outside less the floor and the rim', COMPUTED),
    },
    {
      name: 'space_mm3',
      say: 'room inside',
      figure: figure(spaceOf(inside), 'mm3', sizes, COMPUTED),
    },
  ];
}

function soilFigures(filled: Inside, given: Given): readonly Answered[] {
  const { display } = given;
  const space = spaceOf(filled);
  const fill = given.word('fill') as FillId;
  const { planned, heavy } = fillWeight(space, fill);
  const loose = formatSpace(looseFill(space), display);
  return [
    ...SOIL_BAGS[display.system].map(({ name, holds }, at) => ({
      name: `bags_${at + 1}`,
      say: `in ${name}s`,
      figure: figure(
        bagsFor(space, holds),
        'count',
        `all in this size: ${formatSpace(space, display)} and ${SETTLING.value * 100}% for settling, ${loose}`,
        SETTLING.source,
      ),
    })),
    {
      name: 'soaked',
      say: 'soaked, as planned',
      figure: figure(
        planned,
        'kg',
        `${formatSpace(space, display)} of ${fill}, box not counted`,
        FILLS[fill].planned.source,
      ),
    },
    {
      name: 'soaked_heavy',
      say: 'soaked, at the heaviest',
      figure: figure(heavy, 'kg', 'for judging what stands below', FILLS[fill].heavy.source),
    },
  ];
}

function holeFigures(inside: Inside, given: Given): readonly Answered[] {
  const grid = drainGrid(inside.length, inside.width, given.number('hole'));
  const { least, most } = HOLE_PITCH.value;
  const pitch = `${formatLength(least, given.display)} to ${formatLength(most, given.display)}`;
  return [
    {
      name: 'holes',
      say: 'drain holes',
      figure: figure(
        grid.count,
        'count',
        `${grid.along} x ${grid.across}, a pitch of ${pitch}, at least four`,
        HOLE_PITCH.source,
      ),
    },
    {
      name: 'open_percent',
      say: 'open floor',
      figure: figure(
        grid.openShare * 100,
        'percent',
        'holes as a share of the floor; 0.5 to 1% is usual',
        OPEN_SHARE.source,
      ),
    },
  ];
}

function marksOf(inside: Inside, given: Given): Readonly<Record<string, unknown>> {
  const grid = drainGrid(inside.length, inside.width, given.number('hole'));
  return { holes_along_mm: grid.alongMarks, holes_across_mm: grid.acrossMarks };
}

function bagWords(inside: Inside, { display }: Given): readonly string[] {
  return SOIL_BAGS[display.system].map(
    ({ name, holds }) =>
      `One ${name} fills ${formatLength(depthOfBags(1, holds, inside), display)} before it settles.`,
  );
}

function markWords(inside: Inside, given: Given): readonly string[] {
  const grid = drainGrid(inside.length, inside.width, given.number('hole'));
  const words = (marks: readonly Mm[]) =>
    marks.map(mark => formatLength(mark, given.display)).join(', ');
  const { least, most } = HOLE_DIAMETER.value;
  const few = grid.openShare < OPEN_SHARE.value.least;
  const long = Math.max(inside.length, inside.width) > feet(4);
  const usual = `usual holes are ${formatLength(least, given.display)} to ${formatLength(most, given.display)}`;
  return [
    `Hole centers from one end inside: ${words(grid.alongMarks)}.`,
    `From one side inside: ${words(grid.acrossMarks)} (${usual}).`,
    ...(few ? ['Less of the floor is open than usual: larger holes, or one more row.'] : []),
    ...(long ? ['The pitch was published for boxes under 4 ft; it is carried on here.'] : []),
  ];
}
