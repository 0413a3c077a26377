import { expect, test } from 'vitest';
import { nearestWord } from '../../src/measure/suggest.js';

const words = ['board', 'rail', 'slat', 'post', 'panel_rail', 'seat_length', 'in'];

test.each([
  ['bord', 'board'],
  ['baord', 'board'],
  ['Rail', 'rail'],
  ['rial', 'rail'],
  ['slats', 'slat'],
  ['pots', 'post'],
  ['panelrail', 'panel_rail'],
  ['seat_lenght', 'seat_length'],
  ['seatlengt', 'seat_length'],
  ['seat_widht', undefined],
  ['banana', undefined],
  ['', undefined],
  ['x', undefined],
  ['im', 'in'],
  ['qqq', undefined],
])('%s: did you mean %s?', (typed, meant) => {
  expect(nearestWord(typed, words)).toBe(meant);
});

// Distances counted by hand: kitten, sitten, sittin, sitting is the textbook chain of three.
test('three slips are near enough in a word of nine letters and too far in one of six', () => {
  expect(nearestWord('kitten', ['sitting'])).toBeUndefined();
  expect(nearestWord('chickadee', ['chickxxxe'])).toBe('chickxxxe');
  expect(nearestWord('chickadee', ['chixxxxee'])).toBeUndefined();
});

test('of equally near words the first one wins', () => {
  expect(nearestWord('pist', ['post', 'past'])).toBe('post');
});

test('any list of words will do', () => {
  expect(nearestWord('sect', new Set(['section']))).toBeUndefined();
  expect(nearestWord('secton', new Map([['section', 1]]).keys())).toBe('section');
});
