import { expect, test } from 'vitest';
import { count, plural } from '../../src/text/plural.js';

test.each([
  [1, 'slat', '1 slat'],
  [12, 'slat', '12 slats'],
  [0, 'board', '0 boards'],
  [1.5, 'hour', '1.5 hours'],
  [2, 'box', '2 boxes'],
  [1, 'box of screws', '1 box of screws'],
  [2, 'box of screws', '2 boxes of screws'],
  [2, 'batch', '2 batches'],
  [2, 'brush', '2 brushes'],
  [2, 'glass', '2 glasses'],
  [2, 'piece', '2 pieces'],
  [2, 'inch', '2 inches'],
  [2, 'foot', '2 feet'],
  [2, 'half', '2 halves'],
  [2, 'person', '2 people'],
  [2, 'glue-up', '2 glue-ups'],
  [2, 'dry fit', '2 dry fits'],
  [2, 'stop block', '2 stop blocks'],
  [2, 'assembly', '2 assemblies'],
  [2, 'tray', '2 trays'],
  [2, 'pair of legs', '2 pairs of legs'],
])('%d %s', (n, thing, text) => {
  expect(count(n, thing)).toBe(text);
});

test('a thing that does not end in a letter stays as it is', () => {
  expect(plural('2x4')).toBe('2x4');
});
