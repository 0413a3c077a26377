import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { workCommand } from '../../src/commands/work/work.js';
import { inches } from '../../src/measure/inch.js';
import { referenceRows } from '../support/reference-rows.js';

/** What the JSON form says; a problem fails the test. */
function told(line: string): Record<string, unknown> {
  const { out, err, code } = workCommand(['spacing', ...line.split(' '), '--as', 'json']);
  expect(err).toBe('');
  expect(code).toBe(0);
  return JSON.parse(out);
}

function text(line: string): string {
  return workCommand(['spacing', ...line.split(' ')]).out;
}

describe('field cases at the saw', () => {
  // Gaps, ends and strips in inches as the field cases reckon them.
  test.each(
    referenceRows(([source]) => source, [
      // F01: 30 / 11; half a gap at each end needs no rounding.
      ['field case F01', '--over 96in --piece 5.5in --count 12 --ends flush', 'gap_mm', 30 / 11],
      ['field case F01', '--over 96in --piece 5.5in --count 12 --ends half', 'gap_mm', 2.5],
      ['field case F01', '--over 96in --piece 5.5in --count 12 --ends half', 'end_gap_mm', 1.25],
      // F02: seven boards and six, and equal openings throughout.
      [
        'field case F02',
        '--over 61.25in --piece 5.5in --gap 3.5in --lap 1in --ends laps',
        'end_gap_mm',
        0.875,
      ],
      [
        'field case F02',
        '--over 61.25in --piece 5.5in --gap 3.5in --lap 1in --ends laps',
        'end_strip_mm',
        1.875,
      ],
      [
        'field case F02',
        '--over 61.25in --piece 5.5in --gap 3.5in --count 6 --ends margins',
        'end_gap_mm',
        5.375,
      ],
      ['field case F02', '--over 61.25in --piece 5.5in --count 6 --ends gap', 'gap_mm', 28.25 / 7],
      ['field case F02', '--over 61.25in --piece 5.5in --count 7 --ends gap', 'gap_mm', 22.75 / 8],
      // F03: fifteen 2 in balusters in 75 in, and fourteen.
      ['field case F03', '--over 75in --piece 2in --count 15 --ends gap', 'gap_mm', 2.8125],
      ['field case F03', '--over 75in --piece 2in --count 14 --ends gap', 'gap_mm', 47 / 15],
      // F05: sixteen on edge over 119 in, clear and center to center.
      ['field case F05', '--over 119in --piece 1.5in --count 16 --ends flush', 'gap_mm', 95 / 15],
      [
        'field case F05',
        '--over 119in --piece 1.5in --count 16 --ends flush',
        'pitch_mm',
        95 / 15 + 1.5,
      ],
      // F26: six 5-3/4 in boards over 36 in leave 0.30 in.
      ['field case F26', '--over 36in --piece 5.75in --count 6 --ends flush', 'gap_mm', 0.3],
    ] as const),
  )('%s: %s tells %s of %f in', (_, line, name, value) => {
    expect(told(line)[name]).toBeCloseTo(inches(value), 9);
  });

  // Layout by geometry: 48 in, 2-1/2 in slats, wish 3/8 in, flush: n = round((48 + 0.375) / 2.875) = 17.
  test('a wished gap settles the count: seventeen slats at 0.3438 in', () => {
    const found = told('--over 48in --piece 2.5in --gap 3/8in');
    expect(found.count).toBe(17);
    expect(found.gap_mm).toBeCloseTo(inches(5.5 / 16), 9);
  });

  test('F01: marks and centers run from one end and the sum closes', () => {
    const found = told('--over 96in --piece 5.5in --count 12 --ends flush');
    expect(found).toMatchObject({ count: 12, ends: 'flush' });
    expect(found.closing_sum_mm).toBeCloseTo(2438.4, 9);
    const marks = found.marks_mm as number[];
    const centers = found.centers_mm as number[];
    // By hand: i x 90.5 / 11 in, and half a picket further.
    expect(marks).toHaveLength(12);
    marks.forEach((mark, i) => {
      expect(mark).toBeCloseTo(inches((i * 90.5) / 11), 8);
      expect(centers[i]).toBeCloseTo(inches((i * 90.5) / 11 + 2.75), 8);
    });
  });

  test('F01: the text names the tape marks, the drift of the rounded gap and the check mark', () => {
    const page = text('--over 96in --piece 5.5in --count 12 --ends flush');
    expect(page).toContain(
      'Near edges: 0, 8-1/4, 16-7/16, 24-11/16, 32-15/16, 41-1/8, 49-3/8, 57-9/16, 65-13/16, 74-1/16, 82-1/4, 90-1/2 in',
    );
    expect(page).toContain(
      'Do not step 2-3/4 in along: after 11 gaps the last piece would be 1/4 in too far.',
    );
    expect(page).toContain('12 x 5-1/2 in + 11 x 2.7273 in, of 96 in');
    expect(page).toContain('piece 7 has its mark at 49-3/8 in and reads 46-5/8 in from there');
  });

  // F04: twelve gaps of 3/8 in; six spacers 3/32 in over are each 1/64 in over, and 12 x 1/64 = 3/16 in.
  test('F04: a stack of six spacers tells the error of one and what it does to the last piece', () => {
    expect(text('--over 50in --piece 3.5in --count 13 --stack 2-11/32in')).toContain(
      'Six spacers should measure 2-1/4 in; at 2-11/32 in each is 1/64 in too long. Stepped along, they would put the last piece 3/16 in too far',
    );
    expect(text('--over 50in --piece 3.5in --count 13 --stack 2-1/4in')).toContain(
      'as they should',
    );
  });

  test('F05: stepping the rounded gap ends 5/16 in short', () => {
    const page = text('--over 119in --piece 1.5in --count 16');
    expect(page).toContain('the last piece would be 5/16 in short');
    expect(page).toContain('Centers: 3/4, 8-9/16, 16-7/16, 24-1/4, 32-1/16, 39-15/16,');
  });

  test('F02: six and seven boards stand side by side, and thin ends are named', () => {
    const page = text('--over 61.25in --piece 5.5in --gap 3.5in --lap 1in --ends laps');
    expect(page).toContain('6 pieces: gap 3-1/2 in, ends 5-3/8 in');
    expect(page).toContain('The ends show less than half a board.');
    expect(page).not.toContain('8 pieces');
  });

  // EN 581-1, from memory: 7 to 12 mm.
  test('a gap that may hold a finger is named with its rule', () => {
    const page = text('--over 1200mm --piece 70mm --count 15 --ends half --units metric');
    expect(page).toContain('A gap from 7 mm to 12 mm may hold a finger (EN 581-1');
    expect(page).toContain('not re-checked');
  });
});

