import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inches, toInches } from '../../src/measure/inch.js';
import { parseLength } from '../../src/measure/length.js';
import { snap } from '../../src/measure/round.js';
import { type Ends, gapAt, spread, spreadByCount } from '../../src/model/spacing.js';

const SIXTEENTH = inches(1 / 16);

const run = (over: number, piece: number, ends: Ends) => ({
  over: inches(over),
  piece: inches(piece),
  ends,
});

/** Marks as they are read on a tape, each rounded alone: "0, 8 1/4, 16 7/16". */
function tape(text: string): number[] {
  return text.split(', ').map(mark => {
    const read = parseLength(`${mark} in`, 'inch');
    if (!read.ok) throw new Error(mark);
    return read.value;
  });
}

function rounded(marks: readonly number[]): number[] {
  return marks.map(mark => snap(mark, SIXTEENTH));
}

function expectMarks(marks: readonly number[], text: string): void {
  const expected = tape(text);
  expect(marks).toHaveLength(expected.length);
  rounded(marks).forEach((mark, i) => {
    expect(mark).toBeCloseTo(expected[i] ?? Number.NaN, 9);
  });
}

// Field case F01: 12 pickets of 5-1/2 in on 96 in rails. By hand (96 - 66) / 11 = 30/11 in.
test('twelve pickets flush at both ends of an 8 ft rail stand at marks that end on 96 in', () => {
  const pickets = spreadByCount(run(96, 5.5, 'flush'), 12);
  expect(toInches(pickets.gap)).toBeCloseTo(30 / 11, 12);
  expect(pickets.endGap).toBe(0);
  expectMarks(
    pickets.marks,
    '0, 8 1/4, 16 7/16, 24 11/16, 32 15/16, 41 1/8, 49 3/8, 57 9/16, 65 13/16, 74 1/16, 82 1/4, 90 1/2',
  );
  expect(toInches(pickets.closes)).toBeCloseTo(96, 12);
});

// Field case F01, the other way out: 12 x (5.5 + 2.5) = 96.
test('the same pickets with half a gap at each end need no rounding at all', () => {
  const pickets = spreadByCount(run(96, 5.5, 'half'), 12);
  expect(toInches(pickets.gap)).toBeCloseTo(2.5, 12);
  expect(toInches(pickets.endGap)).toBeCloseTo(1.25, 12);
});

test.each([
  // Field case F02, equal openings throughout between posts 61-1/4 in apart.
  [61.25, 5.5, 6, 4.036],
  [61.25, 5.5, 7, 2.844],
  // Field case F03: 15 balusters of 2 in between posts 75 in apart, and 14.
  [75, 2, 15, 2.8125],
  [75, 2, 14, 3.133],
])('%d in with %d in boards: %d of them leave %d in everywhere', (over, piece, count, gap) => {
  expect(toInches(gapAt(run(over, piece, 'gap'), count))).toBeCloseTo(gap, 3);
});

// Field case F03: a printed rule says 15 balusters at 3 in; 15 x 2 + 16 x 3 = 78 in, 3 in too long.
test('fifteen 2 in balusters at 3 in do not fit in 75 in, and nobody is told that they do', () => {
  const ask = { ...run(75, 2, 'gap'), want: inches(3), least: inches(3), most: inches(3) };
  const result = spread(ask);
  expect(result.ok).toBe(false);
  if (result.ok || result.problem.kind !== 'no-count-fits') throw new Error('it fits?');
  expect(result.problem.fewer.count).toBe(14);
  expect(toInches(result.problem.fewer.gap)).toBeCloseTo(47 / 15, 12);
  expect(result.problem.more.count).toBe(15);
  expect(toInches(result.problem.more.gap)).toBeCloseTo(2.8125, 12);
});

test('with a wish of 3 in and room to give, 14 balusters come nearer than 15', () => {
  // |47/15 - 3| = 0.133 and |2.8125 - 3| = 0.1875.
  const result = spread({
    ...run(75, 2, 'gap'),
    want: inches(3),
    least: inches(2),
    most: inches(4),
  });
  expect(result.ok && result.spacing.count).toBe(14);
});

// Field case F05: 16 boards of 1-1/2 in over 119 in, center marks.
test('sixteen rails across a pergola top have these center marks', () => {
  const rails = spreadByCount(run(119, 1.5, 'flush'), 16);
  expect(toInches(rails.gap)).toBeCloseTo(95 / 15, 12);
  expectMarks(
    rails.marks.map(mark => mark + inches(0.75)),
    '3/4, 8 9/16, 16 7/16, 24 1/4, 32 1/16, 39 15/16, 47 3/4, 55 9/16, 63 7/16, 71 1/4, 79 1/16, 86 15/16, 94 3/4, 102 9/16, 110 7/16, 118 1/4',
  );
});

// Field case F06: every mark is worked out from one datum, so it does not drift however many there are.
test('the last of forty marks is as right as the first', () => {
  const slats = spreadByCount(run(77.3, 1.5, 'gap'), 40);
  const pitch = (77.3 - 60) / 41 + 1.5;
  slats.marks.forEach((mark, i) => {
    expect(Math.abs(toInches(mark) - ((77.3 - 60) / 41 + i * pitch))).toBeLessThan(1e-9);
  });
});

