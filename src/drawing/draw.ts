import type { Display } from '../measure/quantities.js';
import type { Model } from '../model/part.js';
import type { StandingPot } from '../plan/planter.js';
import { CORNER_SIGHTS } from './corner/corner-sight.js';
import { drawCorner } from './corner/corner-view.js';
import type { CornerView, Drawing, SquareView, View } from './strokes.js';
import { areaSeen, drawView, type ViewInput } from './view.js';

/** All views, the square ones first; the corner views in the order of quarter turns. */
export const SQUARE_VIEWS: readonly SquareView[] = ['front', 'end', 'above'];
export const CORNER_VIEWS: readonly CornerView[] = [
  'corner-right',
  'corner-back-right',
  'corner-back-left',
  'corner-left',
];
export const VIEWS: readonly View[] = [...SQUARE_VIEWS, ...CORNER_VIEWS];

export function isCorner(view: View): view is CornerView {
  return view in CORNER_SIGHTS;
}

export type DrawInput = {
  readonly model: Model;
  readonly display: Display;
  /** Ids of the parts that are being added. */
  readonly bright: ReadonlySet<string>;
  /** Ids of the parts that stand there already; parts in neither set are not drawn. */
  readonly standing: ReadonlySet<string>;
  /** Pots that are set in. */
  readonly pots?: readonly StandingPot[];
  /** Which figures matter; the whole where nothing is added. */
  readonly figures?: ViewInput['dimensions'];
  /** What boards are called, by part id. */
  readonly names?: ReadonlyMap<string, string>;
};

/** Some boards from any side or corner, with the figures that belong there. */
export function draw(input: DrawInput, view: View): Drawing {
  const { model, display, bright, standing } = input;
  if (!isCorner(view)) {
    const dimensions = bright.size > 0 ? (input.figures ?? 'added') : 'overall';
    return drawView({ ...input, view, dimensions });
  }
  const placed = model.parts
    .filter(({ id }) => bright.has(id) || standing.has(id))
    .map(part => ({ part, bright: bright.has(part.id) }));
  const { names } = input;
  return drawCorner({ view, placed, display, wall: true, ...(names ? { names } : {}) });
}

/** The side from which most is seen of what is being added; the first of those where it is the same. */
export function fullestSide(input: DrawInput): SquareView {
  const rated = SQUARE_VIEWS.map(view => ({ view, area: areaSeen(input, view) }));
  return rated.reduce((best, one) => (one.area > best.area ? one : best)).view;
}
