import type { Mm } from '../measure/quantities.js';

/**
 * A drawing as lines in mm on paper space: u to the right, v up. It knows nothing of characters or
 * pixels; the screen and the page each set it in their own way.
 */
export type PaperPoint = { readonly u: Mm; readonly v: Mm };

/** What a line stands for; `line-kinds.ts` says how each is drawn. */
export type LineKind =
  /** An edge that is seen. */
  | 'visible'
  /** An edge behind other wood. */
  | 'hidden'
  /** The middle of a hole or a screw. */
  | 'center'
  /** Where a section is cut. */
  | 'cutting-plane'
  /** On a face that is cut, and on waste. */
  | 'hatch'
  /** Where a stretch of a long board is left out. */
  | 'break'
  /** What is no wood of the piece, such as a pot, and the way that a board goes to its place. */
  | 'phantom';

export type Stroke = {
  readonly from: PaperPoint;
  readonly to: PaperPoint;
  readonly kind: LineKind;
  /** Belongs to what is being added or worked on now. */
  readonly bright: boolean;
};

/**
 * A face that is not left blank, so that it stands out without color. Its corners go round a shape
 * without dents; what stands before a face parts it into several.
 */
export type Patch = {
  /** Id of the part that it belongs to. */
  readonly part: string;
  readonly corners: readonly PaperPoint[];
  /** Being added now; cut through by a section; to be sawn away. */
  readonly look: 'added' | 'cut' | 'waste';
  /** Which way its hatching leans: two boards that touch lean differently where they can. */
  readonly lean: 'right' | 'left';
};

/** The first in a drawing's list is the one to keep when there is little room. */
export type DimensionLine = {
  readonly along: 'u' | 'v';
  readonly from: Mm;
  readonly to: Mm;
  /** Which side of the drawing it stands on, and in which row outward from it, from 0. */
  readonly side: 'above' | 'below' | 'left' | 'right';
  readonly row: number;
  readonly text: string;
  readonly bright: boolean;
};

/** A name on a part: inside where there is room, else beside the drawing with a leader to `on`. */
export type Mark = {
  readonly text: string;
  readonly part: string;
  /** A place where the part is seen, and the room round it that it fills by itself. */
  readonly on: PaperPoint;
  readonly room: { readonly width: Mm; readonly height: Mm };
  readonly bright: boolean;
};

/** The way that a board goes to its place, or a direction of the piece. */
export type Arrow = {
  readonly from: PaperPoint;
  readonly to: PaperPoint;
  readonly kind: 'goes' | 'toward';
  /** Empty where the arrow says all. */
  readonly text: string;
};

/** What an arrow toward the back of the piece says: a bench has its back to a wall. */
export const WALL = 'toward the wall';

/** Words on the drawing, in the middle of a place. */
export type Label = { readonly text: string; readonly at: PaperPoint; readonly bright: boolean };

/** A round thing seen along its middle: a screw, a hole. */
export type Ring = { readonly at: PaperPoint; readonly radius: Mm; readonly bright: boolean };

export type Drawing = {
  readonly title: string;
  readonly width: Mm;
  readonly height: Mm;
  /** True where every stroke is level or upright, as in views square to a side of the piece. */
  readonly square: boolean;
  /** Meant for paper at 1:1. */
  readonly trueSize: boolean;
  readonly strokes: readonly Stroke[];
  readonly patches: readonly Patch[];
  readonly dimensions: readonly DimensionLine[];
  readonly marks: readonly Mark[];
  readonly arrows: readonly Arrow[];
  readonly labels: readonly Label[];
  readonly rings: readonly Ring[];
  /** Lines of text that belong under the drawing: the order of cuts, what a mark means. */
  readonly notes: readonly string[];
  /** The drawing in words, for a screen reader. */
  readonly inWords: string;
};

/** Sides that one looks at squarely. */
export type SquareView = 'front' | 'end' | 'above';
/** Corners that one looks at from above, by where the eye is; each is a quarter turn from the one before. */
export type CornerView = 'corner-right' | 'corner-back-right' | 'corner-back-left' | 'corner-left';
export type View = SquareView | CornerView;

/** A drawing without anything on it, to be filled in. */
export const BLANK: Omit<Drawing, 'title' | 'inWords'> = {
  width: 0,
  height: 0,
  square: true,
  trueSize: false,
  strokes: [],
  patches: [],
  dimensions: [],
  marks: [],
  arrows: [],
  labels: [],
  rings: [],
  notes: [],
};
