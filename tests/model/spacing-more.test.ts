import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, toInches } from '../../src/measure/inch.js';
import { parseLength } from '../../src/measure/length.js';
import { snap } from '../../src/measure/round.js';
import { type Ends, spreadByCount } from '../../src/model/spacing.js';
import { compareCounts } from '../../src/model/spacing-compare.js';
import { driftOver, errorFromStack } from '../../src/model/spacing-drift.js';
import { spreadWithLaps } from '../../src/model/spacing-laps.js';
import { mostWithMargins, spreadWithMargins } from '../../src/model/spacing-margins.js';
import { centersOf, checkMark, worstRounding } from '../../src/model/spacing-marks.js';
import { referenceRows } from '../support/reference-rows.js';

const SIXTEENTH = inches(1 / 16);

/** Marks as they are read on a tape: "0, 8 1/4, 16 7/16". */
function tape(text: string): readonly number[] {
  return text.split(', ').map(mark => {
    const read = parseLength(`${mark} in`, 'inch');
    if (!read.ok) throw new Error(mark);
    return read.value;
  });
}

const POSTS = { over: inches(61.25), piece: inches(5.5), opening: inches(3.5), lap: inches(1) };

describe('hidden laps', () => {
  // Field case F02: front boards, what shows at each end, the strip with its lap.
  test.each([
    [7, 0.875, 1.875, true],
    [6, 5.375, 6.375, false],
  ] as const)(
    'F02: %i front boards show %f in at each end over strips of %f in',
    (count, reveal, strip, narrow) => {
      const panel = spreadWithLaps(POSTS, count);
      expect(toInches(panel.reveal)).toBeCloseTo(reveal, 9);
      expect(toInches(panel.endStrip)).toBeCloseTo(strip, 9);
      expect(panel.narrowEnds).toBe(narrow);
      expect(toInches(panel.fronts.closes)).toBeCloseTo(61.25, 9);
    },
  );

  // By hand for seven: backing 3-1/2 + 2 x 1 = 5-1/2 in, behind the front board that ends at 6-3/8 in
  // from 5-3/8 in on, then every 9 in; the far strip begins at 61-1/4 - 1-7/8 = 59-3/8 in.
  test('backing boards stand behind the openings, and strips at both ends', () => {
    const { backing, backingMarks } = spreadWithLaps(POSTS, 7);
    expect(toInches(backing)).toBeCloseTo(5.5, 9);
    const byHand = [0, 5.375, 14.375, 23.375, 32.375, 41.375, 50.375, 59.375];
    expect(backingMarks).toHaveLength(byHand.length);
    backingMarks.forEach((mark, i) => {
      expect(toInches(mark)).toBeCloseTo(byHand[i] ?? Number.NaN, 9);
    });
  });

  test('without a front board there is nothing to lap', () => {
    expect(spreadWithLaps(POSTS, 0).backingMarks).toEqual([]);
  });
});

describe('a fixed gap with equal margins', () => {
  // Field case F02, without its laps; the most that fit are seven: eight need 8 x 5.5 + 7 x 3.5 = 68.5 in.
  test('F02: seven boards are the most that fit at 3-1/2 in', () => {
    const run = { over: inches(61.25), piece: inches(5.5), gap: inches(3.5) };
    expect(mostWithMargins(run)).toBe(7);
    expect(toInches(spreadWithMargins(run, 8).endGap)).toBeCloseTo((61.25 - 68.5) / 2, 9);
  });

  test('pieces that fill the run to a hair still fit, with no margin', () => {
    const run = {
      over: 3 * inches(3.5) + 2 * inches(1 / 3),
      piece: inches(3.5),
      gap: inches(1 / 3),
    };
    expect(mostWithMargins(run)).toBe(3);
    expect(spreadWithMargins(run, 3).endGap).toBeCloseTo(0, 9);
  });

  test.each([0, 1])('%i pieces close as well', count => {
    const spacing = spreadWithMargins({ over: 100, piece: 20, gap: 7 }, count);
    expect(spacing.closes).toBeCloseTo(100, 9);
    expect(spacing.endGap).toBe(count === 0 ? 100 : 40);
  });
});

