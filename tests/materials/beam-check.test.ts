import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { betterBeams, betterWords, longestSpan } from '../../src/materials/beam-better.js';
import { type BeamCase, checkBeam, sagText } from '../../src/materials/beam-check.js';
import { strengthOf } from '../../src/materials/design-values-species.js';
import { sectionNamed } from '../../src/materials/section.js';
import { speciesNamed } from '../../src/materials/species.js';
import { MILLIMETERS, SIXTEENTHS } from '../../src/measure/displays.js';
import { inches, toInches } from '../../src/measure/inch.js';
import { pounds, toPounds } from '../../src/measure/weight.js';
import { referenceRows } from '../support/reference-rows.js';

function wood(name: string) {
  const found = speciesNamed(name);
  if (found === undefined) throw new Error(`${name} is missing`);
  return found;
}

function soldAs(name: string, species = 'redwood') {
  const section = sectionNamed(name);
  if (section === undefined) throw new Error(`${name} is missing`);
  return { wood: wood(species), section };
}

type Told = {
  species?: string;
  thickness?: number;
  width?: number;
  stands?: 'edge' | 'flat';
  span?: number;
  load?: number;
  kind?: 'spread' | 'point';
  boards?: number;
  wet?: boolean;
};

/** A beam in inches and pounds. */
function beam(told: Told): BeamCase {
  const { thickness = 1.5, width = 3.5, span = 48, load = 250, kind = 'point' } = told;
  const weight = pounds(load);
  return {
    use: {
      board: { thickness: inches(thickness), width: inches(width) },
      stands: told.stands ?? 'edge',
      wet: told.wet ?? true,
      time: 'ten-years',
    },
    wood: strengthOf(wood(told.species ?? 'redwood'), inches(width)),
    boards: told.boards ?? 1,
    span: inches(span),
    load: kind === 'spread' ? { kind, weight } : { kind, weight, over: 0 },
    sagRatio: 240,
  };
}

