import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { HOLD_RULES } from '../../src/commands/work/hold-rules.js';
import { workCommand } from '../../src/commands/work/work.js';
import { inches, toInches } from '../../src/measure/inch.js';
import { pounds, toPounds } from '../../src/measure/weight.js';
import { referenceRows } from '../support/reference-rows.js';

/** Words of a command line, where "scots pine" in quotes is one word. */
function words(line: string): string[] {
  return [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain ?? '');
}

function told(line: string): Record<string, unknown> {
  const { out, err, code } = workCommand([...words(line), '--as', 'json']);
  expect(err).toBe('');
  expect(code).toBe(0);
  return JSON.parse(out);
}

const number = (line: string, name: string) => Number(told(line)[name]);
const text = (line: string) => workCommand(words(line)).out;

describe('every question', () => {
  test.each(HOLD_RULES.map(rule => [rule.name, rule.example] as const))(
    '%s answers its own example, each figure with because and source',
    (name, example) => {
      const found = told(example.replace(`notchbook work ${name}`, name));
      const figures = Object.values(found.figures as Record<string, Record<string, unknown>>);
      expect(figures.length).toBeGreaterThan(2);
      for (const figure of figures) {
        expect(figure.because).toBeTruthy();
        expect(figure.source).toMatchObject({ publication: expect.any(String) });
      }
      expect(JSON.stringify(found.notes)).toMatch(/Not checked|Nothing here checks/);
      expect(JSON.stringify(found)).not.toMatch(/\bsafe/i);
    },
  );

  test.each([
    [
      'screw --through 0in --into 3in --wood redwood',
      /--through: 0 in .*From 1\/8 in to 24 in.*--through 1\.75in/,
    ],
    ['screw --through 2in --into 90in --wood redwood', /--into: 90 in .*From .*for example/],
    ['screw --through 2in --into 3in --wood oka', /Did you mean --wood "oak"\?/],
    ['screw --through 2in --into 3in --wood redwood --gauge 7', /6, 8, 10, 12, 14.*--gauge 10/],
    ['screw --through 2in --into 3in --wood redwood --load -5lb', /--load: .*not a weight.*250 lb/],
    ['screw --into 3in --wood redwood', /--through: It has to be given.*--through 1\.75in/],
    ['beam --section 2x5 --span 4ft --load 9lb --wood redwood', /no board.*--section 2x4/],
    [
      'beam --section 2x4 --span 900ft --load 9lb --wood redwood',
      /--span: .*(longer|out of range)/,
    ],
    ['beam --section 2x4 --span 4ft --load tons --wood redwood', /--load: "tons" is not a weight/],
    ['beam --section 2x4 --span 4ft --load 9lb --wood redwood --on end', /edge, flat|Did you mean/],
    ['beam --section 2x4 --span 4ft --load 9lb --wood redwood --boards 1.5', /not a whole number/],
    ['notch --section 2x4 --place end --depth 4in', /cuts right through 3-1\/2 in.*--depth 7\/8in/],
    [
      'notch --section 2x4 --place top --depth 1in',
      /--place: .*end, outer, middle, leg, post|Did you mean/,
    ],
    ['load --weight 0lb --length 2ft --width 2ft', /--weight: .*From 1 lb to 100000 lb/],
    ['load --weight 9lb --length 2ft --width 2ft --deck-length 9ft', /both sides.*--deck-width/],
  ])('%s is refused with what would do', (line, expected) => {
    const { err, code } = workCommand(words(line));
    expect(code).toBe(2);
    expect(err.replace(/\n/g, ' ')).toMatch(expected);
    expect(err).toContain('For example: notchbook work');
    expect(err).not.toMatch(/\bat .*\.ts/);
  });
});

