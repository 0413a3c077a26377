import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boardYear } from '../../src/materials/board-year.js';
import { formFor, movement, type Piece } from '../../src/materials/movement.js';
import { byCoefficient, byFraming, byTotalShrinkage } from '../../src/materials/movement-forms.js';
import { saturationOf } from '../../src/materials/saturation.js';
import { ownSwing } from '../../src/materials/seasons.js';
import { SPECIES, speciesNamed } from '../../src/materials/species.js';
import { inches, toInches } from '../../src/measure/inch.js';
import { referenceRows } from '../support/reference-rows.js';

function board(size: number, name: string, more: Partial<Piece> = {}): Piece {
  const wood = speciesNamed(name);
  if (wood === undefined) throw new Error(name);
  return { size, across: 'width', wood, grain: 'flat', ...more };
}

describe('coefficient form', () => {
  // Size, coefficient, moisture before and after, printed change. Sizes in inches or mm, as printed.
  test.each(
    referenceRows(([source]) => source, [
      ['Wood Handbook chapter 13 example, from memory, inches', 9.15, 0.00245, 8, 11, 0.067, 3],
      ['Wood Handbook chapter 13 example, from memory, mm', 232, 0.00245, 8, 11, 1.705, 3],
      ['NWFA flooring example, mesquite', 5, 0.00129, 6, 9, 0.019, 3],
      ['WOOD magazine example, red alder', 8, 0.0026, 6, 12, 0.1248, 4],
      // Field case F27, a 6 in board over 8 points: true mahogany 0.07 in, Philippine types 0.14 in.
      ['field case F27', 6, 0.0015, 6, 14, 0.07, 2],
      ['field case F27', 6, 0.0029, 6, 14, 0.14, 2],
      // Field case F31, cypress over 6 points: 72 in across and one 8 in board.
      ['field case F31', 72, 0.0022, 7, 13, 0.95, 2],
      ['field case F31', 8, 0.0022, 7, 13, 0.106, 3],
    ] as const),
  )('%s: %f x %f from %i to %i changes by %f', (_, size, perPoint, from, to, printed, places) => {
    expect(Number(byCoefficient(size, perPoint, { from, to }).change.toFixed(places))).toBe(
      printed,
    );
  });

  test('the white fir of the handbook ends at 9.217 in, and at 233.7 mm', () => {
    const at = { from: 8, to: 11 };
    expect(9.15 + byCoefficient(9.15, 0.00245, at).change).toBeCloseTo(9.217, 3);
    expect(232 + byCoefficient(232, 0.00245, at).change).toBeCloseTo(233.7, 1);
  });

  test.each(
    referenceRows(([source]) => source, [
      // F26: 5-3/4 in Douglas-fir 0.092 in a board, 34-1/2 in glued solid 0.55 in, over 6 points.
      ['field case F26', 'douglas-fir', 'flat', inches(5.75), 6, inches(0.092), 0.01],
      ['field case F26', 'douglas-fir', 'flat', inches(34.5), 6, inches(0.55), 0.1],
      // F28: a 20 mm slat of oak 0.44 mm or 0.22 mm; 60 of them 26 mm or 13 mm.
      ['field case F28', 'white-oak', 'flat', 20, 6, 0.44, 0.005],
      ['field case F28', 'white-oak', 'quarter', 20, 6, 0.22, 0.005],
      ['field case F28', 'white-oak', 'flat', 60 * 20, 6, 26, 0.5],
      ['field case F28', 'white-oak', 'quarter', 60 * 20, 6, 13, 0.5],
      // F30: a 32 in door of treated pine planks 0.68 in over 8 points.
      ['field case F30', 'southern-pine', 'flat', inches(32), 8, inches(0.68), 0.1],
    ] as const),
  )('%s: %s %s-sawn %f mm wide over %i points', (_, wood, grain, size, points, told, half) => {
    const moved = movement(board(size, wood, { grain }), 6, 6 + points);
    expect(moved.form).toBe('coefficient');
    expect(Math.abs(moved.change - told)).toBeLessThanOrEqual(half);
  });

  // Field case F28: the 20 mm that one slat fewer gives cover 4.6 points flat-sawn, 9.3 quarter-sawn.
  test.each(
    referenceRows('field case F28', [
      ['flat', 4.6],
      ['quarter', 9.3],
    ] as const),
  )('F28: one slat fewer makes room for %s-sawn oak over %f points', (grain, points) => {
    const perPoint = movement(board(1200, 'white-oak', { grain }), 8, 9).change;
    expect(Number((20 / perPoint).toFixed(1))).toBe(points);
  });
});

