import { describe, expect, test } from 'vitest';
import { heedLines, onFewLines } from '../../src/ui/screens/interview/heed-lines.js';

const NARROW = 'Together they are 3-3/4 in too wide for the inside: fewer or smaller pots.';
const WET = 'Dry the boards before gluing.';

describe('warnings beside an answer', () => {
  test('are told in full where there is room', () => {
    expect(heedLines([NARROW, WET], { width: 50, height: 3 })).toEqual([
      '! Together they are 3-3/4 in too wide for the',
      '  inside: fewer or smaller pots.',
      '! Dry the boards before gluing.',
    ]);
  });

  test('are told whole or counted, never half: what to do stands at the end', () => {
    expect(heedLines([NARROW, WET, WET], { width: 50, height: 3 })).toEqual([
      '! Together they are 3-3/4 in too wide for the',
      '  inside: fewer or smaller pots.',
      '! and 2 more, in the plan',
    ]);
  });

  test('where not even the first one fits, its end is marked as cut', () => {
    expect(heedLines([NARROW, WET], { width: 50, height: 1 })).toEqual([
      '! Together they are 3-3/4 in too wide for the i...',
    ]);
    expect(heedLines([NARROW], { width: 50, height: 0 })).toEqual([]);
  });
});

test('short facts share a line where both fit', () => {
  expect(onFewLines(['84 in wide', '16 boards', 'a long line of its own'], 24)).toEqual([
    '84 in wide; 16 boards',
    'a long line of its own',
  ]);
});
