import { againFrom } from '../../../plan/cut-step-now.js';
import { hanging } from '../../../text/page-lines.js';
import { toCutAgain } from '../../../workbook/to-cut-again.js';
import { benchOf } from '../../bench-of.js';
import { plainer } from '../../widgets/facts.js';
import { plainRows, type Row } from '../../widgets/rows.js';
import { measuredRows } from './measured-rows.js';
import { settingRows } from './setting-rows.js';
import type { Work } from './work-rows.js';

/** A few settings come before what to do; many are for looking up, and come after it. */
const FEW_SETTINGS = 4;

/** What is told at a step: settings, pieces to cut again, what the tape said, notes left, what to do. */
export function toldBlocks(work: Work, columns: number): readonly (readonly Row[])[] {
  const settings = settingRows(work, columns);
  const said = [
    againRows(work, columns),
    noteRows(work, columns),
    sayRows(work, columns),
    measuredRows(work, columns),
  ];
  return settings.length <= FEW_SETTINGS ? [settings, ...said] : [...said, settings];
}

/** Pieces that were spoiled here and are not cut again yet, and what the new ones come from as the boards are now. */
function againRows({ step, build, at }: Work, columns: number): readonly Row[] {
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

function noteRows({ step, build, at }: Work, columns: number): readonly Row[] {
  return build.progress.notes
    .filter(note => note.step === step.id)
    .flatMap(({ text }) => plainRows(hanging('Note: ', plainer(at.ascii)(text), columns)));
}
