import { bestSight, type Frame, pictureOf, type SetPicture } from '../../pictures.js';
import { limitTop, type ScrollRoom } from '../../widgets/scroll.js';
import { isLarge } from './figure-rows.js';
import { subjectOf } from './subject.js';
import { type Style, type Work, type WorkRows, workRows } from './work-rows.js';

/** Where text and picture of a step go. */
export type WorkLayout = WorkRows & {
  readonly columns: number;
  /** Rows that the body has. */
  readonly height: number;
  readonly picture?: { readonly where: 'beside' | 'below'; readonly set: SetPicture };
};

const LEAST_TEXT = 44;
const LEAST_PICTURE = { columns: 30, rows: 8 };
const GAP = 2;
/** Share of the width that the text keeps beside a picture. */
const TEXT_SHARE = 0.55;

/**
 * The first of these that fits whole: picture beside the text, picture below it, text alone; each
 * with air and with large figures as long as there is room. Where not even the text fits, it scrolls.
 */
export function layOutWork(work: Work): WorkLayout {
  return beside(work) ?? below(work) ?? alone(work);
}

export type WorkRoom = ScrollRoom & { readonly top: number };

/** How far the body of a step scrolls, and where it stands by itself. */
export function workRoom(work: Work): WorkRoom {
  return roomOf(layOutWork(work));
}

/** The same for a step that is laid out already. */
export function roomOf({ body, height, focus }: WorkLayout): WorkRoom {
  const room = { count: body.length, height };
  return { ...room, top: limitTop(focus < height ? 0 : focus - height + 2, room) };
}

function beside(work: Work): WorkLayout | undefined {
  const { columns: all } = work.at.size;
  const columns = Math.max(LEAST_TEXT, Math.floor(all * TEXT_SHARE));
  const room = all - columns - GAP;
  if (work.step.bright.length === 0 || room < LEAST_PICTURE.columns) return undefined;
  if (isLarge(work.step.big, all) && !isLarge(work.step.big, columns)) return undefined;
  const text = firstFitted(work, [ROOMY, TIGHT, SHORT], columns);
  if (text === undefined || text.height < LEAST_PICTURE.rows) return undefined;
  const frame = { columns: room, rows: text.height, ascii: work.at.ascii };
  return { ...text, picture: { where: 'beside', set: pictureIn(work, frame) } };
}

function below(work: Work): WorkLayout | undefined {
  const { columns } = work.at.size;
  const text = firstFitted(work, [TIGHT, SHORT], columns);
  if (work.step.bright.length === 0 || text === undefined) return undefined;
  const rows = text.height - text.body.length - 1;
  if (rows < LEAST_PICTURE.rows) return undefined;
  const set = pictureIn(work, { columns, rows, ascii: work.at.ascii });
  return { ...text, picture: { where: 'below', set } };
}

function alone(work: Work): WorkLayout {
  const { columns } = work.at.size;
  const text = firstFitted(work, [ROOMY, TIGHT, SHORT, SMALL], columns);
  return text ?? laidOut(work, { ...SMALL, columns, roomy: false });
}

type Manner = Omit<Style, 'columns'>;

const ROOMY: Manner = { large: true, roomy: true, shortNotes: false };
const TIGHT: Manner = { ...ROOMY, roomy: false };
/** Figures to set a stop by matter more than what was noted. */
const SHORT: Manner = { ...TIGHT, shortNotes: true };
const SMALL: Manner = { ...ROOMY, large: false };

/** The first of these manners in which the layout is not too high. */
function firstFitted(
  work: Work,
  manners: readonly Manner[],
  columns: number,
): WorkLayout | undefined {
  for (const manner of manners) {
    const layout = laidOut(work, { ...manner, columns });
    if (layout.body.length <= layout.height) return layout;
  }
  return undefined;
}

function laidOut(work: Work, style: Style): WorkLayout {
  const rows = workRows(work, style);
  const height = Math.max(1, work.at.size.rows - rows.head.length - rows.foot.length);
  return { ...rows, columns: style.columns, height };
}

function pictureIn({ step, build }: Work, frame: Frame): SetPicture {
  const subject = subjectOf(step, build.plan);
  return pictureOf(subject, bestSight(subject, frame), frame);
}
