import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allowedStresses } from '../../src/materials/beam-allowed.js';
import { standingSection } from '../../src/materials/beam-check.js';
import { strengthOf } from '../../src/materials/design-values-species.js';
import {
  judgeNotch,
  markedLimit,
  notchLimits,
  remainingShare,
} from '../../src/materials/notch-limits.js';
import {
  notchedShearEn,
  notchedShearNds,
  notchFactor,
  wholeEndShear,
} from '../../src/materials/notch-shear.js';
import { speciesNamed } from '../../src/materials/species.js';
import { MILLIMETERS, SIXTEENTHS } from '../../src/measure/displays.js';
import { inches, toInches } from '../../src/measure/inch.js';
import { referenceRows } from '../support/reference-rows.js';

const redwood = speciesNamed('redwood');
if (redwood === undefined) throw new Error('redwood is missing');

describe('how deep a notch may be', () => {
  // Field case F11: 1/6 in the outer thirds, 1/4 at the end, rounded down, by actual depth.
  test.each(
    referenceRows('field case F11', [
      ['2x4', 3.5, '9/16', '7/8'],
      ['2x6', 5.5, '7/8', '1-3/8'],
      ['2x8', 7.25, '1-3/16', '1-13/16'],
      ['2x10', 9.25, '1-1/2', '2-5/16'],
    ] as const),
  )('%s: %d in deep takes %s in between, %s in at the end', (_name, depth, outer, end) => {
    const judged = (place: 'outer' | 'end') =>
      judgeNotch(
        {
          memberDepth: inches(depth),
          memberThickness: inches(1.5),
          place,
          edge: 'bottom',
          depth: inches(0.25),
        },
        SIXTEENTHS,
      );
    expect(judged('outer').because).toContain(`is ${outer} in, rounded down`);
    expect(judged('end').because).toContain(`is ${end} in, rounded down`);
    expect(judged('outer').verdict).toBe('within the rule');
  });

  test('a 2x6 takes 0.917 in, a third of its depth in length, and nothing in the middle third', () => {
    expect(toInches(notchLimits(inches(5.5), 'outer').deepest)).toBeCloseTo(0.917, 3);
    expect(toInches(notchLimits(inches(5.5), 'outer').longest)).toBeCloseTo(1.833, 3);
    expect(notchLimits(inches(5.5), 'middle')).toEqual({ deepest: 0, longest: 0 });
  });

  const asked = {
    memberDepth: inches(5.5),
    memberThickness: inches(1.5),
    place: 'outer',
    edge: 'bottom',
    depth: inches(0.875),
  } as const;

  test.each([
    [{ ...asked }, 'within the rule'],
    [{ ...asked, depth: inches(0.9375) }, 'over the rule'],
    [{ ...asked, length: inches(1.75) }, 'within the rule'],
    [{ ...asked, length: inches(2) }, 'over the rule'],
    [{ ...asked, place: 'end', depth: inches(1.375) }, 'within the rule'],
    [{ ...asked, place: 'end', depth: inches(1.4375) }, 'over the rule'],
    [{ ...asked, place: 'middle', depth: inches(0.125) }, 'no notch there'],
    // NDS 4.4.3, from memory: 3-1/2 in or thicker, nothing on the stretched edge between supports.
    [{ ...asked, memberThickness: inches(3.5) }, 'no notch there'],
    [{ ...asked, memberThickness: inches(3.5), edge: 'top' }, 'within the rule'],
    [{ ...asked, memberThickness: inches(3.5), place: 'end' }, 'within the rule'],
  ] as const)('%j is %s', (notch, verdict) => {
    expect(judgeNotch(notch, SIXTEENTHS).verdict).toBe(verdict);
  });

  // F14: 11.5 mm in a rafter of 145 mm is about 8 %, well inside a quarter.
  test('F14: a bird-mouth of 11.5 mm in 145 mm is inside the rule', () => {
    const judged = judgeNotch(
      { memberDepth: 145, memberThickness: 45, place: 'end', edge: 'bottom', depth: 11.5 },
      MILLIMETERS,
    );
    expect(judged.verdict).toBe('within the rule');
    expect(judged.because).toContain('36 mm');
  });

  test('a limit is never marked longer than it is', () => {
    fc.assert(
      fc.property(fc.double({ min: 20, max: 400, noNaN: true }), depth => {
        for (const display of [SIXTEENTHS, MILLIMETERS]) {
          const { deepest } = notchLimits(depth, 'outer');
          expect(markedLimit(deepest, display)).toBeLessThanOrEqual(deepest + 1e-6);
        }
      }),
    );
  });
});

describe('what is left beside a notch', () => {
  // Field case F12: 1-1/2 in out of 3-1/2 in leaves 0.327 of the bending, 0.187 of the stiffness.
  test('F12: a post cut from 3-1/2 to 2 in', () => {
    const left = remainingShare(inches(3.5), inches(1.5));
    expect(left.bending).toBeCloseTo(0.327, 3);
    expect(left.stiffness).toBeCloseTo(0.187, 3);
  });

  test('nothing is left of a post cut through', () => {
    expect(remainingShare(100, 100)).toEqual({ bending: 0, stiffness: 0 });
    expect(remainingShare(100, 120)).toEqual({ bending: 0, stiffness: 0 });
  });
});