describe('counts side by side', () => {
  const balusters = { over: inches(75), piece: inches(2), ends: 'gap' as const };

  // Field case F03: fifteen leave 2-13/16 in, fourteen 3.133 in. Sixteen by hand: (75 - 32) / 17.
  test('F03: fourteen balusters between thirteen and fifteen', () => {
    const compared = compareCounts(14, count => spreadByCount(balusters, count));
    expect(compared.map(({ count }) => count)).toEqual([13, 14, 15]);
    const gaps = compared.map(({ spacing }) => toInches(spacing.gap));
    expect(gaps[0]).toBeCloseTo(49 / 14, 9);
    expect(gaps[1]).toBeCloseTo(47 / 15, 9);
    expect(gaps[2]).toBeCloseTo(2.8125, 9);
  });

  test('what would overlap, and no piece at all, are left out', () => {
    const tight = { over: 100, piece: 50, ends: 'flush' as const };
    expect(
      compareCounts(2, count => spreadByCount(tight, count)).map(({ count }) => count),
    ).toEqual([1, 2]);
    expect(
      compareCounts(1, count => spreadByCount(tight, count)).map(({ count }) => count),
    ).toEqual([1, 2]);
  });
});

describe('drift of a stepped spacer', () => {
  // Error of a spacer in inches, gaps, drift at the last piece in inches.
  test.each(
    referenceRows(([source]) => source, [
      ['field case F04', 1 / 64, 12, 3 / 16],
      ['field case F04', 1 / 32, 12, 3 / 8],
      // F01: 2-3/4 in stepped eleven times in place of 30/11 in runs 1/4 in past the rail.
      ['field case F01', 2.75 - 30 / 11, 11, 0.25],
      // F05: 6-5/16 in stepped fifteen times ends 5/16 in short, 6-3/8 in ends 5/8 in long.
      ['field case F05', 6.3125 - 95 / 15, 15, -5 / 16],
      ['field case F05', 6.375 - 95 / 15, 15, 5 / 8],
      // F06: ten slats walked with slat and spacer are 20 moves, each off by 1/64 in.
      ['field case F06', 1 / 64, 20, 5 / 16],
      // F50: 182 mm and 7-3/16 in a step in place of 107-5/8 in / 15 (in inches both).
      ['field case F50', 7.1875 - 107.625 / 15, 15, 3 / 16],
    ] as const),
  )('%s: %f in over %i gaps drifts %f in', (_, error, steps, told) => {
    expect(toInches(driftOver(steps, inches(error)).worst)).toBeCloseTo(told, 9);
  });

  // Field case F50 in millimeters: fifteen steps of 182 mm end 3.7 mm short of 2733.7.
  test('F50: dropping the decimals of 182.245 mm fifteen times ends 3.7 mm short', () => {
    const step = inches(107.625) / 15;
    expect(driftOver(15, 182 - step).worst).toBeCloseTo(-3.7, 1);
  });

  // Layout by error propagation: 12 slats at 1/32 in by chance: 0.11 in.
  test('errors by chance add up to the square root of the steps', () => {
    expect(toInches(driftOver(12, inches(1 / 32)).random)).toBeCloseTo(0.108, 3);
    expect(driftOver(12, -1).random).toBeCloseTo(Math.sqrt(12), 9);
  });

  // Field case F04: six stacked spacers 6/64 in over are each 1/64 in over.
  test.each(referenceRows('field case F04', [[6, 6 / 64, 1 / 64]] as const))(
    'F04: a stack of %i spacers %f in over tells %f in each',
    (count, excess, each) => {
      const gap = inches(3 / 8);
      const stack = count * gap + inches(excess);
      expect(toInches(errorFromStack(stack, gap, count))).toBeCloseTo(each, 9);
    },
  );
});

