import { describe, expect, test } from 'vitest';
import { parseArea } from '../../src/measure/area-text.js';
import { formatClock, parseClock } from '../../src/measure/clock.js';

describe('times of day', () => {
  // Minutes since midnight, by hand.
  test.each([
    ['17:40', 1060],
    ['5:40 pm', 1060],
    ['9 am', 540],
    ['12 am', 0],
    ['12:30 pm', 750],
    ['0:05', 5],
    ['23:59', 1439],
  ])('%s is %d minutes after midnight', (text, minutes) => {
    expect(parseClock(text)).toEqual({ ok: true, value: minutes });
    expect(parseClock(formatClock(minutes))).toEqual({ ok: true, value: minutes });
  });

  test.each(['9', '25:00', '13 pm', '10:75', 'noon', ''])(
    '"%s" is refused with an example',
    text => {
      expect(parseClock(text)).toMatchObject({ ok: false, hint: expect.stringContaining('17:40') });
    },
  );
});

describe('areas', () => {
  // 1 ft = 304.8 mm, exact.
  test.each([
    ['800 sq ft', 'inch', 800 * 304.8 ** 2],
    ['800', 'inch', 800 * 304.8 ** 2],
    ['75 m2', 'inch', 75e6],
    ['7,5', 'metric', 7.5e6],
    ['155 sq in', 'metric', 155 * 645.16],
    ['100 cm2', 'inch', 10_000],
  ] as const)('%s in %s is read', (text, system, area) => {
    const read = parseArea(text, system);
    expect(read.ok ? read.value : 0).toBeCloseTo(area, 3);
  });

  test.each(['1,200', '-5', 'big', '5 acres', ''])('"%s" is refused', text => {
    expect(parseArea(text, 'inch').ok).toBe(false);
  });
});