const use = {
  board: { thickness: inches(1.5), width: inches(3.5) },
  stands: 'edge',
  wet: false,
  time: 'ten-years',
} as const;
const section = standingSection(use);
const allowed = allowedStresses(strengthOf(redwood, inches(3.5)).values, use, SIXTEENTHS);
const sum = { section, allowed };

describe('shear at a notched end', () => {
  // NDS 3.4.3.2, from memory: 2/3 x 160 x 1.5 x 3.5 = 560 lb whole; half notched from below
  // 2/3 x 160 x 1.5 x 1.75 x (1/2)^2 = 70 lb; a quarter: 2/3 x 160 x 1.5 x 2.625 x (3/4)^2 = 236 lb.
  test.each(
    referenceRows('NDS 3.4.3.2(a) worked by hand', [
      [0, 560],
      [0.875, 236.25],
      [1.75, 70],
    ] as const),
  )('a 2x4 of redwood notched %d in from below carries %d lb', (depth, carries) => {
    const notch = {
      edge: 'bottom',
      depth: inches(depth),
      beyond: 0,
      bearing: inches(1.5),
    } as const;
    expect(notchedShearNds(notch, sum) / 4.4482216).toBeCloseTo(carries, 1);
  });

  test('on the pressed edge it costs nothing over the support, and all of its depth far past it', () => {
    const notch = { edge: 'top', depth: inches(1.75), bearing: inches(1.5) } as const;
    const whole = wholeEndShear(sum);
    expect(notchedShearNds({ ...notch, beyond: 0 }, sum)).toBeCloseTo(whole, 6);
    expect(notchedShearNds({ ...notch, beyond: inches(3) }, sum)).toBeCloseTo(whole / 2, 6);
    // e = 0.875, dn = 1.75, d = 3.5: 3.5 - (1.75/1.75) 0.875 = 2.625 of 3.5.
    expect(notchedShearNds({ ...notch, beyond: inches(0.875) }, sum)).toBeCloseTo(whole * 0.75, 6);
  });

  // EN 1995-1-1 6.5.2, from memory. By hand, h 145, half left, x 60: sqrt(.25) = .5; .8 x .4138 x
  // sqrt(2 - .25) = .4379; 5 / (12.042 x .9379) = 0.4427. h 95, three-quarters left, x 30: sqrt(.1875) = .4330; .8 x .3158 x
  // sqrt(1.3333 - .5625) = .2218; 5 / (9.747 x .6548) = 0.7834.
  test.each(
    referenceRows('EN 1995-1-1 6.5.2 worked by hand', [
      [145, 72.5, 60, 0.4427],
      [95, 71.25, 30, 0.7834],
      [145, 145, 60, 1],
    ] as const),
  )('k v of %d mm with %d left, x %d', (depth, left, reach, value) => {
    expect(notchFactor(depth, left, reach)).toBeCloseTo(value, 3);
  });

  // German annex to 6.5.2, from memory: h/hef (1 - (h - hef) c / (h hef)) of what hef carries. h 3.5, hef
  // 1.75, c 0.875: 2 x (1 - 1.75 x 0.875 / (3.5 x 1.75)) = 1.5 times half of the whole.
  test('on the pressed edge EN 1995-1-1 keeps as much as the NDS', () => {
    const notch = { edge: 'top', depth: inches(1.75), bearing: inches(1.5) } as const;
    const whole = wholeEndShear(sum);
    expect(notchedShearEn({ ...notch, beyond: 0 }, sum)).toBeCloseTo(whole, 6);
    expect(notchedShearEn({ ...notch, beyond: inches(0.875) }, sum)).toBeCloseTo(0.75 * whole, 6);
  });

  const deeper = fc.tuple(
    fc.double({ min: 0, max: 80, noNaN: true }),
    fc.double({ min: 0, max: 20, noNaN: true }),
    fc.double({ min: 0, max: 60, noNaN: true }),
    fc.constantFrom('top' as const, 'bottom' as const),
  );

  test('a deeper notch never holds more, by either code', () => {
    fc.assert(
      fc.property(deeper, ([depth, more, beyond, edge]) => {
        const notch = { edge, depth, beyond, bearing: 38 };
        for (const carries of [notchedShearNds, notchedShearEn]) {
          const less = carries({ ...notch, depth: depth + more }, sum);
          expect(less).toBeLessThanOrEqual(carries(notch, sum) + 1e-6);
        }
      }),
    );
  });

  test('no notch leaves the whole end', () => {
    const none = { edge: 'bottom', depth: 0, beyond: 0, bearing: 38 } as const;
    expect(notchedShearNds(none, sum)).toBeCloseTo(wholeEndShear(sum), 6);
    expect(notchedShearEn(none, sum)).toBeCloseTo(wholeEndShear(sum), 6);
  });
});
