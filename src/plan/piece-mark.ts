import type { CutStep, WorkSoFar } from './work-so-far.js';
import { goodPieces, marksInOrder } from './work-so-far.js';

/**
 * What is written on the piece that is cut next at a step: `D6`. Numbers run through all pieces of a mark;
 * undefined once all are cut.
 */
export function nextMark(cutting: CutStep, work: WorkSoFar): string | undefined {
  const marks = marksInOrder(cutting, work);
  const at = goodPieces(cutting, work);
  const mark = marks[at];
  if (mark === undefined) return undefined;
  const before = marks.slice(0, at).filter(it => it === mark).length;
  const own = cutting.step.bright.filter((_, place) => cutting.rows[place]?.mark === mark);
  const row = cutting.rows.find(it => it.mark === mark);
  const number = row === undefined ? -1 : row.pieces.indexOf(own[before] ?? '');
  return `${mark}${number + 1}`;
}
