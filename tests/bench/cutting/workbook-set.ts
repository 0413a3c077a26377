import type { CuttingProblem, Piece, Stock } from '../../../src/solve/cutting/problem.js';

/** Whole numbers from a fixed seed (xorshift with a multiplier, G. Marsaglia 2003): the same on every machine. */
export function seededNumbers(seed: number): (least: number, most: number) => number {
  let state = (Math.imul(seed, 0x9e3779b1) ^ 0x85ebca6b) >>> 0 || 1;
  const next = (): number => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return Math.imul(state, 0x2c1b3c6d) >>> 0;
  };
  for (let i = 0; i < 8; i++) next();
  return (least, most) => least + Math.floor((next() / 2 ** 32) * (most - least + 1));
}

const inch = 16;
const foot = 12 * inch;

/**
 * A made-up purchase problem of the size of one project, in 1/16 in: 1/8 in kerf, 6 to 8 store lengths whose
 * price a foot rises with length and ends in 8 cents, up to 4 boards on hand, 5 to 15 lengths, 30 to 150 pieces.
 */
export function workbookProblem(seed: number): CuttingProblem {
  const random = seededNumbers(seed);
  const trimStart = [0, inch / 2, inch][random(0, 2)] ?? 0;
  const rate = random(40, 160);
  const feet = [6, 8, 10, 12, 14, 16, 7, 20].slice(0, random(6, 8));
  const store = feet.map((length): Stock => {
    const uneven = 1 + 0.012 * (length - 8) + random(-900, 900) / 10_000;
    const cost = Math.max(8, Math.round((length * rate * uneven - 8) / 10) * 10 + 8);
    return { id: `${length} ft`, length: length * foot, cost, trimStart, trimEnd: 0 };
  });
  const onHand = Array.from({ length: random(0, 4) }, (_, place): Stock => {
    const length = random(24, 90) * inch;
    return { id: `on hand ${place + 1}`, length, cost: 0, available: 1, trimStart, trimEnd: 0 };
  });
  return { pieces: workbookPieces(random), stock: [...store, ...onHand], kerf: inch / 8 };
}

function workbookPieces(random: (least: number, most: number) => number): Piece[] {
  const step = [inch / 4, inch / 2, inch / 8][random(0, 2)] ?? inch;
  const wanted = random(5, 15);
  const lengths = new Set<number>();
  while (lengths.size < wanted) {
    const [least, most] = random(0, 1) === 0 ? [6, 36] : [18, 96];
    lengths.add(Math.round((random(least * 100, most * 100) / 100) * (inch / step)) * step);
  }
  const counts = Array.from(lengths, () => 1);
  for (let left = random(30, 150) - wanted; left > 0; left--) {
    const place = random(0, wanted - 1);
    counts[place] = (counts[place] ?? 0) + 1;
  }
  return Array.from(lengths, (length, place) => ({
    id: `piece ${place + 1}`,
    length,
    count: counts[place] ?? 1,
  }));
}