describe('what cannot be laid out', () => {
  test.each([
    ['--over 48in --piece 5.5in --count 12', '--count can be 1 to 8'],
    ['--over 71in --piece 2in --gap 3in --count 15 --ends margins', 'need 72 in'],
    ['--over 4in --piece 5.5in --count 1', '--piece can be up to 4 in'],
    ['--over 96in --piece 5.5in --count 1', '--count 2 to 17'],
    ['--over 96in --piece 5.5in', 'Give either --count or --gap'],
    ['--over 96in --piece 5.5in --count 12 --gap 1in', 'Give either --count or --gap'],
    ['--over 96in --piece 5.5in --gap 300in --ends gap', 'No piece fits'],
    ['--over 96in --piece 5.5in --ends margins', 'give --gap as well'],
    ['--over 96in --piece 5.5in --ends laps --gap 3in', 'give --lap as well'],
    ['--over 96in --piece 5.5in --ends laps --gap 3in --lap 3in', '--lap can be up to 2-3/4 in'],
    ['--over 96in --piece 5.5in --count 12 --lap 1in', '--lap goes with --ends laps'],
    ['--over 96in --piece 5.5in --count 12 --ends flash', 'Did you mean flush?'],
    ['--over 96in --piece 5.5in --count 1.5', 'not a whole number'],
    ['--over 96in --piece 5.5in --count 0', 'From 1 to 1000'],
    ['--over 0in --piece 5.5in --count 2', 'out of range'],
    ['--over 90m --piece 1mm --gap 1mm', 'More than 1000 such pieces'],
  ])('%s: %s', (line, part) => {
    const { out, err, code } = workCommand(['spacing', ...line.split(' ')]);
    expect(err).toContain(part);
    expect(err).toContain('For example');
    expect(out).toBe('');
    expect(code).toBe(2);
  });
});

describe('for every run', () => {
  test('inches and millimeters give one answer, and the sum closes', () => {
    const ends = fc.constantFrom('flush', 'gap', 'half');
    fc.assert(
      fc.property(
        fc.integer({ min: 800, max: 4000 }),
        fc.integer({ min: 8, max: 60 }),
        fc.integer({ min: 2, max: 12 }),
        ends,
        (over, piece, count, end) => {
          const line = (o: string, p: string) =>
            `--over ${o} --piece ${p} --count ${count} --ends ${end}`;
          const inch = told(line(`${(over / 16).toFixed(4)}in`, `${(piece / 16).toFixed(4)}in`));
          const metric = told(
            `${line(`${inches(over / 16).toFixed(4)}mm`, `${inches(piece / 16).toFixed(4)}mm`)} --units metric`,
          );
          expect(metric.gap_mm).toBeCloseTo(Number(inch.gap_mm), 9);
          expect(Math.abs(Number(inch.closing_sum_mm) - inches(over / 16))).toBeLessThan(1e-9);
          const sum =
            count * inches(piece / 16) +
            (count - 1) * Number(inch.gap_mm) +
            2 * Number(inch.end_gap_mm);
          expect(Math.abs(sum - inches(over / 16))).toBeLessThan(1e-9);
        },
      ),
      { numRuns: 60 },
    );
  });
});