// Field case F50: 107-5/8 in divided into 15 equal steps, each mark rounded alone to 1/16 in.
test('fifteen steps of 107-5/8 in never err by more than 1/32 in', () => {
  // Steps of no thickness are the near edges of a run of gaps: pieces of 7.175 in without any gap.
  const steps = spreadByCount(
    { over: inches(107.625), piece: inches(107.625 / 15), ends: 'flush' },
    15,
  );
  const tops = [...steps.marks.slice(1), steps.closes];
  expectMarks(
    tops,
    '7 3/16, 14 3/8, 21 1/2, 28 11/16, 35 7/8, 43 1/16, 50 1/4, 57 3/8, 64 9/16, 71 3/4, 78 15/16, 86 1/8, 93 1/4, 100 7/16, 107 5/8',
  );
  for (const top of tops)
    expect(Math.abs(snap(top, SIXTEENTH) - top)).toBeLessThanOrEqual(inches(1 / 32) + 1e-9);
});

test.each([
  // Geometry: n = round((W + g) / (w + g)) for flush ends; 48.375 / 2.875 = 16.8, (48 - 42.5) / 16 = 0.34375.
  ['flush', 48, 2.5, 3 / 8, 17, 0.34375],
  // (48 - 12 x 3.5) / 13; 13 slats would leave 2.5 / 14 = 0.179, further from 3/8.
  ['gap', 48, 3.5, 3 / 8, 12, 6 / 13],
  // 96 / 8 = 12 exactly.
  ['half', 96, 5.5, 2.5, 12, 2.5],
] as const)('%s ends: %d in of %d in boards at %d in take %d with %d in between', (...row) => {
  const [ends, over, piece, want, count, gap] = row;
  const result = spread({
    ...run(over, piece, ends),
    want: inches(want),
    least: inches(1 / 8),
    most: inches(3),
  });
  if (!result.ok) throw new Error('no count');
  expect(result.spacing.count).toBe(count);
  expect(toInches(result.spacing.gap)).toBeCloseTo(gap, 12);
});

test('a limit takes away the nearest count, and the next within the limits is chosen', () => {
  // 12 slats leave 0.4615 in; with 0.46 in as the most, 13 slats (0.179 in) are what is left.
  const ask = { ...run(48, 3.5, 'gap'), want: inches(3 / 8), least: inches(1 / 8) };
  const result = spread({ ...ask, most: inches(0.46) });
  expect(result.ok && result.spacing.count).toBe(13);
});

test('an opening no wider than the widest gap stays open', () => {
  const ask = { ...run(2, 2.5, 'gap'), want: inches(3 / 4), least: inches(1 / 8), most: inches(2) };
  const result = spread(ask);
  expect(result.ok && result.spacing).toEqual({
    count: 0,
    gap: inches(2),
    endGap: inches(2),
    marks: [],
    closes: inches(2),
  });
  expect(spread({ ...ask, over: inches(2.5) }).ok).toBe(false);
});

test('one piece flush at both ends fits only where it is as long as the run', () => {
  const ask = { want: 0, least: 0, most: inches(1) };
  expect(spread({ ...run(3.5, 3.5, 'flush'), ...ask })).toMatchObject({
    ok: true,
    spacing: { count: 1 },
  });
  expect(spread({ ...run(4, 3.5, 'flush'), ...ask }).ok).toBe(false);
});

test.each([
  ['a run of less than nothing', -1, 2.5],
  ['a board without width', 48, 0],
  ['a board so thin that there would be thousands', 48, 0.001],
])('%s is refused', (_, over, piece) => {
  const result = spread({ ...run(over, piece, 'gap'), want: 0, least: 0, most: inches(1) });
  expect(!result.ok && result.problem.kind).toBe('not-a-run');
});

test('pieces, gaps and ends always add up to the run', () => {
  fc.assert(
    fc.property(
      fc.record({
        over: fc.double({ min: 100, max: 4000, noNaN: true }),
        piece: fc.double({ min: 10, max: 150, noNaN: true }),
        ends: fc.constantFrom<Ends>('flush', 'gap', 'half'),
        want: fc.double({ min: 0, max: 60, noNaN: true }),
      }),
      ask => {
        const result = spread({ ...ask, least: 0, most: 80 });
        if (!result.ok) return;
        const { spacing } = result;
        expect(Math.abs(spacing.closes - ask.over)).toBeLessThan(1e-9);
        // No other count comes nearer to the wish.
        for (const count of [spacing.count - 1, spacing.count + 1]) {
          if (count < 2) continue;
          const gap = gapAt(ask, count);
          if (gap < 0 || gap > 80 || spacing.count < 2) continue;
          expect(Math.abs(gap - ask.want)).toBeGreaterThanOrEqual(
            Math.abs(spacing.gap - ask.want) - 1e-6,
          );
        }
      },
    ),
  );
});
