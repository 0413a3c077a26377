import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dropBetween, legTrims, slopeDegrees } from '../../src/materials/leg-trims.js';
import {
  diagonalOf,
  diagonalTolerance,
  differenceFor,
  doesNotClose,
  outOfSquare,
  squareFaults,
} from '../../src/materials/square.js';
import { euTapeError, stepOff, tapeCheck, usTapeError } from '../../src/materials/tape.js';
import { feet, inches, toInches } from '../../src/measure/inch.js';
import { referenceRows } from '../support/reference-rows.js';

/** Diagonals of a frame that differ by so much, evenly round the true one. */
function apart(length: number, width: number, difference: number) {
  const true_ = Math.hypot(length, width);
  return {
    length: inches(length),
    width: inches(width),
    one: inches(true_ + difference / 2),
    other: inches(true_ - difference / 2),
  };
}

describe('diagonals', () => {
  // Difference x diagonal / (2 x the side it shifts along); F43 gives two decimals.
  test.each(
    referenceRows('field case F43', [
      [36, 80, 0.25, 0.3],
      [30, 48, 0.25, 0.24],
      [48, 16, 0.25, 0.13],
    ] as const),
  )(
    'F43: %d x %d in with diagonals %d in apart is pushed %d in',
    (length, width, difference, push) => {
      const found = outOfSquare(apart(length, width, difference));
      expect(Math.abs(toInches(found.push) - push)).toBeLessThan(0.005);
    },
  );

  // Worked by hand by the cosine rule, d1² - d2² = 4ab sin s: 48 x 18 in, 1/8 in apart.
  test.each(
    referenceRows('cosine rule, sums on paper', [
      ['push', 0.0668, 4],
      ['degrees', 0.212, 3],
      ['aim', 51.264, 3],
    ] as const),
  )('a 48 x 18 in frame 1/8 in apart: %s %d', (what, told, places) => {
    const found = outOfSquare(apart(48, 18, 1 / 8));
    const value = what === 'degrees' ? found.degrees : toInches(found[what]);
    expect(value).toBeCloseTo(told, places);
  });

  test('1/32 in over the 18 in side goes with diagonals 0.0585 in apart', () => {
    expect(toInches(differenceFor(inches(1 / 32), inches(48), inches(18)))).toBeCloseTo(0.0585, 4);
  });

  // 3-4-5 triangle.
  test('a 3 x 4 ft frame has diagonals of 5 ft', () => {
    expect(diagonalOf(feet(4), feet(3))).toBeCloseTo(feet(5), 9);
  });

  test('pushing a rectangle out by e makes diagonals that are read back as e', () => {
    const side = fc.double({ min: 300, max: 2500, noNaN: true });
    fc.assert(
      fc.property(
        side,
        side,
        fc.double({ min: 0, max: 100, noNaN: true }),
        (length, width, push) => {
          const tall = Math.sqrt(width ** 2 - push ** 2);
          const frame = {
            length,
            width,
            one: Math.hypot(length + push, tall),
            other: Math.hypot(length - push, tall),
          };
          expect(outOfSquare(frame).push).toBeCloseTo(push, 6);
          expect(doesNotClose(frame)).toBeLessThan(1e-6);
          expect(outOfSquare(frame).difference).toBeCloseTo(differenceFor(push, length, width), 6);
        },
      ),
    );
  });
});

describe('equal diagonals alone', () => {
  // An isosceles trapezoid: front 48, back 46, ends slanted alike over a depth of 18. Each end is
  // sqrt(1² + 18²) = 18.028, each diagonal sqrt(47² + 18²) = 50.329: equal, and no rectangle.
  test('do not make a rectangle: a frame that narrows evenly has them too', () => {
    const end = inches(Math.hypot(1, 18));
    const diagonal = inches(Math.hypot(47, 18));
    const frame = { front: inches(48), back: inches(46), left: end, right: end };
    expect(
      outOfSquare({ length: inches(48), width: end, one: diagonal, other: diagonal }).push,
    ).toBe(0);
    expect(squareFaults({ ...frame, one: diagonal, other: diagonal }, inches(1 / 16))).toEqual([
      'front and back differ',
    ]);
    // Two sides and the diagonals show it as well: they do not belong to one parallelogram.
    const seen = doesNotClose({ length: inches(48), width: end, one: diagonal, other: diagonal });
    expect(toInches(seen)).toBeGreaterThan(1 / 2);
  });

  test('equal sides alone do not either', () => {
    const { one, other } = apart(48, 18, 1 / 4);
    const sides = { front: inches(48), back: inches(48), left: inches(18), right: inches(18) };
    expect(squareFaults({ ...sides, one, other }, inches(1 / 16))).toEqual(['diagonals differ']);
    expect(squareFaults({ ...sides, one, other: one }, inches(1 / 16))).toEqual([]);
  });

  // Common practice: to 48 in 1/16, to 96 in 1/8; residential construction handbook: 1/4 in in 10 ft.
  test.each([
    [36, 1 / 16],
    [48, 1 / 16],
    [60, 1 / 8],
    [96, 1 / 8],
    [120, 1 / 4],
  ])('a frame of %d in may be %d in out on the diagonals', (side, most) => {
    expect(toInches(diagonalTolerance(inches(side)))).toBeCloseTo(most, 9);
  });
});

