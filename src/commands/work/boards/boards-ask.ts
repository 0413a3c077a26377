import type { Cents, Mm } from '../../../measure/quantities.js';

/** Pieces that somebody needs. */
export type Wanted = { readonly name: string; readonly length: Mm; readonly count: number };

/** A length that the store sells; without `limit` there are as many as wanted. */
export type ForSale = {
  readonly length: Mm;
  readonly price?: Cents;
  readonly limit?: number;
  readonly name: string;
};

/** A board that is there already, with what cannot be used of it, in order from its first end. */
export type InHand = {
  readonly length: Mm;
  readonly defects: readonly Defect[];
  readonly count: number;
  readonly name: string;
};

export type Defect = { readonly from: Mm; readonly to: Mm };

/** The lists, from the line or from a file. */
export type Lists = {
  readonly pieces: readonly Wanted[];
  readonly boards: readonly ForSale[];
  readonly hands: readonly InHand[];
};

/** Everything that decides how boards are cut. The squaring is what comes off, blade not counted. */
export type BoardsAsk = Lists & {
  readonly kerf: Mm;
  readonly trimStart: Mm;
  readonly trimEnd: Mm;
};
