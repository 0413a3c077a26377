import { describe, expect, test } from 'vitest';
import { type MetalId, metalWarning } from '../../src/materials/screw-metal.js';
import { speciesNamed } from '../../src/materials/species.js';

function wood(id: string) {
  const species = speciesNamed(id);
  if (species === undefined) throw new Error(`${id} is missing`);
  return species;
}

const INLAND_CLEAR = { coast: false, finish: 'clear' } as const;
const INLAND_PAINTED = { coast: false, finish: 'opaque' } as const;
const COAST = { coast: true, finish: 'clear' } as const;

describe('screws against wood and weather', () => {
  // Field case F17: galvanized screws left black marks in a cedar deck within months; stainless
  // prevents it in cedar, redwood and oak, 316 near salt.
  test.each(['western-redcedar', 'redwood', 'white-oak'])('F17: %s wants stainless', id => {
    expect(metalWarning('hot-dip-galvanized', wood(id), INLAND_CLEAR)).toMatch(/[Ss]tainless/);
    expect(metalWarning('stainless-304', wood(id), INLAND_CLEAR)).toBeUndefined();
  });

  test('F17: the warning says that a clear coat does not stop the stain', () => {
    expect(metalWarning('coated-exterior', wood('redwood'), INLAND_CLEAR)).toMatch(/no clear coat/);
  });

  // Western red cedar leaflet: 316 on the coast. IBC 2304.9.5.1: treated wood takes hot-dip zinc or
  // stainless. Cedar leaflet: hot-dip is acceptable on cedar that is not clear finished.
  test.each<[MetalId, string, typeof COAST | typeof INLAND_CLEAR | typeof INLAND_PAINTED, boolean]>(
    [
      ['stainless-304', 'redwood', COAST, true],
      ['stainless-316', 'redwood', COAST, false],
      ['hot-dip-galvanized', 'southern-pine', INLAND_CLEAR, false],
      ['coated-exterior', 'southern-pine', INLAND_CLEAR, true],
      ['hot-dip-galvanized', 'western-redcedar', INLAND_PAINTED, false],
      ['coated-exterior', 'western-redcedar', INLAND_PAINTED, true],
      ['hot-dip-galvanized', 'white-oak', INLAND_PAINTED, true],
      ['coated-exterior', 'spruce-pine-fir', INLAND_CLEAR, false],
      ['coated-exterior', 'douglas-fir', INLAND_CLEAR, true],
      ['plain-zinc', 'spruce-pine-fir', INLAND_PAINTED, true],
      ['stainless-304', 'southern-pine', INLAND_CLEAR, false],
    ],
  )('%s in %s: warned %#', (metal, id, site, warned) => {
    expect(metalWarning(metal, wood(id), site) !== undefined).toBe(warned);
  });
});
