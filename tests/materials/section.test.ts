import { describe, expect, test } from 'vitest';
import { SECTIONS, sectionNamed, sectionNames } from '../../src/materials/section.js';
import { usualLengths } from '../../src/materials/store-lengths.js';
import { toInches } from '../../src/measure/inch.js';

/**
 * American Softwood Lumber Standard PS 20, minimum dressed sizes, as printed: nominal, dry thickness
 * and width, green thickness and width, inches. Written out here row by row.
 */
const PS20 = [
  ['1x2', '3/4', '1-1/2', '25/32', '1-9/16'],
  ['1x3', '3/4', '2-1/2', '25/32', '2-9/16'],
  ['1x4', '3/4', '3-1/2', '25/32', '3-9/16'],
  ['1x6', '3/4', '5-1/2', '25/32', '5-5/8'],
  ['1x8', '3/4', '7-1/4', '25/32', '7-1/2'],
  ['1x10', '3/4', '9-1/4', '25/32', '9-1/2'],
  ['1x12', '3/4', '11-1/4', '25/32', '11-1/2'],
  ['5/4x4', '1', '3-1/2', '1-1/32', '3-9/16'],
  ['5/4x6', '1', '5-1/2', '1-1/32', '5-5/8'],
  ['5/4x8', '1', '7-1/4', '1-1/32', '7-1/2'],
  ['2x2', '1-1/2', '1-1/2', '1-9/16', '1-9/16'],
  ['2x3', '1-1/2', '2-1/2', '1-9/16', '2-9/16'],
  ['2x4', '1-1/2', '3-1/2', '1-9/16', '3-9/16'],
  ['2x6', '1-1/2', '5-1/2', '1-9/16', '5-5/8'],
  ['2x8', '1-1/2', '7-1/4', '1-9/16', '7-1/2'],
  ['2x10', '1-1/2', '9-1/4', '1-9/16', '9-1/2'],
  ['2x12', '1-1/2', '11-1/4', '1-9/16', '11-1/2'],
  ['4x4', '3-1/2', '3-1/2', '3-9/16', '3-9/16'],
  ['4x6', '3-1/2', '5-1/2', '3-9/16', '5-5/8'],
  ['6x6', '5-1/2', '5-1/2', '5-1/2', '5-1/2'],
] as const;

/** The metric column printed beside the dry sizes of PS 20, whole millimeters. */
const PS20_MM = [
  ['1x2', 19, 38],
  ['1x3', 19, 64],
  ['1x4', 19, 89],
  ['1x6', 19, 140],
  ['1x8', 19, 184],
  ['1x10', 19, 235],
  ['1x12', 19, 286],
  ['2x2', 38, 38],
  ['2x3', 38, 64],
  ['2x4', 38, 89],
  ['2x6', 38, 140],
  ['2x8', 38, 184],
  ['2x10', 38, 235],
  ['2x12', 38, 286],
  ['4x4', 89, 89],
  ['4x6', 89, 140],
] as const;

/** "1-9/16" as a number: whole and fraction read apart, without the program's own parser. */
function inchesWritten(text: string): number {
  const [whole = '0', fraction] = text.includes('-')
    ? text.split('-')
    : text.includes('/')
      ? ['0', text]
      : [text];
  const [top = '0', bottom = '1'] = (fraction ?? '0/1').split('/');
  return Number(whole) + Number(top) / Number(bottom);
}

describe('American sections measure what PS 20 prints', () => {
  test.each(PS20)('%s dry is %s x %s in, green %s x %s in', (name, dryT, dryW, greenT, greenW) => {
    const dry = sectionNamed(name);
    const green = sectionNamed(name, true);
    expect(toInches(dry?.thickness ?? 0)).toBeCloseTo(inchesWritten(dryT), 9);
    expect(toInches(dry?.width ?? 0)).toBeCloseTo(inchesWritten(dryW), 9);
    expect(toInches(green?.thickness ?? 0)).toBeCloseTo(inchesWritten(greenT), 9);
    expect(toInches(green?.width ?? 0)).toBeCloseTo(inchesWritten(greenW), 9);
    expect([dry?.family, green?.family]).toEqual(['us-dry', 'us-green']);
  });

  test.each(PS20_MM)('%s dry rounds to the printed %i x %i mm', (name, thickness, width) => {
    const dry = sectionNamed(name);
    expect(Math.round(dry?.thickness ?? 0)).toBe(thickness);
    expect(Math.round(dry?.width ?? 0)).toBe(width);
  });
});

describe('a section answers to the ways people write it', () => {
  test.each([
    ['2 x 4', '2x4'],
    ['2×4', '2x4'],
    ['2X4', '2x4'],
    ['4x2', '2x4'],
    ['5/4 x 4', '5/4x4'],
    ['45 x 95 mm', '45x95'],
    ['45mm x 95mm', '45x95'],
    ['95x45', '45x95'],
    ['38×89', '38x89'],
  ])('%s is %s', (written, name) => {
    expect(sectionNamed(written)?.name).toBe(name);
  });

  test.each(['', '3x7', '1-1/2 in x 3-1/2 in', 'two by four'])('%s is no section', written => {
    expect(sectionNamed(written)).toBeUndefined();
  });

  test('a metric section measures what its name says, wet or dry', () => {
    expect(sectionNamed('45x95')).toMatchObject({ thickness: 45, width: 95, family: 'metric' });
    expect(sectionNamed('28x120', true)).toMatchObject({ thickness: 28, width: 120 });
  });

  test('a name stands for one section of each family', () => {
    const ids = SECTIONS.map(({ name, family }) => `${name} ${family}`);
    expect(new Set(ids).size).toBe(ids.length);
    expect(sectionNames().every(name => sectionNamed(name) !== undefined)).toBe(true);
  });

  // Standing of the sources: PS 20 and the Dutch list were seen, CLS is remembered, merchants'
  // lists are practice.
  test.each([
    ['2x4', 'checked'],
    ['45x145', 'checked'],
    ['38x89', 'memory'],
    ['21x95', 'practice'],
    ['45x220', 'checked'],
  ])('the source of %s is %s', (name, standing) => {
    expect(sectionNamed(name)?.source.standing).toBe(standing);
  });
});

describe('lengths sold', () => {
  // Common retail lengths: framing in 2 ft steps, 5/4 decking 8, 10, 12, 16 ft, UK steps in mm.
  test.each([
    ['2x4', [72, 96, 120, 144, 168, 192, 216, 240].map(inches => inches * 25.4)],
    ['5/4x6', [96, 120, 144, 192].map(inches => inches * 25.4)],
    ['45x95', [1800, 2400, 3000, 3600, 4200, 4800, 5400, 6000]],
  ] as const)('%s comes in its usual lengths', (name, lengths) => {
    const section = sectionNamed(name);
    if (section === undefined) throw new Error(`${name} is missing`);
    const sold = usualLengths(section);
    expect(sold).toHaveLength(lengths.length);
    for (const [i, length] of sold.entries()) expect(length).toBeCloseTo(lengths[i] ?? 0, 6);
  });
});
