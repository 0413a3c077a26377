import type { Work } from '../work.js';
import { spend } from '../work.js';

/** What to pack: lengths, worth of one piece of each, and how many there are. Worths are whole numbers. */
export type Goods = {
  readonly lengths: readonly number[];
  readonly demands: readonly number[];
  readonly worth: ArrayLike<number>;
};

/** A board to fill: only fillings worth more than `over` are of interest. */
export type Target = { readonly room: number; readonly over: number };

/** So many pieces of one length, packed together. */
type Chunk = {
  readonly item: number;
  readonly count: number;
  readonly length: number;
  readonly value: number;
};

export type Filling = { readonly value: number; readonly counts: number[] };

/**
 * The most valuable filling of every target at once, or undefined where none is worth more than `over`.
 * Keeps only fillings that no shorter one matches (G. Nemhauser and Z. Ullmann, Discrete dynamic programming
 * and capital allocation, Management Science 15, 1969), so it does not matter how fine the unit of length is.
 * Exact as long as all sums of worth stay below 2^53.
 */
export class Knapsack {
  private length = new Float64Array(256);
  private value = new Float64Array(256);
  private trace = new Int32Array(256);
  private nextLength = new Float64Array(256);
  private nextValue = new Float64Array(256);
  private nextTrace = new Int32Array(256);
  private size = 0;
  /** Each packing step remembers the one before it, and in which merge it was packed. */
  private before = new Int32Array(1024);
  private merge = new Int32Array(1024);
  private remembered = 0;
  private merges: Chunk[] = [];

  solve(goods: Goods, targets: readonly Target[], work: Work): (Filling | undefined)[] {
    if (targets.length === 0) return [];
    const { lengths, worth } = goods;
    const order = [...lengths.keys()].filter(i => (worth[i] as number) > 0);
    const density = lengths.map((length, i) => (worth[i] as number) / length);
    order.sort((a, b) => (density[b] as number) - (density[a] as number) || a - b);
    const rooms = [...targets].sort((a, b) => a.room - b.room);
    this.begin();
    order.forEach((i, place) => {
      const after = density[order[place + 1] ?? -1] ?? 0;
      this.addItem(goods, i, { rooms, now: density[i] as number, after });
      spend(work, this.size + 10);
    });
    return targets.map(target => this.best(target, lengths.length));
  }

  private begin(): void {
    this.size = 1;
    this.length[0] = 0;
    this.value[0] = 0;
    this.trace[0] = -1;
    this.remembered = 0;
    this.merges = [];
  }

  /** Packs 1, 2, 4 ... pieces of one length, so that every number of them can come about. */
  private addItem(
    goods: Goods,
    i: number,
    { rooms, now, after }: { rooms: readonly Target[]; now: number; after: number },
  ): void {
    const length = goods.lengths[i] as number;
    const widest = (rooms.at(-1) as Target).room;
    let left = Math.min(goods.demands[i] as number, Math.floor(widest / length));
    for (let size = 1; left > 0; size *= 2) {
      const count = Math.min(size, left);
      left -= count;
      const value = count * (goods.worth[i] as number);
      const chunk = { item: i, count, length: count * length, value };
      this.pack(chunk, rooms, left > 0 ? now : after);
    }
  }

  /** Merges the fillings so far with the same ones and a chunk more. */
  private pack(chunk: Chunk, rooms: readonly Target[], density: number): void {
    this.reserve(2 * this.size);
    const { length, value, trace, nextLength, nextValue, nextTrace, size } = this;
    const { before, merge } = this;
    const number = this.merges.push(chunk) - 1;
    let remembered = this.remembered;
    const floors = floorsOf(rooms, density);
    const widest = (rooms.at(-1) as Target).room;
    let room = 0;
    let out = 0;
    let last = -1;
    let old = 0;
    let grown = 0;
    while (true) {
      const oldLength = old < size ? (length[old] as number) : Infinity;
      const grownLength = grown < size ? (length[grown] as number) + chunk.length : Infinity;
      const isOld = oldLength <= grownLength;
      const l = isOld ? oldLength : grownLength;
      if (l > widest) break;
      const from = isOld ? old++ : grown++;
      const v = isOld ? (value[from] as number) : (value[from] as number) + chunk.value;
      if (v <= last) continue;
      while (l > (rooms[room] as Target).room) room++;
      if (v - density * l <= (floors[room] as number)) continue;
      last = v;
      // Two fillings of the same length: the better one replaces the other.
      if (out > 0 && nextLength[out - 1] === l) out--;
      nextLength[out] = l;
      nextValue[out] = v;
      if (isOld) nextTrace[out++] = trace[from] as number;
      else {
        before[remembered] = trace[from] as number;
        merge[remembered] = number;
        nextTrace[out++] = remembered++;
      }
    }
    this.size = out;
    this.remembered = remembered;
    [this.length, this.nextLength] = [nextLength, length];
    [this.value, this.nextValue] = [nextValue, value];
    [this.trace, this.nextTrace] = [nextTrace, trace];
  }

  /** Room for so many fillings, and for remembering as many more steps. */
  private reserve(size: number): void {
    if (this.nextLength.length < size) {
      this.length = wider(this.length, new Float64Array(2 * size));
      this.value = wider(this.value, new Float64Array(2 * size));
      this.trace = wider(this.trace, new Int32Array(2 * size));
      this.nextLength = new Float64Array(2 * size);
      this.nextValue = new Float64Array(2 * size);
      this.nextTrace = new Int32Array(2 * size);
    }
    const steps = this.remembered + size;
    if (this.before.length >= steps) return;
    this.before = wider(this.before, new Int32Array(2 * steps));
    this.merge = wider(this.merge, new Int32Array(2 * steps));
  }

  private best({ room, over }: Target, lengths: number): Filling | undefined {
    let place = this.size - 1;
    while (place >= 0 && (this.length[place] as number) > room) place--;
    if (place < 0 || (this.value[place] as number) <= over) return undefined;
    const counts = new Array<number>(lengths).fill(0);
    for (let at = this.trace[place] as number; at >= 0; at = this.before[at] as number) {
      const { item, count } = this.merges[this.merge[at] as number] as Chunk;
      counts[item] = (counts[item] as number) + count;
    }
    return { value: this.value[place] as number, counts };
  }
}

/** The same numbers in a longer array. */
function wider<T extends Float64Array | Int32Array>(old: T, next: T): T {
  next.set(old);
  return next;
}

/**
 * A filling of length l and value v can still beat some target it fits only if v - density * l is above this
 * floor (by target, shortest first): the rest of the room is worth at most `density` a unit. Worths are
 * whole, so half a unit on top changes nothing but leaves room for a quotient that is a hair off.
 */
function floorsOf(rooms: readonly Target[], density: number): Float64Array {
  const floors = new Float64Array(rooms.length);
  let least = Infinity;
  for (let k = rooms.length - 1; k >= 0; k--) {
    const { room, over } = rooms[k] as Target;
    least = Math.min(least, over - density * room);
    floors[k] = least + 0.5;
  }
  return floors;
}
