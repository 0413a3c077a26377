import { boxRound } from './sight.js';
import type { Drawing, PaperPoint } from './strokes.js';

/** A drawing moved so that the lower left corner of some points becomes its origin, and as large as they are. */
export function toOrigin(drawing: Drawing, round: readonly PaperPoint[]): Drawing {
  const paper = boxRound(round);
  const move = ({ u, v }: PaperPoint) => ({ u: u - paper.u.from, v: v - paper.v.from });
  return {
    ...drawing,
    width: paper.u.to - paper.u.from,
    height: paper.v.to - paper.v.from,
    strokes: drawing.strokes.map(it => ({ ...it, from: move(it.from), to: move(it.to) })),
    patches: drawing.patches.map(it => ({ ...it, corners: it.corners.map(move) })),
    marks: drawing.marks.map(it => ({ ...it, on: move(it.on) })),
    arrows: drawing.arrows.map(it => ({ ...it, from: move(it.from), to: move(it.to) })),
    labels: drawing.labels.map(it => ({ ...it, at: move(it.at) })),
    rings: drawing.rings.map(it => ({ ...it, at: move(it.at) })),
  };
}
