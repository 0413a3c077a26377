import { workedOut } from '../../materials/sources.js';
import {
  DIAGONALS_MAY_DIFFER,
  diagonalOf,
  diagonalTolerance,
  differenceFor,
  doesNotClose,
  type MeasuredFrame,
  outOfSquare,
  type SquareFault,
  squareFaults,
} from '../../materials/square.js';
import { COMPUTED, type Source } from '../../measure/figure.js';
import { figure } from '../../measure/figure-text.js';
import { formatLength, formatLengthExact } from '../../measure/format-length.js';
import { formatNumber } from '../../measure/format-number.js';
import { feet, inches } from '../../measure/inch.js';
import type { Mm } from '../../measure/quantities.js';
import { atMost } from '../../measure/tolerance.js';
import { lengthOption, usualLength } from './length-option.js';
import type { Answered, Given, WorkResult, WorkRule } from './rule.js';

/** `notchbook work square`: what unequal diagonals mean, and how far to push. */
export const SQUARE_RULE: WorkRule = {
  name: 'square',
  say: 'what two diagonals say about a frame, and how far to push it',
  example: 'notchbook work square --length 48in --width 18in --one 51-5/16in --other 51-3/16in',
  options: [
    lengthOption('length', 'one side, the one to push along', '48in'),
    lengthOption('width', 'the side that meets it', '18in'),
    lengthOption('one', 'one diagonal', '51-5/16in'),
    lengthOption('other', 'the other diagonal', '51-3/16in'),
    usualLength('length-2', 'the side across from the first', { example: '48in', usual: '' }),
    usualLength('width-2', 'the side across from the second', { example: '18in', usual: '' }),
  ],
  work,
};

function work(given: Given): WorkResult {
  const frame: MeasuredFrame = {
    length: given.number('length'),
    width: given.number('width'),
    one: given.number('one'),
    other: given.number('other'),
  };
  const problem = impossible(frame, given);
  if (problem !== undefined) return { ok: false, problems: [problem] };
  const found = outOfSquare(frame);
  return {
    ok: true,
    verdict: pushWords(frame, given),
    figures: [...diagonalFigures(frame, given), ...pushFigures(frame, given)],
    more: {
      degrees: found.degrees,
      verdict: verdictOf(frame, given),
      faults: faultsOf(frame, given),
    },
    notes: notesOf(frame, given),
  };
}

function diagonalFigures(frame: MeasuredFrame, { display }: Given): readonly Answered[] {
  const length = (mm: Mm) => formatLengthExact(mm, display);
  const longer = Math.max(frame.length, frame.width);
  const both = `${length(frame.one)} and ${length(frame.other)}`;
  return [
    {
      name: 'difference',
      say: 'diagonals differ by',
      figure: figure(outOfSquare(frame).difference, 'mm', both, COMPUTED),
    },
    {
      name: 'allowed',
      say: 'may differ by',
      figure: figure(
        diagonalTolerance(longer),
        'mm',
        `longer side of ${length(longer)}`,
        toleranceSource(longer),
      ),
    },
    {
      name: 'true_diagonal',
      say: 'diagonal by the sides',
      figure: figure(
        diagonalOf(frame.length, frame.width),
        'mm',
        `root of ${length(frame.length)} squared and ${length(frame.width)} squared`,
        COMPUTED,
      ),
    },
  ];
}

function pushFigures(frame: MeasuredFrame, { display }: Given): readonly Answered[] {
  const { push, aim } = outOfSquare(frame);
  const side = formatLength(frame.length, display);
  return [
    {
      name: 'push',
      say: 'push by',
      figure: figure(
        push,
        'mm',
        `the side of ${side}, along itself: difference of the squared diagonals / 4 x ${side}`,
        COMPUTED,
      ),
    },
    {
      name: 'aim',
      say: 'until both measure',
      figure: figure(aim, 'mm', 'root of the mean of both squares, nearly their average', COMPUTED),
    },
  ];
}

