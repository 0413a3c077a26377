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
  /** Behind other wood; drawn dashed or left out. */
  | 'hidden';

export type Stroke = {
  readonly from: { readonly u: Mm; readonly v: Mm };
  readonly to: { readonly u: Mm; readonly v: Mm };
  readonly weight: Weight;
};

/** A filled face, so that what is being added stands out without color. */
export type Patch = {
  readonly u: Mm;
  readonly v: Mm;
  readonly width: Mm;
  readonly height: Mm;
  readonly weight: Weight;
};

export type DimensionLine = {
  readonly along: 'u' | 'v';
  readonly from: Mm;
  readonly to: Mm;
  /** Which side of the drawing it stands on, and in which row outward from it. */
  readonly side: 'above' | 'below' | 'left' | 'right';
  readonly row: number;
  readonly text: string;
  readonly bright: boolean;
};

export type Label = { readonly u: Mm; readonly v: Mm; readonly text: string };

export type Drawing = {
  readonly title: string;
  readonly width: Mm;
  readonly height: Mm;
  readonly strokes: readonly Stroke[];
  readonly patches: readonly Patch[];
  readonly dimensions: readonly DimensionLine[];
  readonly labels: readonly Label[];
  /** The drawing in words, for a screen reader. */
  readonly inWords: string;
};

export type View = 'front' | 'end' | 'above';
