import { bounds } from '../../model/box.js';
import type { Box, Point } from '../../model/part.js';
import { type Eye, onPaper } from './corner-sight.js';
import { spansInSight } from './in-sight.js';
import { type Along, joinLines } from './join-lines.js';
import { overlap, type Seen, seenBox } from './seen-box.js';
import { type Edge, solidEdges } from './solid-edges.js';

/** All wood that may hide something, and from where it is seen. */
export type Scene = { readonly seen: readonly Seen[]; readonly eye: Eye };

export function sceneOf(solids: readonly Box[], eye: Eye): Scene {
  return { seen: solids.map(box => seenBox(box, eye)), eye };
}

/** What may hide something of a box, the box itself too. */
export function nearTo(box: Box, { seen, eye }: Scene): readonly Seen[] {
  const on = seenBox(box, eye);
  return seen.filter(one => overlap(on, one));
}

/** The stretches of a board's edges that are seen. */
export function edgesOf(
  solid: readonly Box[],
  bright: boolean,
  { seen, eye }: Scene,
): readonly Along[] {
  const whole = bounds(solid);
  if (whole === undefined) return [];
  const around = nearTo(whole, { seen, eye });
  return solidEdges(solid).flatMap(edge => {
    const on = seenBox({ min: edge.from, max: alongBy(edge, edge.length) }, eye);
    const near = around.filter(one => overlap(on, one)).map(({ box }) => box);
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

/** A board as it would be seen alone, dashed. */
export function hiddenOutline(solid: readonly Box[], eye: Eye) {
  const alone = edgesOf(solid, true, sceneOf(solid, eye));
  return joinLines(alone).map(stroke => ({ ...stroke, kind: 'hidden' as const }));
}