describe('marks', () => {
  // Field case F05: sixteen 1-1/2 in boards on edge, flush over 119 in: 6.333 in clear, centers as read.
  const PERGOLA =
    '3/4, 8 9/16, 16 7/16, 24 1/4, 32 1/16, 39 15/16, 47 3/4, 55 9/16, 63 7/16, 71 1/4, 79 1/16, 86 15/16, 94 3/4, 102 9/16, 110 7/16, 118 1/4';
  const pergola = spreadByCount({ over: inches(119), piece: inches(1.5), ends: 'flush' }, 16);
  const centers = centersOf(pergola.marks, inches(1.5));

  test('F05: the clear gap is 6.333 in', () => {
    expect(toInches(pergola.gap)).toBeCloseTo(6.333, 3);
    expect(centers).toHaveLength(16);
  });

  test.each(
    referenceRows(
      'field case F05',
      tape(PERGOLA).map((mark, i) => [i, mark] as const),
    ),
  )('F05: center %i lies at %f mm on the tape', (i, mark) => {
    expect(snap(centers[i] ?? Number.NaN, SIXTEENTH)).toBeCloseTo(mark, 9);
  });

  // By hand for field case F01: 6 x 90.5 / 11 = 49.3636 in, and 96 less that.
  test('F01: the seventh picket is read from both ends', () => {
    const { marks } = spreadByCount({ over: inches(96), piece: inches(5.5), ends: 'flush' }, 12);
    const check = checkMark(marks, inches(96));
    expect(check?.piece).toBe(7);
    expect(toInches(check?.fromDatum ?? Number.NaN)).toBeCloseTo((6 * 90.5) / 11, 9);
    expect(toInches(check?.fromFarEnd ?? Number.NaN)).toBeCloseTo(96 - (6 * 90.5) / 11, 9);
    expect(checkMark([], 100)).toBeUndefined();
  });

  // Field case F50: marks k x 7.175 in, each rounded alone, never err by more than 1/32 in.
  const STEPS =
    '7 3/16, 14 3/8, 21 1/2, 28 11/16, 35 7/8, 43 1/16, 50 1/4, 57 3/8, 64 9/16, 71 3/4, 78 15/16, 86 1/8, 93 1/4, 100 7/16, 107 5/8';
  test.each(
    referenceRows(
      'field case F50',
      tape(STEPS).map((mark, i) => [i + 1, mark] as const),
    ),
  )('F50: step %i of fifteen lies at %f mm on the tape', (step, mark) => {
    expect(snap(step * inches(7.175), SIXTEENTH)).toBeCloseTo(mark, 9);
  });
  test('F50: rounded alone they are off by 1/32 in at most', () => {
    const marks = Array.from({ length: 15 }, (_, i) => (i + 1) * inches(7.175));
    expect(worstRounding(marks, SIXTEENTH)).toBeLessThanOrEqual(inches(1 / 32));
    expect(worstRounding(marks, SIXTEENTH)).toBeGreaterThan(0);
    expect(worstRounding([], SIXTEENTH)).toBe(0);
  });
});

describe('for every run', () => {
  const length = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const ends = fc.constantFrom<Ends>('flush', 'gap', 'half');
  const count = fc.integer({ min: 2, max: 200 });

  test('pieces, gaps and ends add up to the run within a billionth of a millimeter', () => {
    fc.assert(
      fc.property(
        length(1, 20000),
        length(1, 300),
        length(0, 100),
        ends,
        count,
        (over, piece, gap, end, n) => {
          const added = (it: { gap: number; endGap: number }) =>
            n * piece + (n - 1) * it.gap + 2 * it.endGap;
          for (const spacing of [
            spreadByCount({ over, piece, ends: end }, n),
            spreadWithMargins({ over, piece, gap }, n),
            spreadWithLaps({ over, piece, opening: gap, lap: piece / 5 }, n).fronts,
          ]) {
            expect(Math.abs(spacing.closes - over)).toBeLessThan(1e-9);
            expect(Math.abs(added(spacing) - over)).toBeLessThan(1e-9);
          }
        },
      ),
    );
  });

  test('the most that fit do fit, and one more does not', () => {
    fc.assert(
      fc.property(length(1, 20000), length(5, 300), length(0, 100), (over, piece, gap) => {
        const run = { over, piece, gap };
        const most = mostWithMargins(run);
        if (most > 0) expect(spreadWithMargins(run, most).endGap).toBeGreaterThanOrEqual(-1e-3);
        expect(spreadWithMargins(run, most + 1).endGap).toBeLessThan(0);
      }),
    );
  });

  test('inches and millimeters give one answer', () => {
    const sixteenths = fc.integer({ min: 16, max: 16 * 200 });
    fc.assert(
      fc.property(
        sixteenths,
        fc.integer({ min: 4, max: 200 }),
        ends,
        count,
        (over, piece, end, n) => {
          const inInches = spreadByCount({ over: over / 16, piece: piece / 16, ends: end }, n);
          const inMm = spreadByCount(
            { over: inches(over / 16), piece: inches(piece / 16), ends: end },
            n,
          );
          inMm.marks.forEach((mark, i) => {
            expect(mark).toBeCloseTo(inches(inInches.marks[i] ?? Number.NaN), 8);
          });
        },
      ),
    );
  });
});
