import { againFrom } from '../../../plan/cut-step-now.js';
import { hanging } from '../../../text/page-lines.js';
import { textWidth } from '../../../text/width.js';
import { cut } from '../../../text/wrap.js';
import { toCutAgain } from '../../../workbook/to-cut-again.js';
import { benchOf } from '../../bench-of.js';
import { plainer } from '../../widgets/facts.js';
import { plainRows, type Row } from '../../widgets/rows.js';
import { measuredRows } from './measured-rows.js';
import { settingRows } from './setting-rows.js';
import type { Work } from './work-rows.js';

/**
 * A few settings come before what to do; many are for looking up, and come after it. Which board to take is
 * wanted at every piece, and comes first however long it is.
 */
const FEW_SETTINGS = 4;

type NoteStyle = { readonly columns: number; readonly shortNotes: boolean };

/** What is told at a step: settings, pieces to cut again, what the tape said, notes left, what to do. */
export function toldBlocks(work: Work, style: NoteStyle): readonly (readonly Row[])[] {
  const { columns } = style;
  const settings = settingRows(work, columns);
  const said = [againRows(work, columns), noteRows(work, style), sayRows(work, columns)];
  const tape = measuredRows(work, columns);
  const isFirst = settings.length <= FEW_SETTINGS || isOfBoards(work);
  return isFirst ? [settings, ...said, tape] : [...said, settings, tape];
}

function isOfBoards({ step }: Work): boolean {
  return step.settings.some(({ boards }) => boards === true);
}

/** Pieces that were spoiled here and are not cut again yet, and what the new ones come from as the boards are now. */
export function againRows({ step, build, at }: Work, columns: number): readonly Row[] {
  const marks = toCutAgain(step, build.progress).map(({ mark }) => mark);
  return [...new Set(marks)].flatMap((mark): readonly Row[] => {
    const count = marks.filter(it => it === mark).length;
    const words = againFrom({ mark, count }, step, benchOf(build));
    return hanging('Again: ', plainer(at.ascii)(words), columns).map(
      (text): Row => ({ text, tone: 'strong' }),
    );
  });
}

function sayRows({ step, at }: Work, columns: number): readonly Row[] {
  return plainRows(step.say.flatMap(item => hanging('- ', plainer(at.ascii)(item), columns)));
}

/** Notes about this step; as one row where they would take the room of figures. */
function noteRows(work: Work, { columns, shortNotes }: NoteStyle): readonly Row[] {
  const plain = plainer(work.at.ascii);
  const notes = notesOf(work);
  const whole = notesWhole(work, columns);
  const last = notes.at(-1);
  if (!shortNotes || whole.length < 2 || last === undefined) return whole;
  const end = notes.length === 1 ? '  (n: all of it)' : `  (n: all ${notes.length})`;
  const text = cut(`Note: ${plain(last.text)}`, columns - textWidth(end));
  return [{ text: `${text}${end}` }];
}

/** Notes about this step, every word of them. */
export function notesWhole(work: Work, columns: number): readonly Row[] {
  const plain = plainer(work.at.ascii);
  return notesOf(work).flatMap(({ text }) => plainRows(hanging('Note: ', plain(text), columns)));
}

/** What was noted about a step, at work and at pauses, the oldest first. */
export function notesOf({ step, build }: Pick<Work, 'step' | 'build'>): Notes {
  return build.progress.notes.filter(note => note.step === step.id);
}

type Notes = Work['build']['progress']['notes'];