describe('total-shrinkage form', () => {
  // Wood Handbook chapter 13 tells a size from green to M: green x (1 - S/100 x (30 - M)/30).
  const fromGreen = (green: number, shrinks: number, moisture: number) =>
    green * (1 - ((shrinks / 100) * (30 - moisture)) / 30);

  test.each([
    ['white-oak', 10.5, 30, 12],
    ['white-oak', 10.5, 19, 8],
    ['douglas-fir', 7.6, 19, 9],
    ['southern-pine', 7.5, 30, 15],
    ['spruce-pine-fir', 7.8, 12, 20],
    ['ipe', 10.1, 4, 16],
  ])(
    '%s of %f percent shrinkage from %i to %i agrees with the size from green',
    (wood, shrinks, from, to) => {
      const before = fromGreen(100, shrinks, from);
      const moved = movement(board(before, wood), from, to);
      expect(moved.form).toBe('total-shrinkage');
      expect(moved.size).toBeCloseTo(fromGreen(100, shrinks, to), 9);
    },
  );

  // By hand: (12 - 28) / (100 x 30 / 7.5 - 30 + 28) = -16 / 398, times 5-1/2 in.
  test('F29: flat-sawn pine goes from 28 to 12 percent and loses 0.221 in of 5-1/2 in', () => {
    const moved = movement(board(inches(5.5), 'southern-pine'), 28, 12);
    expect(toInches(moved.change)).toBeCloseTo((-16 / 398) * 5.5, 9);
    expect(moved.factor).toBe('(12 - 28) / (100 x 30 / 7.5 - 30 + 28)');
  });

  test('green to oven-dry loses the whole shrinkage, sideways and edgeways', () => {
    expect(
      byTotalShrinkage(100, { percent: 7.6, saturation: 30 }, { from: 30, to: 0 }).change,
    ).toBeCloseTo(-7.6, 9);
    expect(movement(board(100, 'white-oak', { across: 'thickness' }), 30, 0).change).toBeCloseTo(
      -5.6,
      9,
    );
  });

  // The three cedars and redwoods stop at 22 %, as their coefficients tell.
  test.each([
    ['douglas-fir', 30],
    ['western-redcedar', 22],
    ['redwood', 22],
  ])('%s is no bigger at 80 percent than at %i, and says so', (wood, saturation) => {
    const soaked = movement(board(100, wood), 80, 10);
    expect(soaked.change).toBe(movement(board(100, wood), saturation, 10).change);
    expect(soaked.why).toContain(`wetter than ${saturation} % it is no bigger`);
  });
});

describe('wet framing lumber', () => {
  // USDA FPL-RP-489 at 15 %: thickness 2.35 %, width 2.80 %. The formula gives 2.347 and 2.806.
  test.each(
    referenceRows('USDA FPL-RP-489', [
      ['thickness', 15, 2.35],
      ['width', 15, 2.8],
    ] as const),
  )('%s at %i percent has lost %f percent', (across, to, printed) => {
    expect(Math.abs(-byFraming(100, across, to).change - printed)).toBeLessThan(0.01);
  });

  // Field case F29: a soaked 5/4 x 6 of treated pine loses 0.154 in to 15 %, 0.19 in to 12 %.
  test.each(
    referenceRows('field case F29', [
      [15, 0.154, 3],
      [12, 0.19, 2],
    ] as const),
  )('F29: a soaked 5-1/2 in deck board at %i percent is %f in narrower', (to, told, places) => {
    const moved = movement(board(inches(5.5), 'treated pine', { grain: 'unknown' }), 60, to);
    expect(moved.form).toBe('framing');
    expect(toInches(moved.change)).toBeCloseTo(-told, places);
  });
});

