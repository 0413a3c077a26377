import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inches } from '../../src/measure/inch.js';
import { stackTo } from '../../src/model/stack.js';

const FRAME = inches(1.5);
const FLOOR = inches(0.75);

test.each([
  // Tables of sums of 1-1/2 in and 3/4 in, worked by hand.
  ['three of the thick ones pass 4-1/4 in by just 1/4 in', 4.25, [1.5, 1.5, 1.5]],
  ['4-3/16 in would be passed by more, so it stays 7/16 in low', 4.1875, [1.5, 1.5, 0.75]],
  ['nothing under a gap of 3/8 in, half a thin layer', 0.375, []],
  ['one thin layer for 5/8 in, 1/8 in high', 0.625, [0.75]],
  ['one thick layer rather than two thin ones', 1.5, [1.5]],
  ['nothing for nothing', 0, []],
])('%s', (_, height, layers) => {
  const result = stackTo(inches(height), [FLOOR, FRAME]);
  expect(result).toEqual({ ok: true, layers: layers.map(inches) });
});

test('a pot that is too tall by 3/4 in is told so', () => {
  expect(stackTo(-inches(0.75), [FRAME])).toEqual({ ok: false, tooTall: inches(0.75) });
});

test('layers without a thickness and towers of hundreds are refused', () => {
  expect(stackTo(100, [])).toEqual({ ok: false, tooMany: 0 });
  expect(stackTo(100_000, [FLOOR])).toMatchObject({ ok: false });
});

test('no other pile of the same boards comes nearer', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 600 }), height => {
      const result = stackTo(height, [45, 21]);
      if (!result.ok) throw new Error('refused');
      const total = result.layers.reduce((sum, layer) => sum + layer, 0);
      expect(total).toBeLessThanOrEqual(height + 6.35 + 1e-6);
      for (let thick = 0; thick <= 14; thick += 1)
        for (let thin = 0; thin <= 29; thin += 1) {
          const other = thick * 45 + thin * 21;
          if (other > height + 6.35) continue;
          expect(Math.abs(other - height)).toBeGreaterThanOrEqual(Math.abs(total - height) - 1e-9);
        }
    }),
    { numRuns: 60 },
  );
});
