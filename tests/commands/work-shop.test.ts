import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SHOP_RULES } from '../../src/commands/work/shop-rules.js';
import { workCommand } from '../../src/commands/work/work.js';
import { MISTAKES } from '../../src/materials/mistakes.js';
import { referenceRows } from '../support/reference-rows.js';

const INCH = 25.4;

/** Words of a command line; quotes hold a word together. */
function wordsOf(line: string): string[] {
  return [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(found => found[1] ?? found[2] ?? '');
}

function run(line: string) {
  return workCommand(wordsOf(line));
}

function told(line: string): Record<string, unknown> {
  const { out, err, code } = run(`${line} --as json`);
  expect(err).toBe('');
  expect(code).toBe(0);
  return JSON.parse(out);
}

const GLUE = 'glue --joints 38 --length 3in --width 1in --wood dry';
const SEAL = 'seal --low 55F --now 11:00 --sunset 19:40 --moisture 14';

// Field case F13: a board of 1-7/16 in cut 3/4 in deep has cheeks of 11/16 in and a step of 1/16 in; 2x
// stock of 1-1/2 in takes 3/4 in; 1/32 in too deep on each is 1/16 in hollow.
describe('F13: half laps', () => {
  test.each([
    ['1-7/16in', '3/4in', 23 / 32, 11 / 16, 1 / 16, true],
    ['1-1/2in', '3/4in', 3 / 4, 3 / 4, 0, false],
    ['1-1/2in', '25/32in', 3 / 4, 23 / 32, 1 / 16, true],
  ])('in %s stock, cut %s deep', (thickness, depth, aim, cheek, step, hollow) => {
    const lap = told(`lap --thickness ${thickness} --depth ${depth}`);
    expect(lap.aim_mm).toBeCloseTo(aim * INCH, 9);
    expect(lap.cheek_mm).toBeCloseTo(cheek * INCH, 9);
    expect(lap.step_mm).toBeCloseTo(step * INCH, 9);
    expect(lap.hollow).toBe(hollow);
  });

  test('a cut through the board is refused', () => {
    const { err, code } = run('lap --thickness 3/4in --depth 3/4in');
    expect(code).toBe(2);
    expect(err).toContain('goes through');
  });
});

describe('field cases on the command line', () => {
  test.each(
    referenceRows(([source]) => source, [
      ['field case F21', `${GLUE} --temperature 68F --low 32F`, 'verdict', 'not-today'],
      ['field case F21', `${GLUE} --temperature 68F --low 50F`, 'watch_hours', 36],
      ['field case F22', `${GLUE} --temperature 55F --low 30F --slept 30F`, 'verdict', 'not-today'],
      [
        'field case F23',
        `${GLUE.replace('dry', 'dripping')} --temperature 55F --low 55F`,
        'verdict',
        'not-today',
      ],
      ['field case F32', `${SEAL} --temperature 54F --dew 49F`, 'verdict', 'not-today'],
      ['field case F32', `${SEAL} --temperature 70F --dew 49F`, 'until', '15:40'],
      [
        'field case F34',
        `${SEAL} --temperature 70F --humidity 50 --sprinkle beads`,
        'verdict',
        'not-today',
      ],
      [
        'woodwork article after Rabiej',
        'clamps --length 36in --width 3/4in --wood hard',
        'by_pressure',
        5,
      ],
      [
        'field case F43',
        'square --length 48in --width 18in --one 51.3265in --other 51.2015in',
        'verdict',
        'push it',
      ],
    ] as const),
  )('%s: %s has %s %s', (_source, line, name, value) => {
    expect(told(line)[name]).toBe(value);
  });

  // Inches, gallons and pounds as the cases reckon them.
  test.each(
    referenceRows(([source]) => source, [
      [
        'field case F40',
        'pots --length 10in --width 10in --height 6.5in --pot "5in x 5in"',
        'riser_1_mm',
        1.5 * INCH,
      ],
      [
        'field case F40',
        'pots --length 10in --width 10in --height 6.5in --pot "5in x 5in" --reveal 1/2in',
        'riser_1_mm',
        1 * INCH,
      ],
      [
        'field case F40',
        'pots --length 10in --width 5.25in --height 7in --pot "5in x 5in"',
        'air_1_mm',
        INCH / 8,
      ],
      [
        'field case F41',
        'soil --length 48in --width 16in --height 17.75in --wall 3/4in --soil-depth 8in',
        'bar_top_mm',
        8 * INCH,
      ],
      [
        'field case F41',
        'soil --length 48in --width 16in --height 17.75in --wall 3/4in --soil-depth 8in',
        'bar_underside_mm',
        6.5 * INCH,
      ],
      ['field case F42', 'soil --length 8ft --width 2ft --height 1ft --wall 3/4in', 'bags_2', 8],
      [
        'field case F42',
        'soil --length 8ft --width 2ft --height 1ft --wall 3/4in',
        'inside_length_mm',
        94.5 * INCH,
      ],
      ['field case F45', 'legs --fall 1in --over 8ft --apart 48in', 'high_back_mm', 0.5 * INCH],
      ['field case F45', 'legs --fall 1/4in --over 1ft --apart 48in', 'high_front_mm', 1 * INCH],
      ['field case F51', 'tape --hooked 30in --pushed 30-1/16in', 'differs_mm', INCH / 16],
      ['field case F35', 'cans --area "800 sq ft"', 'on_wood_ml', 3.2 * 3785.411784],
    ] as const),
  )('%s: %s has %s %d', (_source, line, name, value) => {
    expect(told(line)[name]).toBeCloseTo(value, 6);
  });

  // Field case F43, in inches to two decimals.
  test.each(
    referenceRows('field case F43', [
      [36, 80, 0.3],
      [30, 48, 0.24],
      [48, 16, 0.13],
    ] as const),
  )(
    'F43: a frame of %d x %d in with diagonals 1/4 in apart is pushed %d in',
    (length, width, push) => {
      const diagonal = Math.hypot(length, width);
      const line = `square --length ${length}in --width ${width}in --one ${diagonal + 1 / 8}in --other ${diagonal - 1 / 8}in`;
      expect(Math.abs(Number(told(line).push_mm) / INCH - push)).toBeLessThan(0.005);
    },
  );

  test('F36: rags are named whenever the finish is oil, and not with a water-borne one', () => {
    const line = `${SEAL} --temperature 70F --humidity 50`;
    expect(run(line).out).toContain('Oily rags catch fire');
    expect(run(`${line} --kind penetrating-oil`).out).toContain('Oily rags catch fire');
    expect(run(`${line} --kind water-borne-sealer`).out).not.toContain('Oily rags');
  });

  // By hand: an isosceles trapezoid, front 48, back 46, ends 18.028, both diagonals 50.329.
  test('equal diagonals of a frame that narrows do not pass for square', () => {
    const line =
      'square --length 48in --width 18.028in --one 50.329in --other 50.329in --length-2 46in --width-2 18.028in';
    expect(told(line).faults).toEqual(['front and back differ']);
    expect(told(line).verdict).toBe('no rectangle');
    expect(run(line).out).toContain('equal diagonals alone do not make it square');
  });

  // Sum on paper: 3.52 gal are 4 gallons at 38.50, 154; 3 gallons and 3 quarts are 157.50.
  test('cans go by cost where prices are known', () => {
    const found = told('cans --area "800 sq ft" --price gallon=38.50 --price quart=14');
    expect(found.cost_cents).toBe(15400);
    expect(found.by_left_over).toEqual([
      { name: 'gallon', count: 3 },
      { name: 'quart', count: 3 },
    ]);
  });
});

describe('what every rule keeps', () => {
  const examples = SHOP_RULES.map(
    rule => [rule.name, rule.example.replace('notchbook work ', '')] as const,
  );

  test.each(examples)(
    '%s: its example works, and each figure says why and where from',
    (_name, line) => {
      const found = told(line);
      const figures = found.figures as Record<
        string,
        { because: string; source: { publication: string } }
      >;
      for (const figure of Object.values(figures)) {
        expect(figure.because).not.toBe('');
        expect(figure.source.publication).not.toBe('');
      }
      const { out } = run(line);
      expect(out).not.toMatch(/\bsafe(ly)?\b|NaN|undefined|Infinity/i);
      expect(out).toMatch(/comes first|before all of this|Not checked|Not looked at|licensed/);
    },
  );

  test.each(examples)('%s: remembered values say so', (_name, line) => {
    const figures = Object.values(
      told(line).figures as Record<string, { source: { standing: string } }>,
    );
    const remembered = figures.filter(({ source }) => source.standing === 'memory').length;
    const said = (run(line).out.match(/not re-checked\]/g) ?? []).length;
    expect(said).toBe(remembered);
  });

  test.each([
    'glue --joints 0 --length 3in --width 1in --temperature 65F --low 55F --wood dry',
    'glue --joints 4 --length 3in --width 1in --temperature hot --low 55F --wood dry',
    'glue --joints 4 --length 3in --width 1in --temperature 65F --low 55F --wood soggy',
    'seal --temperature 70F --low 55F --now 11:00 --sunset 19:40',
    'seal --temperature 70F --humidity 50 --dew 50F --low 55F --now 11:00 --sunset 19:40',
    'seal --temperature 50F --dew 60F --low 55F --now 11:00 --sunset 19:40',
    'seal --temperature 70F --humidity 150 --low 55F --now 11:00 --sunset 19:40',
    'seal --temperature 70F --humidity 50 --low 55F --now 9 --sunset 19:40',
    'clamps --length 0in --width 1in --wood soft',
    'pots --length 22in --width 12in --height 11in',
    'pots --length 22in --width 12in --height 11in --pot clay-88',
    'pots --length 22in --width 12in --height 11in --pot "0in x 5in"',
    'soil --length 8ft --width 1in --height 1ft --wall 3/4in',
    'soil --length 48in --width 16in --height 17in --wall 3/4in --soil-depth 17in',
    'square --length 48in --width 18in --one 70in --other 51in',
    'square --length 48in --width 18in --one 20in --other 51in',
    'legs --fall 3ft --over 8ft --apart 48in',
    'tape --hooked 30in --pushed x',
    'cans --area big',
    'cans --area 0',
    'cans --area 800 --price bucket=5',
    'cans --area 800 --price gallon=cheap',
    'mistake --what oops',
    'mistake',
  ])('%s is refused in words, with an example', line => {
    const { out, err, code } = run(line);
    expect([out, code]).toEqual(['', 2]);
    expect(err).toMatch(/For example: notchbook work/);
    expect(err.split('\n').length).toBeGreaterThan(2);
    expect(err).not.toMatch(/ at .*\.ts|Error:/);
  });

  test('every mistake has its page on the command line', () => {
    for (const { id, title } of MISTAKES) expect(run(`mistake --what ${id}`).out).toContain(title);
  });
});

