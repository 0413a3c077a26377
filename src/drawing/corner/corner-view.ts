import type { Display } from '../../measure/quantities.js';
import { bounds } from '../../model/box.js';
import type { Box, Part, Point } from '../../model/part.js';
import { BLANK, type CornerView, type Drawing, type Patch } from '../strokes.js';
import { toOrigin } from '../to-origin.js';
import { arrowOf, towardWall, type Way } from './corner-arrows.js';
import { edgesOf, hiddenOutline, nearTo, sceneOf } from './corner-edges.js';
import { marksOn } from './corner-marks.js';
import { CORNER_SIGHTS, type Eye } from './corner-sight.js';
import { cornerInWords } from './corner-words.js';
import { facesInSight } from './faces.js';
import { joinLines } from './join-lines.js';
import type { Wood } from './seen-box.js';

/** A board and how far from its place it is drawn, in views that pull a piece apart. */
export type Placed = { readonly part: Part; readonly bright: boolean; readonly moved?: Point };

export type CornerInput = {
  readonly view: CornerView;
  readonly placed: readonly Placed[];
  readonly display: Display;
  readonly ways?: readonly Way[];
  /** What boards are called, by part id: each name is written once. */
  readonly names?: ReadonlyMap<string, string>;
  /** Shows which way the wall is. */
  readonly wall?: boolean;
  /** Bright boards that cannot be seen at all are dashed, unless it is said not to. */
  readonly dashes?: boolean;
};

/**
 * Boards from a corner above, hidden lines removed, in mm, the lower left corner at the origin. Bright
 * boards are filled where they are seen; those that cannot be seen at all get a dashed outline.
 */
export function drawCorner(input: CornerInput): Drawing {
  const { view, placed, display, ways = [], names = new Map(), wall = false } = input;
  const { dashes = true } = input;
  const { title, eye } = CORNER_SIGHTS[view];
  const moved = placed.map(one => ({ ...one, solid: movedSolid(one) }));
  // Sizes are those of the piece put together.
  const all = bounds(placed.flatMap(({ part }) => part.solid));
  if (all === undefined) {
    return { ...BLANK, square: false, title, inWords: `${title}: no board stands here yet.` };
  }
  const scene = sceneOf(
    moved.flatMap(({ solid }) => solid),
    eye,
  );
  const boards = moved.map(one => ({ ...one, near: nearTo(one.solid, scene) }));
  const edges = boards.map(({ solid, bright, near }) => edgesOf(solid, bright, { near, eye }));
  const behind = boards.filter((board, at) => board.bright && edges[at]?.length === 0);
  const added = boards.filter(({ bright }) => bright);
  const patches = added.flatMap(board => patchesOf(board, eye));
  const toWall = wall ? [towardWall(all, eye)] : [];
  const drawn: Drawing = {
    ...BLANK,
    square: false,
    title,
    strokes: [
      ...joinLines(edges.flat()),
      ...(dashes ? behind.flatMap(({ solid }) => hiddenOutline(solid, eye)) : []),
    ],
    patches,
    marks: marksOn(patches, names),
    arrows: [...ways.map(way => arrowOf(way, eye)), ...toWall],
    inWords: cornerInWords(
      {
        title,
        all,
        added: added.map(({ part }) => part),
        standing: boards.length - added.length,
        behind: behind.length,
      },
      display,
    ),
  };
  return toOrigin(drawn, [
    ...scene.seen.flatMap(({ outline }) => outline),
    ...toWall.flatMap(({ from, to }) => [from, to]),
  ]);
}

type Board = {
  readonly part: Part;
  readonly solid: readonly Box[];
  readonly near: readonly Wood[];
};

function patchesOf({ part, solid, near }: Board, eye: Eye): readonly Patch[] {
  return solid.flatMap(box =>
    facesInSight(box, near, eye).map(corners => ({
      part: part.id,
      corners,
      look: 'added',
      lean: 'right',
    })),
  );
}

/** Where the wood of a board is drawn. */
function movedSolid({ part, moved = NOWHERE }: Placed): readonly Box[] {
  const by = ({ x, y, z }: Point) => ({ x: x + moved.x, y: y + moved.y, z: z + moved.z });
  return part.solid.map(({ min, max }) => ({ min: by(min), max: by(max) }));
}

const NOWHERE: Point = { x: 0, y: 0, z: 0 };