function toleranceSource(longer: Mm): Source {
  const { toFourFeet, toEightFeet, longer: beyond } = DIAGONALS_MAY_DIFFER;
  if (atMost(longer, feet(4))) return toFourFeet.source;
  return atMost(longer, feet(8))
    ? toEightFeet.source
    : workedOut('framing-benchmark', beyond.source.place ?? '');
}

type Verdict = 'square enough' | 'push it' | 'no rectangle';

function verdictOf(frame: MeasuredFrame, given: Given): Verdict {
  const allowed = diagonalTolerance(Math.max(frame.length, frame.width));
  const sides = faultsOf(frame, given).filter(fault => fault !== 'diagonals differ');
  if (sides.length > 0 || !atMost(doesNotClose(frame), allowed)) return 'no rectangle';
  return atMost(outOfSquare(frame).difference, allowed) ? 'square enough' : 'push it';
}

/** Diagonals that cannot belong to these sides: a slip in reading the tape. */
function impossible({ length, width, one, other }: MeasuredFrame, { display }: Given) {
  const longest = length + width;
  const shortest = Math.abs(length - width);
  const wrong = [one, other].find(diagonal => diagonal > longest || diagonal < shortest);
  if (wrong === undefined) return undefined;
  const say = (mm: Mm) => formatLength(mm, display);
  return `A diagonal of ${say(wrong)} cannot be: from ${say(shortest)} to ${say(longest)}, near ${say(diagonalOf(length, width))}. Measure it again.`;
}

function faultsOf(frame: MeasuredFrame, given: Given): readonly SquareFault[] {
  const sides = {
    front: frame.length,
    back: given.has('length-2') ? given.number('length-2') : frame.length,
    left: frame.width,
    right: given.has('width-2') ? given.number('width-2') : frame.width,
    one: frame.one,
    other: frame.other,
  };
  return squareFaults(sides, diagonalTolerance(Math.max(frame.length, frame.width)));
}

function pushWords(frame: MeasuredFrame, given: Given): string {
  const { difference } = outOfSquare(frame);
  const half = formatLengthExact(difference / 2, given.display);
  switch (verdictOf(frame, given)) {
    case 'square enough':
      return 'The diagonals are near enough: leave it.';
    case 'push it':
      return `Push or strap across the longer diagonal, overshoot slightly, fix, measure again. Each diagonal changes by about ${half}.`;
    case 'no rectangle':
      return 'Measure again before you push: opposite sides are not equal, or a diagonal was read wrong.';
  }
}

/** What a careful person sees at the far end of a side. */
const SMALL_PUSH: Mm = inches(1 / 32);

function notesOf(frame: MeasuredFrame, given: Given): readonly string[] {
  const { display } = given;
  const longer = Math.max(frame.length, frame.width);
  const say = (mm: Mm) => formatLength(mm, display);
  const { degrees } = outOfSquare(frame);
  const gap = doesNotClose(frame);
  const closes = atMost(gap, diagonalTolerance(longer))
    ? []
    : [
        `These sides and diagonals are no frame with equal opposite sides, by ${say(gap)}: measure all four sides, and hook the tape alike at both diagonals.`,
      ];
  const both = given.has('length-2') && given.has('width-2');
  const sides = faultsOf(frame, given).filter(fault => fault !== 'diagonals differ');
  return [
    `Corners are ${formatNumber(90 - degrees, 2)} and ${formatNumber(90 + degrees, 2)} degrees.`,
    ...closes,
    `A push of ${formatLengthExact(SMALL_PUSH, display)} shows as ${formatLengthExact(differenceFor(SMALL_PUSH, frame.length, frame.width), display)} on the diagonals of this frame.`,
    ...sides.map(fault => `The ${fault}: equal diagonals alone do not make it square.`),
    ...(both
      ? []
      : [
          'Not measured: the opposite sides. Equal diagonals mean square only where those are equal too (--length-2, --width-2).',
        ]),
    'Not checked: twist. Lay two straight sticks across it and look over them.',
  ];
}
