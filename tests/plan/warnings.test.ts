import { describe, expect, test } from 'vitest';
import { planOf, project } from '../support/projects.js';

const BENCH = project('planter-bench');
const warningsAt = (seatFeet: number) =>
  planOf(BENCH, { seat_length: { kind: 'length', value: seatFeet * 304.8 } }).warnings;

// Asked of the sums by hand in holds.test.ts: 84 in gives "look again" on the very edge, under a foot and on
// a floor for 40 lb on a square foot; 48 in only on that floor.
describe('what is looked at before money is spent', () => {
  test('names every load that is near its limit, not only those beyond it', () => {
    const long = warningsAt(7).join('\n');
    expect(long).toMatch(/very edge, on one rail: look again\./);
    expect(long).toMatch(/weight on one foot: look again\./);
    expect(long).toMatch(/Weight on the floor it covers: look again\./);
  });

  test('leaves out what holds', () => {
    const usual = warningsAt(4).join('\n');
    expect(usual).toMatch(/Weight on the floor it covers: look again\./);
    expect(usual).not.toMatch(/very edge|one foot/);
  });
});
