import type { Caution } from '../../../plan/plan.js';
import { hanging } from '../../../text/page-lines.js';
import { wrap } from '../../../text/wrap.js';
import { plainer } from '../../widgets/facts.js';
import { BLANK, plainRows, type Row } from '../../widgets/rows.js';
import type { ScrollRoom } from '../../widgets/scroll.js';
import { cautionsOf } from './briefing-pages.js';
import { pictureBelow } from './helper-picture.js';
import { helperRows } from './helper-rows.js';
import type { ReadingKind } from './state.js';
import { allWordRows } from './word-rows.js';
import type { Work } from './work-rows.js';

/** Wider lines are hard to follow, however wide the window. */
const WIDEST = 76;

const FIRST = "The tool's manual, the label, your local code and licensed practice come first.";

/** What is read over a step, as rows. */
export function readingRows(kind: ReadingKind, work: Work): readonly Row[] {
  const columns = Math.min(WIDEST, work.at.size.columns);
  switch (kind) {
    case 'why':
      return whyRows(work, columns);
    case 'cautions':
      return allCautions(work, columns);
    case 'helper':
      return withPicture(helperRows(work, columns), work);
    case 'words':
      return allWordRows(work, columns);
  }
}

function withPicture(rows: readonly Row[], work: Work): readonly Row[] {
  const picture = pictureBelow(work);
  return picture.length === 0 ? rows : [...rows, BLANK, ...picture];
}

/** The heading stands above what scrolls. */
export function readingRoom(kind: ReadingKind, work: Work): ScrollRoom {
  return { count: readingRows(kind, work).length, height: Math.max(1, work.at.size.rows - 2) };
}

function whyRows({ step, at }: Work, columns: number): readonly Row[] {
  const plain = plainer(at.ascii);
  const why = step.why === '' ? 'Nothing is noted for this step.' : plain(step.why);
  const because = `About ${Math.round(step.minutes.value)} min of work: ${plain(step.minutes.because)}.`;
  const waits = step.timers.map(({ name, because: rule }) => plain(`${name}: ${rule}.`));
  return [why, because, ...waits].flatMap((text, number) => [
    ...(number === 0 ? [] : [BLANK]),
    ...plainRows(wrap(text, columns)),
  ]);
}

/** What comes before them, and each source, are named once at the end. */
function allCautions(work: Work, columns: number): readonly Row[] {
  const cautions = cautionsOf(work.step, work.build);
  if (cautions.length === 0) {
    return plainRows(wrap(`No caution of ours belongs to this step. ${FIRST}`, columns));
  }
  const style = { columns, ascii: work.at.ascii, roomy: false };
  const sources = [...new Set(cautions.map(({ source }) => source))];
  return [
    ...cautions.flatMap(caution => [...cautionRows(caution, style), BLANK]),
    ...plainRows(wrap(FIRST, columns)),
    ...sources.flatMap(source =>
      plainRows(hanging('From: ', plainer(style.ascii)(source), columns)),
    ),
  ];
}

type CautionStyle = {
  readonly columns: number;
  readonly ascii: boolean;
  readonly roomy: boolean;
};

const FIRST_ALOUD = 'Manual, label, local code, licensed practice come first. (c: where from)';

/** Cautions as they are read aloud, one below the other; nobody reads sources aloud. */
export function toldRows(cautions: readonly Caution[], style: CautionStyle): readonly Row[] {
  return [
    ...cautions.flatMap(caution => [...cautionRows(caution, style), BLANK]),
    ...plainRows(wrap(FIRST_ALOUD, style.columns)),
  ];
}

function cautionRows(caution: Caution, style: CautionStyle): readonly Row[] {
  const { columns, ascii, roomy } = style;
  const plain = plainer(ascii);
  const lines = caution.lines.flatMap((line, number) => [
    ...(roomy && number > 0 ? [BLANK] : []),
    ...plainRows(hanging('- ', plain(line), columns)),
  ]);
  return [{ text: plain(caution.title), tone: 'heed' }, ...(roomy ? [BLANK] : []), ...lines];
}