describe('a beam is checked', () => {
  // By hand, in pounds and inches. Redwood No. 2, open grain: 725 psi, x 1.5 for a 2x4 = 1087.5 (at most
  // 1150, so not taken down for wet), flat x 1.1 = 1196; shear 160 x 0.97 = 155.2. Douglas fir No. 2:
  // 900 x 1.5 x 0.85 = 1147.5. S 3.0625 on edge, 1.3125 flat; PL/4.
  test.each(
    referenceRows('NDS bending worked by hand', [
      [{ span: 46.5 }, (250 * 46.5) / 4 / 3.0625 / 1087.5],
      [{ span: 24, stands: 'flat' }, (250 * 24) / 4 / 1.3125 / 1196.25],
      [{ species: 'douglas-fir', span: 48 }, (250 * 48) / 4 / 3.0625 / 1147.5],
      [{ width: 5.5, span: 82.5, load: 500, kind: 'spread' }, (500 * 82.5) / 8 / 7.5625 / 942.5],
      [{ species: 'southern-pine', span: 48 }, (250 * 48) / 4 / 3.0625 / 1100],
      [{ thickness: 1, span: 16, stands: 'flat' }, (250 * 16) / 4 / (3.5 / 6) / 1196.25],
    ] as const),
  )('%j uses %d of its bending strength', (told, share) => {
    const check = checkBeam(beam(told), SIXTEENTHS);
    expect(check.parts.find(part => part.of === 'bending')?.share).toBeCloseTo(share, 6);
  });

  // A point load right beside a support is all shear: 250 x 1.5 / 5.25 = 71.4 psi of 155.2.
  test('shear is that of a person sitting right beside the support', () => {
    const check = checkBeam(beam({}), SIXTEENTHS);
    expect(check.parts.find(part => part.of === 'shear')?.share).toBeCloseTo(71.43 / 155.2, 4);
  });

  // Sag: 250 x 48^3 / (48 x 0.9e6 x 5.359) = 0.1194 in, L/402.
  test('sag counts wood as wet', () => {
    const check = checkBeam(beam({}), SIXTEENTHS);
    expect(toInches(check.sag)).toBeCloseTo(0.1194, 4);
    expect(check.because).toContain('0.12 in, one part in 402');
  });

  test.each([
    [{ span: 36 }, 'holds by this sum', 'bending'],
    [{ span: 52 }, 'look again', 'bending'],
    [{ span: 60 }, 'does not hold by this sum', 'bending'],
    [{ span: 4, load: 2000 }, 'does not hold by this sum', 'shear'],
    [{ span: 84, load: 60, stands: 'flat' }, 'look again', 'bending'],
  ] as const)('%j: %s, decided by %s', (told, verdict, of) => {
    const check = checkBeam(beam(told), SIXTEENTHS);
    expect([check.verdict, check.governing.of]).toEqual([verdict, of]);
  });

  test('the largest load is the one that uses all of the strength', () => {
    const { mostLoad } = checkBeam(beam({ span: 60 }), SIXTEENTHS);
    const again = checkBeam(beam({ span: 60, load: toPounds(mostLoad) }), SIXTEENTHS);
    expect(again.governing.share).toBeCloseTo(1, 9);
  });

  test('a notch from below decides, and the words say what it costs', () => {
    const notched: BeamCase = {
      ...beam({}),
      notch: { edge: 'bottom', depth: inches(1.75), beyond: 0, bearing: inches(1.5) },
    };
    const check = checkBeam(notched, SIXTEENTHS);
    expect([check.verdict, check.governing.of]).toEqual(['does not hold by this sum', 'notch']);
    expect(check.because).toContain('leaves 13% of the shear strength');
    const above = checkBeam(
      { ...notched, notch: { edge: 'top', depth: inches(1.75), beyond: 0, bearing: inches(1.5) } },
      SIXTEENTHS,
    );
    expect(above.governing.of).toBe('bending');
    expect(above.because).toContain('costs nothing');
  });

  test('European boards are checked with the load factor on the side of the wood', () => {
    // C16, 45 x 95, edge, wet, people: 16 x .65 / 1.3 / 1.5 x (150/95)^.2 = 5.333 x 1.0957 = 5.844.
    // 100 kg in the middle of 1200: 980.665 x 1200 / 4 = 294 200 over W 67 687.5 = 4.346.
    const check = checkBeam(
      {
        use: { board: { thickness: 45, width: 95 }, stands: 'edge', wet: true, time: 'ten-years' },
        wood: strengthOf(wood('scots-pine'), 95),
        boards: 1,
        span: 1200,
        load: { kind: 'point', weight: 100, over: 0 },
        sagRatio: 240,
      },
      MILLIMETERS,
    );
    expect(check.parts[0]?.share).toBeCloseTo(4.346 / 5.844, 3);
  });
});

const spans = fc.double({ min: 6, max: 120, noNaN: true });
const more = fc.double({ min: 0, max: 60, noNaN: true });
const beams = fc.record({
  species: fc.constantFrom('redwood', 'douglas-fir', 'southern-pine', 'scots-pine', 'ipe'),
  stands: fc.constantFrom('edge' as const, 'flat' as const),
  kind: fc.constantFrom('spread' as const, 'point' as const),
  width: fc.constantFrom(2.5, 3.5, 5.5, 7.25),
  thickness: fc.constantFrom(0.75, 1, 1.5),
});

