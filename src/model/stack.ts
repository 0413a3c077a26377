import { inches } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import { atMost, lessThan } from '../measure/tolerance.js';

export type StackResult =
  | { readonly ok: true; readonly layers: readonly Mm[] }
  /** What stands on the stack is too tall by this much: the stack would have a negative height. */
  | { readonly ok: false; readonly tooTall: Mm }
  /** No layer has a thickness, or the stack is taller than anything built of blocks. */
  | { readonly ok: false; readonly tooMany: number };

/** What stood in the recipe for a stack, thing by thing of its list: the blocks only come near it. */
export type StackWish = {
  readonly rule: string;
  readonly things: readonly { readonly wanted: Mm; readonly blocks: number }[];
};

/** How far a stack may rise over the height that is asked for: common practice, an eye hardly sees it. */
export const OVER: Mm = inches(1 / 4);

const MOST_LAYERS = 100;

type Pile = { readonly layers: readonly Mm[]; readonly total: Mm };

/**
 * Layers, thickest at the bottom, that come nearest to a height and pass it by no more than 1/4 in; of
 * two as near, fewer layers, then the lower. Thicknesses may repeat: 4-1/4 in from layers of 1-1/2 and
 * 3/4 in is three of 1-1/2 in, 1/4 in too high. Less than half the thinnest layer needs none.
 */
export function stackTo(height: Mm, thicknesses: readonly Mm[]): StackResult {
  if (lessThan(height, 0)) return { ok: false, tooTall: -height };
  const kinds = [...new Set(thicknesses)].sort((a, b) => b - a);
  const thinnest = kinds.at(-1);
  if (thinnest === undefined || atMost(thinnest, 0)) return { ok: false, tooMany: 0 };
  const needed = Math.ceil(height / thinnest);
  if (needed > MOST_LAYERS) return { ok: false, tooMany: needed };
  const piles = pilesOf({ layers: [], total: 0 }, kinds, height);
  return { ok: true, layers: piles.reduce((best, pile) => better(best, pile, height)).layers };
}

/** Every pile of these kinds that does not rise too high, on top of what lies there. */
function pilesOf(below: Pile, kinds: readonly Mm[], height: Mm): readonly Pile[] {
  const [kind, ...rest] = kinds;
  if (kind === undefined) return [below];
  const piles: Pile[] = [];
  let pile = below;
  while (atMost(pile.total, height + OVER)) {
    piles.push(...pilesOf(pile, rest, height));
    pile = { layers: [...pile.layers, kind], total: pile.total + kind };
  }
  return piles;
}

function better(a: Pile, b: Pile, height: Mm): Pile {
  const offA = Math.abs(a.total - height);
  const offB = Math.abs(b.total - height);
  if (lessThan(offB, offA)) return b;
  if (lessThan(offA, offB)) return a;
  if (a.layers.length !== b.layers.length) return b.layers.length < a.layers.length ? b : a;
  return lessThan(b.total, a.total) ? b : a;
}