describe('legs on ground that falls', () => {
  const eighth = { drop: inches(1 / 8), over: feet(1) };
  const quarter = { drop: inches(1 / 4), over: feet(1) };

  test.each(
    referenceRows('field case F45', [
      [eighth, 96, 1],
      [eighth, 48, 0.5],
      [quarter, 48, 1],
      [eighth, 14, 0.15],
      [quarter, 14, 0.29],
    ] as const),
  )('F45: %o over %d in is %d in', (fall, over, told) => {
    expect(Math.abs(toInches(dropBetween(fall, inches(over))) - told)).toBeLessThan(0.005);
  });

  test('F45: 1/4 in a foot is 1.2 degrees', () => {
    expect(slopeDegrees(quarter)).toBeCloseTo(1.2, 1);
  });

  test('four trims keep the seat level: foot and ground meet at every corner', () => {
    const drop = fc.double({ min: 0, max: 60, noNaN: true });
    fc.assert(
      fc.property(drop, drop, (along, toFront) => {
        const trims = legTrims(along, toFront);
        // Height of the ground above the low front corner, and what is left of a leg of 500.
        const ground = {
          highBack: along + toFront,
          highFront: along,
          lowBack: toFront,
          lowFront: 0,
        };
        const tops = (Object.keys(ground) as (keyof typeof ground)[]).map(
          corner => ground[corner] + 500 - trims[corner],
        );
        for (const top of tops) expect(top).toBeCloseTo(500, 9);
      }),
    );
  });
});

describe('tapes', () => {
  test.each(
    referenceRows('NIST Handbook 44 section 5.52', [
      [6, 1 / 32],
      [7, 1 / 16],
      [30, 1 / 16],
      [31, 1 / 8],
      [56, 3 / 16],
      [100, 1 / 4],
    ] as const),
  )('a US tape may be wrong at %d ft by %d in', (length, error) => {
    expect(toInches(usTapeError(feet(length)) ?? 0)).toBeCloseTo(error, 9);
  });

  test.each(
    referenceRows('Directive 2014/32/EU, tape classes, from memory', [
      ['I', 3, 0.4],
      ['I', 5, 0.6],
      ['I', 8, 0.9],
      ['II', 3, 0.9],
      ['II', 5, 1.3],
      ['II', 8, 1.9],
      ['III', 3, 1.8],
      ['III', 5, 2.6],
      ['III', 8, 3.8],
    ] as const),
  )('a class %s tape may be wrong at %d m by %d mm', (tape, meters, error) => {
    expect(euTapeError(tape, meters * 1000)).toBeCloseTo(error, 9);
  });

  // Field case F51: more than 1/32 in between hooked and pushed, set the tape aside.
  test.each([
    [1 / 16, false],
    [1 / 8, false],
    [1 / 32, true],
    [0, true],
  ])('F51: %d in between hooked and pushed: good %s', (differs, good) => {
    expect(tapeCheck(inches(30), inches(30 + differs)).good).toBe(good);
    expect(tapeCheck(inches(30 + differs), inches(30)).good).toBe(good);
  });

  // Sums on paper: 12 x 1/32 = 3/8; 1/32 x sqrt(12) = 0.108.
  test('twelve steps at 1/32 in are 3/8 in off at worst and 0.11 in by chance', () => {
    const { worst, likely } = stepOff(12, inches(1 / 32));
    expect(toInches(worst)).toBeCloseTo(0.375, 9);
    expect(toInches(likely)).toBeCloseTo(0.108, 3);
  });
});