describe('which form is used', () => {
  test.each([
    ['white-oak', 'flat', 12, 8, 'coefficient'],
    ['white-oak', 'flat', 6, 14, 'coefficient'],
    ['white-oak', 'flat', 5, 14, 'total-shrinkage'],
    ['white-oak', 'flat', 6, 15, 'total-shrinkage'],
    // Hardwood is no framing lumber; sorted grain has its own figures; cedar saturates sooner.
    ['white-oak', 'unknown', 30, 12, 'total-shrinkage'],
    ['southern-pine', 'flat', 30, 12, 'total-shrinkage'],
    ['western-redcedar', 'unknown', 30, 12, 'total-shrinkage'],
    ['southern-pine', 'unknown', 30, 12, 'framing'],
    ['southern-pine', 'unknown', 28, 19, 'framing'],
    ['southern-pine', 'unknown', 28, 8, 'framing'],
    ['southern-pine', 'unknown', 27, 12, 'total-shrinkage'],
    ['southern-pine', 'unknown', 30, 7, 'total-shrinkage'],
    ['southern-pine', 'unknown', 30, 20, 'total-shrinkage'],
  ] as const)('%s, %s grain, from %i to %i: %s', (wood, grain, from, to, form) => {
    expect(formFor(board(100, wood, { grain }), from, [to])).toBe(form);
  });

  test('a remembered coefficient is told as not re-checked, a seen one is not', () => {
    expect(movement(board(100, 'white-oak'), 12, 8).source).toEqual({
      publication: 'USDA Wood Handbook (FPL-GTR-190)',
      place: 'Table 13-5, white oak group, by equation 13-2',
      standing: 'checked',
    });
    expect(movement(board(100, 'redwood'), 12, 8).source.standing).toBe('memory');
    // Equation 13-3 itself was not looked up.
    expect(movement(board(100, 'white-oak'), 20, 8).source.standing).toBe('memory');
  });

  test('unknown grain counts as the one that moves more, in width and in thickness', () => {
    for (const across of ['width', 'thickness'] as const) {
      const by = (grain: Piece['grain']) =>
        movement(board(100, 'white-oak', { grain, across }), 8, 12).change;
      expect(by('unknown')).toBe(Math.max(by('flat'), by('quarter')));
    }
    expect(movement(board(100, 'white-oak', { across: 'thickness' }), 8, 12).change).toBeCloseTo(
      0.72,
      9,
    );
  });
});

describe('for every wood', () => {
  const anyPiece = fc.record({
    size: fc.double({ min: 5, max: 2000, noNaN: true }),
    across: fc.constantFrom('width' as const, 'thickness' as const),
    wood: fc.constantFrom(...SPECIES),
    grain: fc.constantFrom('flat' as const, 'quarter' as const, 'unknown' as const),
  });
  const moisture = fc.double({ min: 0, max: 60, noNaN: true });

  test('a board that gets wetter never narrows, one that dries never widens', () => {
    fc.assert(
      fc.property(anyPiece, moisture, moisture, (piece, from, to) => {
        const { change } = movement(piece, from, to);
        expect(to >= from ? change >= 0 : change <= 0).toBe(true);
      }),
    );
  });

  test('in its wettest time no board is narrower than in its driest, whatever it is today', () => {
    fc.assert(
      fc.property(anyPiece, moisture, moisture, moisture, (piece, today, one, other) => {
        const { wet, dry } = boardYear(piece, today, ownSwing(one, other));
        expect(wet.size).toBeGreaterThanOrEqual(dry.size - 1e-9);
      }),
    );
  });

  test('twice the board moves twice as far, and a board that stays as wet stays as wide', () => {
    fc.assert(
      fc.property(anyPiece, moisture, moisture, (piece, from, to) => {
        const twice = { ...piece, size: 2 * piece.size };
        expect(movement(twice, from, to).change).toBeCloseTo(
          2 * movement(piece, from, to).change,
          9,
        );
        if (saturationOf(piece.wood).value > from)
          expect(movement(piece, from, from).change).toBeCloseTo(0, 12);
      }),
    );
  });
});
