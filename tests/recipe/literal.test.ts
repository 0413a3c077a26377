import { describe, expect, test } from 'vitest';
import { literal } from '../../src/recipe/literal.js';

// 1 in is 25.4 mm exactly; 1 ft 304.8 mm.
describe('a plain value in a file is what its place wants', () => {
  test.each([
    ['48 in', 'length', { kind: 'length', value: 1219.2 }],
    ['3/8 in', 'length', { kind: 'length', value: 9.525 }],
    ['1-1/2 in', 'length', { kind: 'length', value: 38.1 }],
    ['5\' 3-1/2"', 'length', { kind: 'length', value: 1612.9 }],
    ['45 mm', 'length', { kind: 'length', value: 45 }],
    ['0', 'length', { kind: 'number', value: 0 }],
    ['-2 in', 'length', { kind: 'minus', of: { kind: 'length', value: 50.8 } }],
    ['2', 'number', { kind: 'number', value: 2 }],
    ['-2.5', 'number', { kind: 'minus', of: { kind: 'number', value: 2.5 } }],
    ['90', 'minutes', { kind: 'number', value: 90 }],
    ['1 h 30 min', 'minutes', { kind: 'number', value: 90 }],
    ['yes', 'flag', { kind: 'flag', value: true }],
    ['No', 'flag', { kind: 'flag', value: false }],
    ['2x4', 'text', { kind: 'text', value: '2x4' }],
    ['yes', 'text', { kind: 'text', value: 'yes' }],
    ['48 in', 'anything', { kind: 'length', value: 1219.2 }],
    ['2', 'anything', { kind: 'number', value: 2 }],
    ['no', 'anything', { kind: 'flag', value: false }],
    ['2x4', 'anything', { kind: 'text', value: '2x4' }],
    ['thick', 'anything', { kind: 'text', value: 'thick' }],
  ] as const)('%s as %s', (text, wanted, node) => {
    expect(literal(text, wanted)).toEqual(node);
  });

  test.each([
    ['48', 'length', '"48" has no unit.'],
    ['3/8', 'length', '"3/8" has no unit.'],
    ['long', 'length', '"long" is not a length: it has no number.'],
    ['48 inn', 'length', '"inn" is not a unit of length.'],
    ['two', 'number', '"two" is not a number.'],
    ['2 in', 'number', '"2 in" is not a number.'],
    ['maybe', 'flag', '"maybe" is not yes or no.'],
    ['soon', 'minutes', '"soon" is not a time span.'],
  ] as const)('%s is no %s', (text, wanted, problem) => {
    expect(literal(text, wanted)).toMatchObject({ is: 'unreadable', problem });
  });
});
