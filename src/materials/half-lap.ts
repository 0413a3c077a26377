import type { Mm } from '../measure/quantities.js';

export type HalfLap = {
  /** Half of the thickness as measured: how deep to cut both. */
  readonly aim: Mm;
  /** What is left of the board at the depth that the saw is set to. */
  readonly cheek: Mm;
  /**
   * Thickness of two such cheeks put together, less that of the board: below zero they lie hollow, above
   * zero they stand proud. Twice the error of the depth.
   */
  readonly step: Mm;
};

/**
 * Two boards of one thickness, both cut to one depth and laid into each other.
 * @example a board of 1-7/16 in, saw at 3/4 in // cheeks of 11/16 in, 1/16 in hollow
 */
export function halfLap(thickness: Mm, depth: Mm): HalfLap {
  const cheek = thickness - depth;
  return { aim: thickness / 2, cheek, step: 2 * cheek - thickness };
}
