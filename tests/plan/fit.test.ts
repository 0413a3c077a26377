import { describe, expect, test } from 'vitest';
import { inches } from '../../src/measure/inch.js';
import type { Answers } from '../../src/recipe/values.js';
import { planOf, project } from '../support/projects.js';

const BENCH = project('planter-bench');
const length = (value: number) => ({ kind: 'length', value: inches(value) }) as const;

function verdict(id: string, answers: Answers): string | undefined {
  return planOf(BENCH, answers).fit.find(check => check.id === id)?.verdict;
}

describe('does the bench suit the place?', () => {
  // Source: arithmetic: 48 + 2 x 18 = 84 in, with 2 in to spare 86 in.
  test.each([
    [90, 'fits'],
    [86, 'fits'],
    [85, 'does not fit'],
  ])('in %s in along the wall it %s', (room, expected) => {
    expect(verdict('room', { room_length: length(room) })).toBe(expected);
  });

  // Source: 2010 ADA Standards 403.5, clear width of walking surfaces 36 in; 54 - 18 = 36.
  test.each([
    [54, 'fits'],
    [53, 'look again'],
  ])('with %s in from the wall the walkway %s', (depth, expected) => {
    expect(verdict('walkway', { room_depth: length(depth) })).toBe(expected);
  });

  // Source: 2010 ADA Standards 903.5, bench seats 17 to 19 in high.
  test.each([
    [16.9375, 'look again'],
    [17, 'fits'],
    [19, 'fits'],
    [20, 'look again'],
  ])('a seat %s in high: %s', (height, expected) => {
    expect(verdict('seat_height', { seat_height: length(height) })).toBe(expected);
  });

  test('what does not fit stands first among the warnings, with what to do', () => {
    const [first] = planOf(BENCH, { room_length: length(80) }).warnings;
    expect(first).toContain('does not fit');
    expect(first).toContain('Shorten the seat or the planters by 6 in');
  });
});

test('a bench has two planter boxes alike, whatever their width on the tape', () => {
  // Source: geometry: one box is the mirror image of the other.
  const widths = Array.from({ length: 49 }, (_, sixteenth) => 16 + sixteenth / 16);
  const told = widths.map(width => {
    const { planters } = planOf(BENCH, { planter_width: length(width) });
    return planters.map(({ places }) => places);
  });
  expect(told).toEqual(widths.map(() => [2]));
});

describe('warned before buying', () => {
  // Source: field case F17: cedar, steel that is not stainless, and rain make black stains.
  test('galvanized screws in redcedar under a clear sealer', () => {
    const { warnings } = planOf(BENCH, {
      species: { kind: 'choice', value: 'western-redcedar' },
      metal: { kind: 'choice', value: 'hot-dip-galvanized' },
    });
    expect(warnings.join(' ')).toMatch(/black stains/);
  });

  test('stainless screws in redcedar are nothing to warn of', () => {
    const { warnings } = planOf(BENCH, {
      species: { kind: 'choice', value: 'western-redcedar' },
      metal: { kind: 'choice', value: 'stainless-304' },
      dryness: { kind: 'choice', value: 'kiln-dried' },
      // A floor that carries it, so that nothing else is to be looked at either.
      floor_limit: { kind: 'count', value: 100 },
    });
    expect(warnings).toEqual([]);
  });
});
