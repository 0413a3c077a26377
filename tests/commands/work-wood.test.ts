import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { workCommand } from '../../src/commands/work/work.js';
import { SPECIES } from '../../src/materials/species.js';
import { inches } from '../../src/measure/inch.js';

/** Words of a command line, where "white oak" in quotes is one word. */
function words(line: string): string[] {
  return [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain ?? '');
}

function told(line: string): Record<string, unknown> {
  const { out, err, code } = workCommand([...words(line), '--as', 'json']);
  expect(err).toBe('');
  expect(code).toBe(0);
  return JSON.parse(out);
}

function text(line: string): string {
  return workCommand(words(line)).out;
}

describe('movement', () => {
  // By hand: 139.7 x 0.00365 x (8 - 12) = -2.03962 mm (Wood Handbook equation 13-2, Table 13-5).
  test('5-1/2 in of white oak from 12 to 8 percent', () => {
    const found = told('movement --width 5.5in --wood "white oak" --grain flat --from 12 --to 8');
    expect(found.change_mm).toBeCloseTo(-2.03962, 9);
    expect(found.width_mm).toBeCloseTo(137.66038, 9);
    expect(found.figures).toMatchObject({
      change: {
        because: expect.stringContaining('5-1/2 in x 0.00365 x (8 - 12)'),
        source: { publication: 'USDA Wood Handbook (FPL-GTR-190)', standing: 'checked' },
      },
    });
  });

  // Changes as the field cases reckon them, in mm, with half of their last digit.
  test.each([
    [
      'field case F26',
      '--width 5.75in --wood douglas-fir --grain flat --from 8 --to 14',
      inches(0.092),
      inches(0.0005),
    ],
    [
      'field case F26',
      '--width 34.5in --wood douglas-fir --grain flat --from 8 --to 14',
      inches(0.55),
      inches(0.005),
    ],
    ['field case F28', '--width 20mm --wood oak --grain flat --from 8 --to 14', 0.44, 0.005],
    ['field case F28', '--width 20mm --wood oak --grain quarter --from 8 --to 14', 0.22, 0.005],
    [
      'field case F29',
      '--width 5.5in --wood "treated pine" --from 40 --to 15',
      -inches(0.154),
      inches(0.0005),
    ],
    [
      'field case F29',
      '--width 5.5in --wood "treated pine" --from 40 --to 12',
      -inches(0.19),
      inches(0.005),
    ],
    [
      'field case F30',
      '--width 32in --wood "treated pine" --grain flat --from 6 --to 14',
      inches(0.68),
      inches(0.005),
    ],
  ] as const)('%s: %s', (_, line, change, half) => {
    expect(Math.abs(Number(told(`movement ${line}`).change_mm) - change)).toBeLessThanOrEqual(half);
  });

  // Field case F31 reckons with 0.0022 where Table 13-5 has 0.00216: 0.95 in and 0.933 in.
  test('F31: a 6 ft cypress top moves nearly an inch', () => {
    const line = 'movement --width 72in --wood cypress --grain flat --from 7 --to 13';
    expect(told(line).change_mm).toBeCloseTo(inches(72 * 0.00216 * 6), 9);
  });

  // Field case F28: 60 slats, 26 mm flat-sawn and 13 mm quarter-sawn.
  test.each([
    ['flat', 26],
    ['quarter', 13],
  ] as const)('F28: sixty %s-sawn slats on a rod come to %i mm', (grain, total) => {
    const line = `movement --width 20mm --wood oak --grain ${grain} --from 8 --to 14 --count 60`;
    expect(Math.round(Number(told(line).total_change_mm))).toBe(total);
    expect(text(line)).toContain('each gap takes');
  });

  test('a remembered number says that it was not re-checked', () => {
    expect(text('movement --width 4in --wood redwood --from 12 --to 8')).toContain(
      'not re-checked',
    );
    expect(text('movement --width 4in --wood oak --from 12 --to 8')).not.toContain(
      'not re-checked',
    );
  });

  test('thickness is told beside width', () => {
    // By hand for flat oak, thickness across the rings: 19.05 x 0.0018 x (8 - 12).
    const found = told(
      'movement --width 5.5in --thickness 3/4in --wood oak --grain flat --from 12 --to 8',
    );
    expect(found.thickness_change_mm).toBeCloseTo(-0.13716, 9);
    expect(found.thickness_mm).toBeCloseTo(18.91284, 9);
  });

  test('inches and millimeters give one answer, and wetter is never narrower', () => {
    const percent = fc.integer({ min: 0, max: 60 });
    const wood = fc.constantFrom(...SPECIES.map(({ id }) => id));
    const grain = fc.constantFrom('flat', 'quarter', 'unknown');
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20 }),
        wood,
        grain,
        percent,
        percent,
        (wide, id, how, one, other) => {
          const rest = `--wood ${id} --grain ${how} --from ${Math.min(one, other)} --to ${Math.max(one, other)}`;
          const inch = told(`movement --width ${wide}in ${rest}`);
          const metric = told(
            `movement --width ${inches(wide).toFixed(1)}mm ${rest} --units metric`,
          );
          expect(metric.width_mm).toBeCloseTo(Number(inch.width_mm), 9);
          expect(Number(inch.width_mm)).toBeGreaterThanOrEqual(inches(wide));
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('moisture', () => {
  // Wood Handbook Table 4-2, either way of writing the air.
  test.each([
    ['70F', 60, 11.0],
    ['30F', 95, 24.3],
    ['100F', 5, 1.2],
    ['10C', 50, 9.5],
    ['60C', 65, 10.0],
  ] as const)('air of %s and %i percent: %f percent', (air, humidity, printed) => {
    const found = told(`moisture --temperature ${air} --humidity ${humidity}`);
    expect(Math.abs(Number(found.percent) - printed)).toBeLessThan(0.1);
  });

  test('air outside the table is told to be unchecked, cold air may be written with a minus', () => {
    expect(text('moisture --temperature -5C --humidity 80')).toContain('not checked there');
    expect(text('moisture --temperature 70F --humidity 60')).toContain('within 0.1%');
  });
});

describe('gap and slot', () => {
  // Field case F26: 1/4 in closes to 0.158 in and still drains.
  test('F26: a gap that is judged', () => {
    const found = told(
      'gap --width 5.75in --wood douglas-fir --grain flat --today 8 --wettest 14 --driest 8 --gap 1/4in',
    );
    expect(found.gap_mm).toBe(6.35);
    expect(Math.abs(Number(found.gap_wet_mm) - inches(0.158))).toBeLessThan(inches(0.0005));
    expect(found.verdict).toBe('fine');
  });

  // By hand for 3-1/2 in of redcedar: 0.208 mm a point, from 12 % to 14 and to 8: between 3.416 and 6.168.
  test('the gap to set stands between draining and holding a finger', () => {
    const found = told(
      'gap --width 3.5in --wood cedar --grain flat --today 12 --wettest 14 --driest 8',
    );
    expect(found).toMatchObject({ verdict: 'fine', kind: 'narrow' });
    expect(found.least_mm).toBeCloseTo(3.416, 3);
    expect(found.most_mm).toBeCloseTo(6.168, 3);
    expect(found.gap_mm).toBeCloseTo(4.792, 3);
  });

  // By hand: 139.7 x 0.00365 x 6 = 3.06 mm of growth. Limits: 3 mm to drain, 7 to 12 mm, 88.9 to 228.6.
  test.each([
    ['--gap 0in', 'closes', 'the boards push each other by'],
    ['--gap 1/8in', 'holds water', 'common practice'],
    ['--gap 3/8in', 'traps fingers', 'EN 581-1'],
    ['--gap 4in', 'traps a head', 'US CPSC'],
    ['--gap 3/4in', 'fine', 'Drains when wettest'],
  ])('a gap of %s %s', (gap, verdict, said) => {
    const line = `gap --width 5.5in --wood oak --grain flat --today 8 --wettest 14 --driest 8 ${gap}`;
    expect(told(line).verdict).toBe(verdict);
    expect(text(line)).toContain(said);
  });

  test('a remembered place says so, and rain and sun widen its year', () => {
    const line = 'gap --width 5.5in --wood oak --today 12 --place';
    expect(text(`${line} "cold winter" --exposure sheltered`)).toContain(
      'Wettest 14.6% (December), driest 11.9% (May): USDA Wood Handbook (FPL-GTR-190), Table 13-1, equilibrium moisture outdoors, not re-checked.',
    );
    const swell = (exposure: string) => {
      const found = told(`${line} "cold winter" --exposure ${exposure}`);
      return Number(found.gap_mm) - Number(found.gap_wet_mm);
    };
    expect(swell('open')).toBeGreaterThan(swell('sheltered'));
  });

  test('soaked boards are told that they only shrink', () => {
    const line = 'gap --width 5.5in --wood "treated pine" --today 60 --wettest 15 --driest 12';
    expect(text(line)).toContain('it only shrinks');
    expect(told(line).least_mm).toBe(0);
  });

  // Field case F26 glued solid: about 1/4 in of travel each side of its center.
  test('F26: a wide top wants slots with about a quarter inch of travel', () => {
    const found = told(
      'slot --width 34.5in --wood douglas-fir --grain flat --screw 1/4in --today 8 --wettest 14 --driest 8',
    );
    expect(Math.abs(Number(found.travel_out_mm) - inches(0.25))).toBeLessThan(inches(1 / 32));
    expect(found.shape).toBe('slot');
    expect(found.hole_mm).toBeCloseTo(6.35 + 2 * Number(found.travel_out_mm), 9);
  });

  test('held at an edge a part travels twice as far', () => {
    const line =
      'slot --width 10in --wood oak --grain flat --screw 5mm --today 8 --wettest 14 --driest 8';
    const middle = told(line);
    const edge = told(`${line} --held edge`);
    expect(edge.travel_out_mm).toBeCloseTo(2 * Number(middle.travel_out_mm), 9);
  });
});

describe('what makes no sense is refused, with a range and an example', () => {
  test.each([
    [
      'movement --width 5.5in --wood "wite oak" --from 12 --to 8',
      'Did you mean --wood "White oak"?',
    ],
    ['movement --width 5.5in --wood unobtanium --from 12 --to 8', 'not a wood known here'],
    ['movement --width 5.5in --wood oak --from 12 --to 800', 'From 0 to 200'],
    ['movement --width 5.5in --wood oak --from -1 --to 8', 'From 0 to 200'],
    ['movement --width 5.5in --wood oak --grain curly --from 12 --to 8', 'flat, quarter, unknown'],
    ['movement --wood oak --from 12 --to 8', '--width, --thickness or both'],
    ['movement --width 5.5in --wood oak --from 12', '--to: It has to be given'],
    ['moisture --temperature 70F --humidity 140', 'From 0 to 100'],
    ['moisture --temperature -40F --humidity 50', 'From 0 °F to 140 °F'],
    ['gap --width 5.5in --wood oak --today 12', '--place'],
    ['gap --width 5.5in --wood oak --today 12 --wettest 16', 'both --wettest and --driest'],
    ['gap --width 5.5in --wood oak --today 12 --place Seatle', 'Did you mean --place "seattle"?'],
    [
      'gap --width 5.5in --wood oak --today 12 --place Reykjavik',
      '"dry inland", "wet coast" or "cold winter"',
    ],
    ['slot --width 5.5in --wood oak --today 12 --place denver', '--screw: It has to be given'],
    ['slot --width 5.5in --wood oak --screw 5in --today 12 --place denver', 'out of range'],
  ])('%s', (line, part) => {
    const { out, err, code } = workCommand(words(line));
    expect(err).toContain(part);
    expect(err).toContain('For example');
    expect(out).toBe('');
    expect(code).toBe(2);
  });
});
