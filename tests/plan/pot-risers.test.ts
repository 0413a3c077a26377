import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, toInches } from '../../src/measure/inch.js';
import { potRiser } from '../../src/plan/pot-risers.js';
import { referenceRows } from '../support/reference-rows.js';

const OFFCUTS = [inches(1.5), inches(0.75)];

describe('blocks under a pot', () => {
  // Field case F40: 1x8 box, 3/4 in bottom, 5 in pot: 1-1/2 in flush, 1 in for a reveal of 1/2 in.
  test.each(
    referenceRows('field case F40', [
      [0, [1.5], 0],
      [0.75, [0.75], 0.75],
    ] as const),
  )('F40: a reveal of %d in is made of layers %o', (reveal, layers, comesTo) => {
    const found = potRiser({
      insideHeight: inches(6.5),
      potHeight: inches(5),
      reveal: inches(reveal),
      layers: OFFCUTS,
    });
    if (!found.ok) throw new Error('too tall');
    expect(found.layers.map(toInches)).toEqual(layers.map(layer => expect.closeTo(layer, 9)));
    expect(toInches(found.reveal)).toBeCloseTo(comesTo, 9);
  });

  test('a pot taller than its box is told by how much', () => {
    const found = potRiser({
      insideHeight: inches(6.5),
      potHeight: inches(8),
      reveal: 0,
      layers: OFFCUTS,
    });
    expect(found).toEqual({ ok: false, tooTall: expect.closeTo(inches(1.5), 9) });
  });

  test('the rim comes within 1/4 in above the wish and half the thinnest layer below it', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 100, max: 600 }),
        fc.integer({ min: 50, max: 400 }),
        (box, pot) => {
          const found = potRiser({
            insideHeight: box,
            potHeight: pot,
            reveal: 12,
            layers: OFFCUTS,
          });
          if (!found.ok) return;
          expect(found.reveal).toBeGreaterThanOrEqual(12 - inches(1 / 4) - 1e-6);
          expect(found.reveal).toBeLessThanOrEqual(12 + inches(0.5) + 1e-6);
        },
      ),
    );
  });
});
