import { bestSight, type Frame, pictureOf, type SetPicture } from '../../pictures.js';
import type { Row } from '../../widgets/rows.js';
import { subjectOf } from './subject.js';
import type { Work } from './work-rows.js';

/** What is read keeps this much; a picture beside it wants at least the other. */
const TEXT_COLUMNS = 76;
const LEAST_COLUMNS = 36;
/** Where the picture begins. */
export const BESIDE = TEXT_COLUMNS + 2;
/** The heading of what is read, and a blank row. */
const HEAD_ROWS = 2;

/** The picture of a step beside the words for the helper, in a window that is wide enough. */
export function pictureBeside(work: Work): SetPicture | undefined {
  const { size, ascii } = work.at;
  const columns = size.columns - BESIDE;
  if (columns < LEAST_COLUMNS) return undefined;
  return pictureIn(work, { columns, rows: size.rows - HEAD_ROWS, ascii });
}

/** The same as rows below the words, in a narrower one; told in one sentence to those who listen. */
export function pictureBelow(work: Work): readonly Row[] {
  if (pictureBeside(work) !== undefined) return [];
  const { size, ascii } = work.at;
  const columns = Math.min(TEXT_COLUMNS, size.columns);
  const rows = Math.max(1, size.rows - HEAD_ROWS - 1);
  const picture = pictureIn(work, { columns, rows, ascii });
  if (picture === undefined) return [];
  const lines = picture.lines.map(
    ({ text }, number): Row => ({ text, told: number === 0 ? picture.inWords : '' }),
  );
  return [{ text: `${picture.title}   (v: larger, and turned)`, tone: 'strong' }, ...lines];
}

function pictureIn({ step, build }: Work, frame: Frame): SetPicture | undefined {
  if (step.bright.length === 0) return undefined;
  const subject = subjectOf(step, build.plan);
  return pictureOf(subject, bestSight(subject, frame), frame);
}
