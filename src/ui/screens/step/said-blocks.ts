import { hanging } from '../../../text/page-lines.js';
import { toCutAgain } from '../../../workbook/to-cut-again.js';
import { plainer } from '../../widgets/facts.js';
import { plainRows, type Row } from '../../widgets/rows.js';
import { measuredRows } from './measured-rows.js';
import type { Work } from './work-rows.js';

/** What is told at a step: pieces to cut again, notes left, what to do, what the tape said. */
export function saidBlocks(work: Work, columns: number): readonly (readonly Row[])[] {
  return [
    againRows(work, columns),
    noteRows(work, columns),
    sayRows(work, columns),
    measuredRows(work, columns),
  ];
}

/** Pieces that were spoiled here and are not cut again yet, and what the new ones come from. */
function againRows({ step, build, at }: Work, columns: number): readonly Row[] {
  return toCutAgain(step, build.progress).flatMap(({ mark, then }): readonly Row[] =>
    hanging('Again: ', plainer(at.ascii)(`1 x ${mark}. ${then}`), columns).map(
      (text): Row => ({ text, tone: 'strong' }),
    ),
  );
}

function sayRows({ step, at }: Work, columns: number): readonly Row[] {
  return plainRows(step.say.flatMap(item => hanging('- ', plainer(at.ascii)(item), columns)));
}

function noteRows({ step, build, at }: Work, columns: number): readonly Row[] {
  return build.progress.notes
    .filter(note => note.step === step.id)
    .flatMap(({ text }) => plainRows(hanging('Note: ', plainer(at.ascii)(text), columns)));
}
