import type { Mm } from '../measure/quantities.js';

/** So many pieces of a row, and the gap that they leave. */
type Row = { readonly count: number; readonly gap: Mm };

/** Found while boards are set out in space with the answers at hand: the piece cannot stand like that. */
export type SetOutProblem =
  | { readonly is: 'no-length'; readonly part: string; readonly length: Mm }
  | { readonly is: 'bad-count'; readonly what: string; readonly count: number }
  | { readonly is: 'too-many-parts'; readonly most: number }
  | {
      readonly is: 'no-count-fits';
      readonly layout: string;
      readonly over: Mm;
      readonly least: Mm;
      readonly most: Mm;
      /** The gaps of `fewer` are too wide, those of `more` too narrow. */
      readonly fewer: Row;
      readonly more: Row;
    }
  | { readonly is: 'not-a-run'; readonly layout: string; readonly over: Mm; readonly piece: Mm }
  /** What stands on the stack reaches too high by so much, with no block under it. */
  | {
      readonly is: 'stack-too-tall';
      readonly stack: string;
      readonly item: number;
      readonly by: Mm;
    }
  | { readonly is: 'stack-too-high'; readonly stack: string; readonly item: number }
  /** Ids of the two boards, and the sides of the space that both fill. */
  | {
      readonly is: 'boards-overlap';
      readonly a: string;
      readonly b: string;
      readonly sides: readonly [Mm, Mm, Mm];
      readonly corner: readonly [Mm, Mm, Mm];
    }
  | {
      readonly is: 'never-touches';
      readonly joint: string;
      readonly from: string;
      readonly into: string;
    }
  | {
      readonly is: 'never-overlaps';
      readonly notch: string;
      readonly cut: string;
      readonly over: string;
    }
  | { readonly is: 'nothing-left'; readonly part: string }
  | { readonly is: 'lengths-differ'; readonly path: string };
