import type { PotFit } from '../materials/pots.js';
import type { Figure } from '../measure/figure.js';
import type { Mm } from '../measure/quantities.js';

/** One pot in its box, on its blocks. */
export type PotRow = {
  readonly number: number;
  readonly height: Figure;
  readonly across: Figure;
  /** `2 stacks, each 2 x 2x4 and 1 x 1x4`, or that it stands on the floor. */
  readonly blocks: string;
  /** Rim below the edge of the box; negative where it stands over it. */
  readonly rim: Figure;
  readonly wished: Figure;
  /** Rim less wish within the quarter inch that stacks of boards come near to. */
  readonly near: boolean;
  /** Least air round it, to a wall or to half the way to the next pot. */
  readonly air: Figure;
  readonly verdict: PotFit['verdict'];
};

/** A box for pots, or for soil. */
/** Where a pot stands: its middle, the height of its foot, and its size. */
export type StandingPot = {
  readonly number: number;
  readonly x: Mm;
  readonly y: Mm;
  readonly foot: Mm;
  readonly height: Mm;
  readonly diameter: Mm;
};

/** A planter of the piece by its boards and pots, to be drawn. */
export type StandingPlanter = {
  /** Ids of its parts. */
  readonly parts: readonly string[];
  readonly floor: Mm;
  readonly pots: readonly StandingPot[];
};

export type PlanterRow = {
  readonly name: string;
  /** Steps that set its blocks and pots. */
  readonly steps: readonly string[];
  /** How many are alike, and the first of them. */
  readonly places: number;
  readonly first: StandingPlanter;
  readonly inside: { readonly long: Figure; readonly deep: Figure; readonly high: Figure };
  readonly pots: readonly PotRow[];
  /** All its pots soaked. */
  readonly potted: Figure;
  /** Filled with potting mix instead of pots. */
  readonly soil: Figure;
  readonly bags: Figure;
  readonly bag: string;
  readonly soaked: Figure;
  /** Open share of its floor. */
  readonly open: Figure;
  readonly drains: boolean;
};
