import type { Figure } from '../measure/figure.js';
import type { Cents, Mm } from '../measure/quantities.js';

/** Boards of one section. */
export type Purchase = {
  readonly section: string;
  readonly width: Figure;
  readonly thickness: Figure;
  readonly boards: readonly BoughtBoard[];
  /** Lines for the store: 3 boards of 8 ft. */
  readonly buy: readonly BuyLine[];
  readonly priced: boolean;
  readonly cost: Figure;
  /** Lowest total that any plan could have, and how that is known. */
  readonly proof: { readonly kind: 'bound' | 'search' | 'none'; readonly words: string };
  readonly missing: readonly string[];
  readonly kerf: Mm;
  readonly trim: Mm;
  /** One board more, that the longest piece of a board without slack comes out of; none where all have slack. */
  readonly spare?: Spare;
  /** Where strips cost less ripped than bought: `boards` are the strips, `buy` the boards to rip. */
  readonly ripped?: Ripped;
};

/** Boards whose pieces leave no room for a bad end, and what one board more would cost. */
export type Spare = {
  /** Numbers of those boards. */
  readonly tight: readonly number[];
  readonly length: Figure;
  /** 0 without prices. */
  readonly cost: Figure;
};

export type BuyLine = { readonly length: Figure; readonly count: number; readonly each: Figure };

export type BoughtBoard = {
  readonly number: number;
  readonly length: Mm;
  readonly onHand: boolean;
  /**
   * On a board that a measured length asks for once the others are there: what the store asks for it, 0 without
   * prices. It is still to be bought until it is entered as one that came.
   */
  readonly besides?: Cents;
  readonly cuts: readonly { readonly mark: string; readonly length: Mm }[];
  readonly offcut: Mm;
  /** How far in the first cut may start and all pieces still come out. */
  readonly slack: Mm;
};

/** Strips that are cheaper ripped out of wider boards than bought. */
export type Ripped = {
  /** Section of the boards to rip. */
  readonly from: string;
  /** Strips out of each board. */
  readonly strips: number;
  /** From the fence to the blade for the strips, and for the cut that makes the first edge straight. */
  readonly fence: Figure;
  readonly edgeFence: Figure;
  /** What comes off the first edge, and what one cut takes. */
  readonly edge: Figure;
  readonly kerf: Figure;
  /** True where the width of a strip is the thickness of the board. */
  readonly turned: boolean;
  /** What the strips would cost as they are sold. */
  readonly bought: Figure;
  readonly words: readonly string[];
};
