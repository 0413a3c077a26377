import type { Work } from '../work.js';
import { spend } from '../work.js';
import type { Filling, Goods, Target } from './knapsack.js';

/** Larger tables than this (entries) cost more than keeping a list of fillings. */
const mostEntries = 4_000_000;

/** Whether a table over every unit of one room is the quicker way to fill it. */
export function suitsTable(goods: Goods, room: number): boolean {
  return room * goods.lengths.length <= mostEntries;
}

/**
 * The most valuable filling of one room, from a table over every unit of it (R. Bellman, Dynamic Programming,
 * 1957): quicker than a list of fillings where nearly every sum of lengths occurs. Exact as long as all sums of
 * worth stay below 2^53.
 */
export class RoomTable {
  private best = new Float64Array(0);
  /** Whether a chunk is taken at a length, chunk by chunk. */
  private taken = new Uint8Array(0);

  /** The best filling of the target, or undefined when none is worth more than its `over`. */
  solve(goods: Goods, { room, over }: Target, work: Work): Filling | undefined {
    const chunks = chunksOf(goods, room);
    this.fill(goods, chunks, room);
    spend(work, (chunks.length * room) / 2);
    const value = this.best[room] as number;
    if (value <= over) return undefined;
    const counts = new Array<number>(goods.lengths.length).fill(0);
    let left = room;
    for (let c = chunks.length - 1; c >= 0; c--) {
      if (this.taken[c * (room + 1) + left] !== 1) continue;
      const { item, count } = chunks[c] as Chunk;
      counts[item] = (counts[item] as number) + count;
      left -= count * (goods.lengths[item] as number);
    }
    return { value, counts };
  }

  private fill({ lengths, worth }: Goods, chunks: readonly Chunk[], room: number): void {
    const width = room + 1;
    if (this.best.length < width) this.best = new Float64Array(width);
    if (this.taken.length < chunks.length * width)
      this.taken = new Uint8Array(chunks.length * width);
    const { best, taken } = this;
    best.fill(0, 0, width);
    taken.fill(0, 0, chunks.length * width);
    for (let c = 0; c < chunks.length; c++) {
      const { item, count } = chunks[c] as Chunk;
      const length = count * (lengths[item] as number);
      const more = count * (worth[item] as number);
      const from = c * width;
      for (let at = room; at >= length; at--) {
        const value = (best[at - length] as number) + more;
        if (value > (best[at] as number)) {
          best[at] = value;
          taken[from + at] = 1;
        }
      }
    }
  }
}

/** So many pieces of one length that are taken or left together. */
type Chunk = { readonly item: number; readonly count: number };

/** 1, 2, 4 ... pieces of each length, so that every number of them can come about. */
function chunksOf({ lengths, demands, worth }: Goods, room: number): Chunk[] {
  const chunks: Chunk[] = [];
  lengths.forEach((length, item) => {
    if ((worth[item] as number) <= 0) return;
    let left = Math.min(demands[item] as number, Math.floor(room / length));
    for (let chunk = 1; left > 0; chunk *= 2) {
      const count = Math.min(chunk, left);
      left -= count;
      chunks.push({ item, count });
    }
  });
  return chunks;
}
