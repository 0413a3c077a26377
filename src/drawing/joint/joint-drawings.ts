import { lengthKey } from '../../measure/tolerance.js';
import { boardSize } from '../../model/frame-of-board.js';
import type { Part } from '../../model/part.js';
import type { CutRow, FastenerRow, Plan, ScrewSpots } from '../../plan/plan.js';
import type { Drawing } from '../strokes.js';
import { drawJoint } from './joint-sheet.js';
import { lyingPiece } from './lying.js';
import { drawScrews } from './screw-sheet.js';
import { drawTemplate } from './template.js';

/** A sheet for the bench: what of the plan it shows (a mark, a use, a row), and how it is drawn. */
export type JointDrawing = { readonly key: string; readonly draw: () => Drawing };

/** Where the screws between two parts go. */
export type ScrewDrawing = JointDrawing & Pick<ScrewSpots, 'from' | 'into'>;

type Notched = { readonly row: CutRow; readonly part: Part };

/** Each mark of the cut list that has notches. */
function notched({ cutList, model }: Plan): readonly Notched[] {
  const partById = new Map(model.parts.map(part => [part.id, part]));
  return cutList.flatMap(row => {
    const part = partById.get(row.pieces[0] ?? '');
    return part === undefined || part.notches.length === 0 ? [] : [{ row, part }];
  });
}

/** A sheet for each different piece with notches. */
export function jointDrawings(plan: Plan): readonly JointDrawing[] {
  return notched(plan).map(({ row, part }) => {
    const named = plan.notches.filter(({ mark }) => mark === row.mark).map(({ name }) => name);
    return {
      key: row.mark,
      draw: () => drawJoint({ row, part, named, display: plan.display }),
    };
  });
}

/** A template for each different notch, whatever the lengths of the pieces that get it. */
export function templateDrawings(plan: Plan): readonly JointDrawing[] {
  const alike = new Map<string, Notched[]>();
  for (const one of notched(plan)) {
    const key = shapeOf(one.part);
    alike.set(key, [...(alike.get(key) ?? []), one]);
  }
  return [...alike.values()].flatMap(([first, ...others]) => {
    if (first === undefined) return [];
    const marks = [first, ...others].map(({ row }) => row.mark);
    return {
      key: marks.join('-'),
      draw: () =>
        drawTemplate({ marks: marks.join(', '), part: first.part, display: plan.display }),
    };
  });
}

function shapeOf(part: Part): string {
  const { across, through } = boardSize(part);
  const [first] = lyingPiece(part).waste;
  const spans = first === undefined ? [] : [first.along, first.across, first.through];
  const sizes = [across, through, ...spans.flatMap(({ from, to }) => [from, to])];
  return sizes.map(lengthKey).join();
}

/** Where the screws go on both parts, for each different overlap of each joint. */
export function screwDrawings(plan: Plan): readonly ScrewDrawing[] {
  const partById = new Map(plan.model.parts.map(part => [part.id, part]));
  const markById = new Map(plan.cutList.flatMap(row => row.pieces.map(id => [id, row.mark])));
  return plan.screws.flatMap((row: FastenerRow) =>
    row.spots.flatMap((spots, at) => {
      const [from, into] = [partById.get(spots.from), partById.get(spots.into)];
      if (from === undefined || into === undefined) return [];
      const marks = {
        from: markById.get(spots.from) ?? '',
        into: markById.get(spots.into) ?? '',
      };
      return {
        key: `${row.id} ${at + 1}`,
        from: spots.from,
        into: spots.into,
        draw: () => drawScrews({ row, spots, from, into, marks, display: plan.display }),
      };
    }),
  );
}