describe('screw', () => {
  // Boring chart L-36: No. 10 working softwood pilot 7/64 in; plate 6B: clearance 3/16 in. NDS: 10 D is 1.9
  // in; 3-1/2 in is the stock length next to 1.75 + 1.9.
  test('a 1-3/4 in tongue on a redwood post takes a No. 10 x 3-1/2 in', () => {
    const found = told('screw --through 1.75in --into 3.5in --wood redwood');
    expect(found).toMatchObject({ length_mm: 88.9, gauge: 10, bite_mm: 44.45, fits: true });
    expect(found.pilot_mm).toBeCloseTo((7 / 64) * 25.4, 9);
    expect(found.clearance_mm).toBeCloseTo((3 / 16) * 25.4, 9);
  });

  // Field cases F15 and F16: two 2x4 face to face take 2-3/4 in and never 4-1/2; the stack is 3 in.
  test.each(
    referenceRows('field cases F15 and F16', [
      ['screw --through 1.5in --into 1.5in --wood spf', 2.75],
      ['screw --through 1.5in --into 3.5in --wood redwood', 3.5],
    ] as const),
  )('%s: %d in', (line, length) => {
    expect(toInches(number(line, 'length_mm'))).toBeCloseTo(length, 9);
  });

  // No. 10 through 1-1/2 in of Douglas fir: 117 lb full, bite 1-1/4 of 1.9 in, wet 0.7: 53.9 lb. 250 lb
  // want 5. Pull: 135.4 lb an inch x 1-1/4 x 0.7 = 118.4 lb.
  test('what it carries, and how many a load wants', () => {
    const found = told('screw --through 1.5in --into 1.5in --wood "douglas fir" --load 250lb');
    expect(toPounds(Number(found.sideways_kg))).toBeCloseTo(116.8 * 0.6579 * 0.7, 0);
    expect(toPounds(Number(found.pull_kg))).toBeCloseTo(135.4 * 1.25 * 0.7, 0);
    expect(found.screws).toBe(5);
  });

  test('in end grain nothing is counted on against pull', () => {
    const found = told('screw --through 0.75in --into 6in --wood redwood --grain end');
    expect(found.pull_kg).toBe(0);
    expect(JSON.stringify(found.notes)).toContain('end grain');
  });

  test('where no screw fits, it says so and what to do', () => {
    const line = 'screw --through 3.5in --into 3.5in --wood redwood --grain end';
    expect(told(line).fits).toBe(false);
    expect(text(line)).toMatch(/needs 5\.9 in to hold.*through bolt/s);
  });

  test('memory values say so', () => {
    expect(text('screw --through 1.5in --into 3in --wood redwood')).toContain('not re-checked');
  });
});

describe('beam', () => {
  // Redwood No. 2, open grain, two flat 2x6: 725 x 1.3 x 1.15 = 1083.9 psi (at most 1150 x ..., dry or
  // wet alike), S 2.0625 each: 4 x 1083.9 x 4.125 / 48 = 372.6 lb.
  test('a picnic seat of two flat 2x6 over 48 in', () => {
    const found = told(
      'beam --section 2x6 --span 48in --load 400lb --boards 2 --on flat --wood redwood',
    );
    expect(toPounds(Number(found.most_load_kg))).toBeCloseTo(372.6, 1);
    expect(found.verdict).toBe('does not hold by this sum');
  });

  // Field case F48 asks for sag at the spacing and a step either way; F47 for both ways round.
  test('says both ways round, and one span either way', () => {
    const out = text(
      'beam --section 2x6 --span 48in --load 400lb --boards 2 --on flat --wood redwood',
    );
    expect(out).toMatch(/On edge: carries \d+ lb.*\nFlat: carries 373 lb/);
    expect(out).toMatch(/Sag: [\d.]+ in over 38-3\/8 in.*over 48 in.*over 57-5\/8 in/);
    expect(out).toContain('Stand it on edge, or bring the supports within');
  });

  test('a store board says which grade was assumed', () => {
    expect(text('beam --section 2x4 --span 3ft --load 99lb --wood redwood')).toContain(
      'taken as redwood No. 2, open grain',
    );
  });

  const line = (span: number, load: number) =>
    `beam --section 2x4 --span ${span}in --load ${load}lb --wood hem-fir`;

  test('a longer span never holds more', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 4, max: 200 }),
        fc.integer({ min: 0, max: 60 }),
        (span, more) => {
          const near = number(line(span, 100), 'most_load_kg');
          expect(number(line(span + more, 100), 'most_load_kg')).toBeLessThanOrEqual(near + 1e-9);
        },
      ),
      { numRuns: 30 },
    );
  });

  test('inch and metric give one answer', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 4, max: 200 }),
        fc.integer({ min: 1, max: 500 }),
        (span, load) => {
          const metric = `beam --section 2x4 --span ${inches(span)}mm --load ${pounds(load)}kg --wood hem-fir --units metric`;
          const [a, b] = [told(line(span, load)), told(metric)];
          expect(Number(b.most_load_kg)).toBeCloseTo(Number(a.most_load_kg), 6);
          expect(Number(b.sag_mm)).toBeCloseTo(Number(a.sag_mm), 6);
          expect(b.verdict).toBe(a.verdict);
        },
      ),
      { numRuns: 30 },
    );
  });
});

