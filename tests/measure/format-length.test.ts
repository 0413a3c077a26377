import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  HALF_MILLIMETERS,
  MILLIMETERS,
  SIXTEENTHS,
  SIXTY_FOURTHS,
  THIRTY_SECONDS,
} from '../../src/measure/displays.js';
import {
  formatBoardLength,
  formatFeet,
  formatLength,
  formatLengthExact,
} from '../../src/measure/format-length.js';
import { feet, inches } from '../../src/measure/inch.js';
import { parseLength } from '../../src/measure/length.js';
import { SAME } from '../../src/measure/tolerance.js';
import { inchesToMm, nearestParts, ratio, tapeText, toNumber } from './exact.js';

const displays = [SIXTEENTHS, THIRTY_SECONDS, SIXTY_FOURTHS, MILLIMETERS, HALF_MILLIMETERS];

describe('a length as it is marked', () => {
  test.each([
    [1181.1, SIXTEENTHS, '46-1/2 in'],
    [9.525, SIXTEENTHS, '3/8 in'],
    [203.2, SIXTEENTHS, '8 in'],
    [0, SIXTEENTHS, '0 in'],
    [0.5, SIXTEENTHS, '0 in'],
    [-0.5, SIXTEENTHS, '0 in'],
    [-60, SIXTEENTHS, '-2-3/8 in'],
    [-9.525, SIXTEENTHS, '-3/8 in'],
    [25.3, SIXTEENTHS, '1 in'],
    [0.79375, SIXTEENTHS, '1/16 in'],
    [1.190625, THIRTY_SECONDS, '1/16 in'],
    [0.79375, THIRTY_SECONDS, '1/32 in'],
    [0.396875, SIXTY_FOURTHS, '1/64 in'],
    [1181.1, MILLIMETERS, '1181 mm'],
    [1181.5, MILLIMETERS, '1182 mm'],
    [1181.4, HALF_MILLIMETERS, '1181.5 mm'],
    [1181.1, HALF_MILLIMETERS, '1181 mm'],
    [-12.4, MILLIMETERS, '-12 mm'],
    [-0.2, MILLIMETERS, '0 mm'],
    [0, MILLIMETERS, '0 mm'],
  ])('%d mm', (length, display, text) => {
    expect(formatLength(length, display)).toBe(text);
  });

  // Whole-number arithmetic, 1 in = 127/5 mm.
  test('every sixty-fourth up to 40 in is the nearest mark of the tape, midway upward', () => {
    for (let n = 0; n <= 40 * 64; n += 1) {
      for (const [display, parts] of [
        [SIXTEENTHS, 16],
        [THIRTY_SECONDS, 32],
        [SIXTY_FOURTHS, 64],
      ] as const) {
        const mark = tapeText(nearestParts(ratio(n, 64), parts), parts);
        expect(formatLength(toNumber(inchesToMm(ratio(n, 64))), display)).toBe(`${mark} in`);
      }
    }
  });

  test('every tenth of a millimeter up to 2 m is the nearest mark of an inch tape', () => {
    for (let tenths = 0; tenths <= 20_000; tenths += 1) {
      const mark = tapeText(nearestParts(ratio(tenths, 254), 16), 16);
      expect(formatLength(tenths / 10, SIXTEENTHS)).toBe(`${mark} in`);
    }
  });

  test('reading back what was written is off by half a mark at most', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 20_000, noNaN: true }),
        fc.constantFrom(...displays),
        (length, display) => {
          const back = parseLength(formatLength(length, display), display.system);
          if (!back.ok) throw new Error(back.problem);
          expect(Math.abs(back.value - length)).toBeLessThanOrEqual(display.grid / 2 + SAME);
        },
      ),
    );
  });
});

describe('a length as computed', () => {
  test.each([
    [inches(6 / 13), SIXTEENTHS, '0.4615 in'],
    [inches(30 / 11), SIXTEENTHS, '2.7273 in'],
    [inches(46.5), SIXTEENTHS, '46-1/2 in'],
    [inches(46.5) + 0.001, SIXTEENTHS, '46-1/2 in'],
    [inches(1 / 32), SIXTEENTHS, '0.0313 in'],
    [inches(1 / 32), THIRTY_SECONDS, '1/32 in'],
    [inches(0.5) * -1.01, SIXTEENTHS, '-0.505 in'],
    [182.245, MILLIMETERS, '182.25 mm'],
    [1181.1, MILLIMETERS, '1181.1 mm'],
    [1181, MILLIMETERS, '1181 mm'],
    [1181.5, HALF_MILLIMETERS, '1181.5 mm'],
  ])('%d mm', (length, display, text) => {
    expect(formatLengthExact(length, display)).toBe(text);
  });

  test('reads back to within a ten-thousandth of an inch or a hundredth of a millimeter', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 20_000, noNaN: true }),
        fc.constantFrom(...displays),
        (length, display) => {
          const back = parseLength(formatLengthExact(length, display), display.system);
          if (!back.ok) throw new Error(back.problem);
          expect(Math.abs(back.value - length)).toBeLessThanOrEqual(0.005 + SAME);
        },
      ),
    );
  });
});

test.each([
  [feet(8), '8 ft', '2438 mm'],
  [feet(12), '12 ft', '3658 mm'],
  [inches(92.625), '92-5/8 in', '2353 mm'],
  [2400, '94-1/2 in', '2.4 m'],
  [3000, '118-1/8 in', '3 m'],
  [1950, '76-3/4 in', '1.95 m'],
])('a board of %d mm is sold as %s or %s', (length, inch, metric) => {
  expect(formatFeet(length)).toBe(inch);
  expect(formatBoardLength(length, SIXTEENTHS)).toBe(inch);
  expect(formatBoardLength(length, MILLIMETERS)).toBe(metric);
});