describe('inch and metric agree', () => {
  // 1 in = 25.4 mm and F = 9/5 C + 32, exact.
  test.each([
    [
      'square --length 48in --width 18in --one 51.5in --other 51in',
      'square --length 1219.2mm --width 457.2mm --one 1308.1mm --other 1295.4mm --units metric',
    ],
    [
      `${GLUE} --temperature 68F --low 59F`,
      'glue --joints 38 --length 76.2mm --width 25.4mm --wood dry --temperature 20C --low 15C --units metric',
    ],
    [
      `${SEAL} --temperature 68F --humidity 50`,
      'seal --low 55F --now 11:00 --sunset "7:40 pm" --moisture 14 --temperature 20C --humidity 50 --units metric',
    ],
    [
      'clamps --length 36in --width 3/4in --wood soft',
      'clamps --length 914.4mm --width 19.05mm --wood soft --units metric',
    ],
    [
      'legs --fall 1in --over 8ft --apart 48in',
      'legs --fall 25.4 --over 2438.4 --apart 1219.2 --units metric',
    ],
  ])('%s', (inch, metric) => {
    const numbers = (line: string) =>
      Object.entries(told(line)).filter(
        (pair): pair is [string, number] => typeof pair[1] === 'number',
      );
    const other = new Map(numbers(metric));
    for (const [name, value] of numbers(inch)) expect(other.get(name), name).toBeCloseTo(value, 6);
  });
});

