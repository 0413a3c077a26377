import { bounds, center } from '../../model/box.js';
import type { Box, Part, Point } from '../../model/part.js';
import { partKind } from '../added-kinds.js';
import type { PaperPoint, Patch, Stroke } from '../strokes.js';
import { edgesOf, hiddenOutline, nearTo, sceneOf } from './corner-edges.js';
import { type Eye, onPaper } from './corner-sight.js';
import { facesInSight } from './faces.js';
import { joinLines } from './join-lines.js';
import type { Wood } from './seen-box.js';

/** A board and how far from its place it is drawn, in views that pull a piece apart. */
export type Placed = { readonly part: Part; readonly bright: boolean; readonly moved?: Point };

export type WoodInSight = {
  readonly strokes: readonly Stroke[];
  readonly patches: readonly Patch[];
  /** How many of the bright boards nothing is seen of. */
  readonly behind: number;
  /** The dashed boards among them, and where their middles are. */
  readonly dashed: readonly { readonly part: string; readonly middle: PaperPoint }[];
  /** Corners of every box on the paper, seen or not. */
  readonly outlines: readonly PaperPoint[];
};

/**
 * What is seen of boards from a corner. Where nothing is seen of any bright board of a kind, those of the
 * kind are dashed, if that is asked for: where one is seen, it tells enough.
 */
export function woodInSight(placed: readonly Placed[], eye: Eye, dashes: boolean): WoodInSight {
  const moved = placed.map(one => ({ ...one, solid: movedSolid(one) }));
  const scene = sceneOf(
    moved.flatMap(({ solid }) => solid),
    eye,
  );
  const boards = moved.map(one => ({ ...one, near: nearTo(one.solid, scene) }));
  const edges = boards.map(({ solid, bright, near }) => edgesOf(solid, bright, { near, eye }));
  const behind = boards.filter((board, at) => board.bright && edges[at]?.length === 0);
  const isSeen = new Set(
    boards.flatMap(({ part, bright }, at) =>
      bright && edges[at]?.length !== 0 ? [partKind(part)] : [],
    ),
  );
  const dashed = behind.filter(({ part }) => dashes && !isSeen.has(partKind(part)));
  return {
    strokes: [
      ...joinLines(edges.flat()),
      ...dashed.flatMap(({ solid }) => hiddenOutline(solid, eye)),
    ],
    patches: boards.flatMap(board => (board.bright ? patchesOf(board, eye) : [])),
    behind: behind.length,
    dashed: dashed.map(({ part, solid }) => ({ part: part.id, middle: middleOf(solid, eye) })),
    outlines: scene.seen.flatMap(({ outline }) => outline),
  };
}

function middleOf(solid: readonly Box[], eye: Eye): PaperPoint {
  const whole = bounds(solid);
  return whole === undefined ? { u: 0, v: 0 } : onPaper(center(whole), eye);
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
