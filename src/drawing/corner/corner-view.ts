import type { Display } from '../../measure/quantities.js';
import { bounds } from '../../model/box.js';
import { type LiftedPot, potFromCorner, potInWords, wayOfPot } from '../pots.js';
import { BLANK, type CornerView, type Drawing } from '../strokes.js';
import { toOrigin } from '../to-origin.js';
import { besideShape, type Seen } from './behind-shape.js';
import { arrowOf, towardWall, type Way } from './corner-arrows.js';
import { marksOfDashed, marksOn } from './corner-marks.js';
import { CORNER_SIGHTS } from './corner-sight.js';
import { cornerInWords } from './corner-words.js';
import { type Placed, woodInSight } from './wood-in-sight.js';

export type CornerInput = {
  readonly view: CornerView;
  readonly placed: readonly Placed[];
  readonly display: Display;
  readonly ways?: readonly Way[];
  /** What boards are called, by part id: each name is written once. */
  readonly names?: ReadonlyMap<string, string>;
  /** Shows which way the wall is. */
  readonly wall?: boolean;
  /** Pots that are set in, drawn over their places. */
  readonly pots?: readonly LiftedPot[];
  /** Bright boards that cannot be seen at all are dashed, unless it is said not to. */
  readonly dashes?: boolean;
};

/**
 * Boards from a corner above, hidden lines removed, in mm, the lower left corner at the origin. Bright
 * boards are filled where they are seen; those that cannot be seen at all get a dashed outline.
 */
export function drawCorner(input: CornerInput): Drawing {
  const { view, placed, display, ways = [], names = new Map(), wall = false } = input;
  const { dashes = true, pots: lifted = [] } = input;
  const { title, eye } = CORNER_SIGHTS[view];
  // Sizes are those of the piece put together.
  const all = bounds(placed.flatMap(({ part }) => part.solid));
  if (all === undefined) {
    return { ...BLANK, square: false, title, inWords: `${title}: no board stands here yet.` };
  }
  const wood = woodInSight(placed, eye, dashes);
  const pots = lifted.map(pot => potFromCorner(pot, eye));
  const { strokes, patches } = pots.reduce<Seen>(
    (seen, { covers }) => besideShape(seen, covers),
    wood,
  );
  const added = placed.filter(({ bright }) => bright);
  const toWall = wall ? [towardWall(all, eye)] : [];
  const drawn: Drawing = {
    ...BLANK,
    square: false,
    title,
    strokes: [...strokes, ...pots.flatMap(pot => pot.strokes)],
    labels: pots.flatMap(({ labels }) => labels),
    patches,
    marks: [...marksOn(patches, names), ...marksOfDashed(wood.dashed, names)],
    arrows: [...[...ways, ...lifted.map(wayOfPot)].map(way => arrowOf(way, eye)), ...toWall],
    inWords: [
      cornerInWords(
        {
          title,
          all,
          added: added.map(({ part }) => part),
          standing: placed.length - added.length,
          behind: wood.behind,
        },
        display,
      ),
      ...lifted.map(({ pot }) => potInWords(pot, display)),
    ].join(' '),
  };
  return toOrigin(drawn, [
    ...wood.outlines,
    ...toWall.flatMap(({ from, to }) => [from, to]),
    ...pots.flatMap(pot => pot.strokes.map(({ from }) => from)),
  ]);
}