describe('whatever is asked', () => {
  test('a colder night never shortens a wait, more joints never make fewer glue-ups', () => {
    const low = fc.integer({ min: 47, max: 95 });
    const joints = fc.integer({ min: 1, max: 200 });
    const at = (count: number, night: number) =>
      told(
        `glue --joints ${count} --length 3in --width 1in --wood dry --temperature 95F --low ${night}F`,
      );
    fc.assert(
      fc.property(low, low, joints, joints, (a, b, few, many) => {
        const cold = at(Math.max(few, many), Math.min(a, b));
        const warm = at(Math.min(few, many), Math.max(a, b));
        expect(Number(cold.clamp_minutes)).toBeGreaterThanOrEqual(Number(warm.clamp_minutes));
        expect(Number(cold.cure_minutes)).toBeGreaterThanOrEqual(Number(warm.cure_minutes));
        expect(Number(cold.glue_ups)).toBeGreaterThanOrEqual(Number(warm.glue_ups));
      }),
      { numRuns: 40 },
    );
  });
});

describe('a yes-or-no question', () => {
  test.each([
    [`${GLUE} --temperature 68F --low 32F`, /^Not today: /],
    [`${GLUE} --temperature 68F --low 60F`, /^Yes, /],
    [`${SEAL} --temperature 70F --humidity 50`, /^Yes, until 15:40\./],
    ['square --length 48in --width 18in --one 51.5in --other 51in', /^Push /],
    ['tape --hooked 30in --pushed 30-1/16in', /^Set this tape aside/],
  ])('%s is answered in the first line, and first in the JSON notes', (line, answer) => {
    expect(run(line).out).toMatch(answer);
    expect((told(line).notes as string[])[0]).toMatch(answer);
  });
});
