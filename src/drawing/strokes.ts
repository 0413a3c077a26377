import type { Mm } from '../measure/quantities.js';

/**
 * A drawing as lines in mm on paper space: u to the right, v up. It knows nothing of characters or
 * pixels; the screen and the page each set it in their own way.
 */
export type Weight =
  /** Being added or worked on now. */
  | 'bright'
  /** Stands there already. */
  | 'plain'
  /** Being added, but wholly behind other wood: drawn dashed. */
  | 'hidden';

export type Stroke = {
  readonly from: { readonly u: Mm; readonly v: Mm };
  readonly to: { readonly u: Mm; readonly v: Mm };
  readonly weight: Weight;
};

/**
 * A filled face, so that what is being added stands out without color. What stands before a face
 * parts it into several rectangles.
 */
export type Patch = {
  /** Id of the part that it belongs to. */
  readonly part: string;
  readonly u: Mm;
  readonly v: Mm;
  readonly width: Mm;
  readonly height: Mm;
  readonly weight: Weight;
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

export type Drawing = {
  readonly title: string;
  readonly width: Mm;
  readonly height: Mm;
  readonly strokes: readonly Stroke[];
  readonly patches: readonly Patch[];
  readonly dimensions: readonly DimensionLine[];
  /** The drawing in words, for a screen reader. */
  readonly inWords: string;
};

export type View = 'front' | 'end' | 'above';
