import type { Display } from '../../measure/quantities.js';
import { bounds } from '../../model/box.js';
import type { Box, Part, Point } from '../../model/part.js';
import { BLANK, type CornerView, type Drawing, type Patch } from '../strokes.js';
import { toOrigin } from '../to-origin.js';
import { CORNER_SIGHTS, type Eye, onPaper } from './corner-sight.js';
import { cornerInWords } from './corner-words.js';
import { facesInSight, outlineOf } from './faces.js';
import { spansInSight } from './in-sight.js';
import { type Along, joinLines } from './join-lines.js';
import { overlap, type Seen, seenBox } from './seen-box.js';
import { type Edge, solidEdges } from './solid-edges.js';

/** A board and how far from its place it is drawn, in views that pull a piece apart. */
export type Placed = { readonly part: Part; readonly bright: boolean; readonly moved?: Point };

export type CornerInput = {
  readonly view: CornerView;
  readonly placed: readonly Placed[];
  readonly display: Display;
};

/**
 * Boards from a corner above, hidden lines removed, in mm, the lower left corner at the origin. Bright
 * boards are filled where they are seen; those that cannot be seen at all get a dashed outline.
 */
export function drawCorner({ view, placed, display }: CornerInput): Drawing {
  const { title, eye } = CORNER_SIGHTS[view];
  const boards = placed.map(one => ({ ...one, solid: movedSolid(one) }));
  const solids = boards.flatMap(({ solid }) => solid);
  const all = bounds(solids);
  if (all === undefined) {
    return { ...BLANK, square: false, title, inWords: `${title}: no board stands here yet.` };
  }
  const scene: Scene = { seen: solids.map(box => seenBox(box, eye)), eye };
  const edges = boards.map(({ solid, bright }) => edgesOf(solid, bright, scene));
  const behind = boards.filter((board, at) => board.bright && edges[at]?.length === 0);
  const added = boards.filter(({ bright }) => bright);
  const drawn = {
    ...BLANK,
    square: false,
    title,
    strokes: [
      ...joinLines(edges.flat()),
      ...behind.flatMap(({ solid }) => hiddenOutline(solid, eye)),
    ],
    patches: added.flatMap(({ part, solid }) => patchesOf(part.id, solid, scene)),
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
  return toOrigin(
    drawn,
    solids.flatMap(box => outlineOf(box, eye)),
  );
}

type Scene = { readonly seen: readonly Seen[]; readonly eye: Eye };

/** The stretches of a board's edges that are seen. */
function edgesOf(solid: readonly Box[], bright: boolean, { seen, eye }: Scene): readonly Along[] {
  return solidEdges(solid).flatMap(edge => {
    const on = seenBox({ min: edge.from, max: alongBy(edge, edge.length) }, eye);
    const near = seen.filter(one => overlap(on, one)).map(({ box }) => box);
    return spansInSight(edge, near, eye).map(({ from, to }) => ({
      axis: edge.axis,
      stroke: {
        from: onPaper(alongBy(edge, from), eye),
        to: onPaper(alongBy(edge, to), eye),
        kind: 'visible' as const,
        bright,
      },
    }));
  });
}

function alongBy({ from, axis }: Edge, by: number): Point {
  return { ...from, [axis]: from[axis] + by };
}

function patchesOf(part: string, solid: readonly Box[], { seen, eye }: Scene): readonly Patch[] {
  return solid.flatMap(box =>
    facesInSight(box, seen, eye).map(corners => ({ part, corners, look: 'added', lean: 'right' })),
  );
}

/** A board as it would be seen alone, dashed. */
function hiddenOutline(solid: readonly Box[], eye: Eye) {
  const alone = edgesOf(solid, true, { seen: solid.map(box => seenBox(box, eye)), eye });
  return joinLines(alone).map(stroke => ({ ...stroke, kind: 'hidden' as const }));
}

function movedSolid({ part, moved }: Placed): readonly Box[] {
  if (moved === undefined) return part.solid;
  const by = ({ x, y, z }: Point) => ({ x: x + moved.x, y: y + moved.y, z: z + moved.z });
  return part.solid.map(({ min, max }) => ({ min: by(min), max: by(max) }));
}