describe('what must always be so', () => {
  test('a longer span never holds more', () => {
    fc.assert(
      fc.property(beams, spans, more, (told, span, longer) => {
        const near = checkBeam(beam({ ...told, span }), SIXTEENTHS).mostLoad;
        const far = checkBeam(beam({ ...told, span: span + longer }), SIXTEENTHS).mostLoad;
        expect(far).toBeLessThanOrEqual(near * (1 + 1e-9));
      }),
    );
  });

  test('a deeper notch never holds more', () => {
    fc.assert(
      fc.property(
        beams,
        fc.double({ min: 0, max: 3, noNaN: true }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        fc.constantFrom('top' as const, 'bottom' as const),
        (told, depth, deeper, edge) => {
          const most = (cut: number) =>
            checkBeam(
              { ...beam(told), notch: { edge, depth: inches(cut), beyond: 10, bearing: 38 } },
              SIXTEENTHS,
            ).mostLoad;
          expect(most(depth + deeper)).toBeLessThanOrEqual(most(depth) * (1 + 1e-9));
        },
      ),
    );
  });

  test('inch and metric give one answer', () => {
    fc.assert(
      fc.property(beams, spans, (told, span) => {
        const inch = checkBeam(beam({ ...told, span }), SIXTEENTHS);
        const metric = checkBeam(beam({ ...told, span }), MILLIMETERS);
        expect(metric.mostLoad).toBe(inch.mostLoad);
        expect(metric.verdict).toBe(inch.verdict);
        expect(metric.sag).toBe(inch.sag);
      }),
    );
  });

  test('what is said to be better holds by its own sum', () => {
    fc.assert(
      fc.property(beams, spans, (told, span) => {
        const asked = beam({ ...told, span });
        for (const { check } of betterBeams(asked, soldAs('2x4', told.species), SIXTEENTHS)) {
          expect(check.verdict).not.toBe('does not hold by this sum');
        }
      }),
      { numRuns: 40 },
    );
  });
});

describe('what to change', () => {
  test('a beam that holds needs nothing', () => {
    expect(betterWords(beam({ span: 36 }), soldAs('2x4'), SIXTEENTHS)).toBe('');
  });

  // By hand: flat 2x4 redwood, 250 lb: 0.9 x 1196 x 1.3125 x 4 / 250 = 22.6 in by strength; sag
  // L/240: 250 L^2 x 240 = 48 x 0.9e6 x 0.984, L = 26.6 in. On edge 48 in: 0.9 x 1087.5 x 3.0625 x 4 / 250 = 47.96.
  test('flat boards are turned on edge, or get a support closer by', () => {
    const flat = beam({ stands: 'flat', span: 36 });
    const words = betterWords(flat, soldAs('2x4'), SIXTEENTHS);
    expect(words).toMatch(/^Stand it on edge, or bring the supports within 22-9\/16 in, or use a /);
  });

  // By hand: a 2x4 that is 3-3/8 in wide: 1.5 x 3.375^2 / 6 = 2.848 in3, x 1087.5 psi x 0.9 x 4 / 250 = 44.6 in;
  // of 3-1/2 in it is 47.96 in, as above: 46 in lies between.
  test('a board narrower than its label is bettered by one that is what its label says', () => {
    const words = betterWords(beam({ width: 3.375, span: 46 }), soldAs('2x4'), SIXTEENTHS);
    expect(words).toMatch(/or use a 2x4 that really is 3-1\/2 in wide\.$/);
  });

  // By hand: a 2x6 dressed 1/4 in too narrow is 5-1/4 in: 1.5 x 5.25^2 / 6 = 6.891 in3; redwood No. 2 at 942.5 psi bears
  // 0.9 x 942.5 x 6.891 x 4 / 500 = 46.8 in of span under 500 lb in the middle, 5-1/2 in (7.5625 in3) 51.3 in.
  test('however much it lacks, the label that it was sold by is what is offered', () => {
    const asked = beam({ width: 5.25, span: 49, load: 500 });
    expect(betterWords(asked, soldAs('2x6'), SIXTEENTHS)).toMatch(
      /or use a 2x6 that really is 5-1\/2 in wide\.$/,
    );
  });

  // A metric board that measures 43 x 92 mm is in no table, but its section is: what is offered is sold beside it.
  test('a metric board that came out smaller is offered a metric one', () => {
    const asked = beam({ thickness: 43 / 25.4, width: 92 / 25.4, span: 64 });
    expect(betterWords(asked, soldAs('45x95'), MILLIMETERS)).toMatch(/use a 45x\d+/);
  });

  test('the longest span is rounded down to the tape', () => {
    const span = longestSpan(beam({ stands: 'flat', span: 36 }), SIXTEENTHS, inches(36));
    expect(toInches(span ?? 0)).toBe(22.5625);
  });

  test('nothing is offered where nothing on sale would hold', () => {
    expect(longestSpan(beam({ load: 1e6 }), SIXTEENTHS, inches(48))).toBeUndefined();
  });

  test('sag is told as people say it', () => {
    expect([sagText(inches(0.246), SIXTEENTHS), sagText(6.24, MILLIMETERS)]).toEqual([
      '0.25 in',
      '6.2 mm',
    ]);
  });
});
