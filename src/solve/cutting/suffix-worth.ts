import type { Work } from '../work.js';
import { spend } from '../work.js';
import type { Goods } from './knapsack.js';

type Steps = { readonly length: Float64Array; readonly value: Float64Array };

/**
 * Tells the most that a stretch of board can be worth when only the lengths from number i on are cut from it.
 * Holds, for every i, the fillings that no shorter one matches. Exact while sums of worth stay below 2^53.
 */
export class SuffixWorth {
  private readonly steps: Steps[];

  constructor(goods: Goods, widest: number, work: Work) {
    const start = { length: Float64Array.of(0), value: Float64Array.of(0) };
    this.steps = [start];
    for (let i = goods.lengths.length - 1; i >= 0; i--) {
      this.steps.unshift(withItem(this.steps[0] as Steps, goods, i, widest));
      spend(work, (this.steps[0] as Steps).length.length * 2);
    }
  }

  /** Most worth from lengths i, i + 1, ... in `room`. */
  most(i: number, room: number): number {
    const { length, value } = this.steps[i] as Steps;
    let low = 0;
    let high = length.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((length[middle] as number) <= room) low = middle;
      else high = middle - 1;
    }
    return value[low] as number;
  }
}

function withItem(steps: Steps, goods: Goods, i: number, widest: number): Steps {
  const length = goods.lengths[i] as number;
  const worth = goods.worth[i] as number;
  let left = worth > 0 ? Math.min(goods.demands[i] as number, Math.floor(widest / length)) : 0;
  let grown = steps;
  for (let chunk = 1; left > 0; chunk *= 2) {
    const count = Math.min(chunk, left);
    left -= count;
    grown = merged(grown, count * length, count * worth, widest);
  }
  return grown;
}

/** The fillings with and without one more chunk, without those that a shorter one matches. */
function merged(steps: Steps, length: number, value: number, widest: number): Steps {
  const size = steps.length.length;
  const lengths = new Float64Array(2 * size);
  const values = new Float64Array(2 * size);
  let out = 0;
  let last = -1;
  let old = 0;
  let grown = 0;
  while (true) {
    const oldLength = old < size ? (steps.length[old] as number) : Infinity;
    const grownLength = grown < size ? (steps.length[grown] as number) + length : Infinity;
    const isOld = oldLength <= grownLength;
    const l = isOld ? oldLength : grownLength;
    if (l > widest) break;
    const v = isOld ? (steps.value[old++] as number) : (steps.value[grown++] as number) + value;
    if (v <= last) continue;
    last = v;
    if (out > 0 && lengths[out - 1] === l) out--;
    lengths[out] = l;
    values[out++] = v;
  }
  return { length: lengths.subarray(0, out), value: values.subarray(0, out) };
}