describe('notch', () => {
  // Field case F11, by actual depth and rounded down.
  test.each(
    referenceRows('field case F11, on the command line', [
      ['2x4', 9 / 16, 7 / 8],
      ['2x6', 7 / 8, 1 + 3 / 8],
      ['2x8', 1 + 3 / 16, 1 + 13 / 16],
      ['2x10', 1 + 1 / 2, 2 + 5 / 16],
    ] as const),
  )('%s: %d in between supports, %d in over one', (section, outer, end) => {
    const deepest = (place: string) =>
      toInches(number(`notch --section ${section} --place ${place} --depth 1/4in`, 'deepest_mm'));
    expect(deepest('outer')).toBeCloseTo(outer, 9);
    expect(deepest('end')).toBeCloseTo(end, 9);
    expect(deepest('middle')).toBe(0);
  });

  // Field case F12: 1-1/2 in out of a 4x4.
  test.each([
    ['leg', 'straight down'],
    ['post', 'Deck guides do not let guard posts be notched'],
  ])('a %s cut from 3-1/2 to 2 in keeps 32.7%% and 18.7%%', (place, said) => {
    const found = told(`notch --section 4x4 --place ${place} --depth 1.5in`);
    expect(found.bending_left).toBeCloseTo(32.7, 1);
    expect(found.stiffness_left).toBeCloseTo(18.7, 1);
    expect(JSON.stringify(found.notes)).toContain(said);
  });

  test('on top and wholly over its support it costs no shear strength, and says so', () => {
    const above = told('notch --section 2x4 --place end --depth 1.75in --edge top');
    expect(above.shear_left).toBe(100);
    expect(JSON.stringify(above.notes)).toContain('Keep all of it over the support');
    const below = told('notch --section 2x4 --place end --depth 1.75in');
    expect(below.shear_left).toBeCloseTo(12.5, 9);
  });

  test('a deeper notch never keeps more', () => {
    const cuts = fc.integer({ min: 1, max: 50 });
    fc.assert(
      fc.property(cuts, cuts, fc.constantFrom('top', 'bottom'), (a, b, edge) => {
        const left = (sixteenths: number) =>
          told(
            `notch --section 2x4 --place end --depth ${sixteenths / 16}in --edge ${edge} --beyond 1/2in`,
          );
        const [less, more] = [left(Math.min(a, b)), left(Math.max(a, b))];
        for (const name of ['bending_left', 'stiffness_left', 'shear_left']) {
          expect(Number(more[name]), name).toBeLessThanOrEqual(Number(less[name]) + 1e-9);
        }
      }),
      { numRuns: 30 },
    );
  });
});

describe('load', () => {
  // Field case F37: a tub of 200 lb on 20 x 14 in is 103 lb/sq ft; 100 sq ft take about 10.
  test('a tub of wet soil on a deck', () => {
    const line =
      'load --weight 200lb --length 20in --width 14in --deck-length 10ft --deck-width 10ft';
    expect(text(line)).toContain('103 lb/sq ft');
    expect(number(line, 'pieces')).toBe(10);
    expect(told(line).verdict).toBe('look again');
    expect(text(line)).toMatch(/joists.*licensed engineer/s);
  });

  // Field case F38: 4284 kg on 7.2 x 0.8 m are 744 kg/m2, under the 7.5 kN/m2 that were assumed.
  test('a trough on a roof terrace', () => {
    const line = 'load --weight 4284kg --length 7.2m --width 0.8m --units metric';
    expect(Math.round(number(line, 'spread_kg_m2'))).toBe(744);
    expect(told(`${line} --limit 764.8`).verdict).toBe('holds by this sum');
    expect(told(line).verdict).toBe('look again');
  });

  // Field case F38 by soil: 7.2 x 0.8 m outside, 100 mm walls, 7.0 x 0.6 inside, 600 deep. Wet clay is 110
  // lb/cu ft, 1762 kg/m3: 2.52 m3 x 1762 = 4440 kg, 1057 kg/m2 on its own area; 764.8 / 1762 = 434 mm.
  test('soil is weighed on its own area and on what the box covers', () => {
    const found = told(
      'load --weight 100kg --length 7.2m --width 0.8m --wall 100mm --soil clay-wet --fill 600mm --units metric --limit 764.8',
    );
    expect(Number(found.soil_weight_kg)).toBeCloseTo(4440, -1);
    expect(Number(found.soil_load_kg_m2)).toBeCloseTo(1057, 0);
    expect(Number(found.spread_kg_m2)).toBeCloseTo(4540 / 5.76, 0);
    expect(found.deepest_fill_mm).toBe(434);
    expect(found.verdict).toBe('look again');
  });

  test.each([
    ['load --weight 9lb --length 2ft --width 2ft --soil loam', /kind and its depth/],
    ['load --weight 9lb --length 2ft --width 2ft --soil lome --fill 1ft', /Did you mean loam/],
    ['load --weight 9lb --length 2ft --width 2ft --soil loam --fill 1ft --wall 1ft', /walls meet/],
  ])('%s is refused', (line, expected) => {
    const { err, code } = workCommand(words(line));
    expect(code).toBe(2);
    expect(err).toMatch(expected);
  });

  test('a limit is read in the units of the tape', () => {
    const inch = number('load --weight 100lb --length 2ft --width 2ft --limit 50', 'share');
    expect(inch).toBeCloseTo(50, 6);
    const metric = 'load --weight 100kg --length 1m --width 1m --units metric --limit 200';
    expect(number(metric, 'share')).toBeCloseTo(50, 6);
  });
});
