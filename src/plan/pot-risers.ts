import { riser } from '../materials/pots.js';
import type { Mm } from '../measure/quantities.js';
import { stackTo } from '../model/stack.js';

/** A pot in its box: the rim stays `reveal` below the top edge. */
export type PotInBox = {
  readonly insideHeight: Mm;
  readonly potHeight: Mm;
  readonly reveal: Mm;
  /** Thicknesses of the offcuts that blocks are made of. */
  readonly layers: readonly Mm[];
};

export type PotRiser =
  | {
      readonly ok: true;
      /** What should stand under the pot, and the layers that come nearest. */
      readonly wanted: Mm;
      readonly layers: readonly Mm[];
      /** Rim below the top edge with these layers. */
      readonly reveal: Mm;
    }
  | { readonly ok: false; readonly tooTall: Mm }
  | { readonly ok: false; readonly tooMany: number };

/**
 * Blocks under one pot, from the thicknesses at hand.
 * @example 6-1/2 in inside, a 5 in pot flush with the rim, 2x offcuts // one layer of 1-1/2 in
 */
export function potRiser({ insideHeight, potHeight, reveal, layers }: PotInBox): PotRiser {
  const wanted = riser(insideHeight, potHeight, reveal);
  const stack = stackTo(wanted, layers);
  if (!stack.ok) return stack;
  const stands = stack.layers.reduce((sum, layer) => sum + layer, 0);
  return { ok: true, wanted, layers: stack.layers, reveal: reveal + wanted - stands };
}
