import { cut } from '../../../text/wrap.js';
import { plainer } from '../../widgets/facts.js';
import { BLANK, type Row, withFoot } from '../../widgets/rows.js';
import { moveRow } from './move-words.js';
import type { Move } from './next-move.js';
import { cautionRows } from './reading.js';
import type { Work } from './work-rows.js';

const WIDEST = 76;

/** A caution to be read aloud before the first work of its kind, as high as the screen. */
export function briefingRows(
  move: Extract<Move, { readonly kind: 'brief' }>,
  { step, at }: Work,
): readonly Row[] {
  const { rows } = at.size;
  const columns = Math.min(WIDEST, at.size.columns);
  const head: readonly Row[] = [
    { text: cut(plainer(at.ascii)(`Before: ${step.title}`), columns) },
    {
      text: `The lead reads this aloud, the helper says it back. ${move.number} of ${move.of}`,
      tone: 'strong',
    },
    BLANK,
  ];
  const foot = moveRow(move, at);
  const room = rows - head.length - 1;
  const styles = [true, false].map(roomy =>
    cautionRows(move.caution, { columns, ascii: at.ascii, roomy }),
  );
  const body = styles.find(it => it.length < room) ?? styles.at(-1) ?? [];
  return withFoot([...head, ...body], [foot], rows);
}
