import { formatLength } from '../measure/format-length.js';
import type { Display, Mm } from '../measure/quantities.js';
import { listWords } from '../text/list.js';
import type { NamedBoard } from './boards-named.js';
import { heldByClamps, type Row, TO_HOLD } from './cutting-order.js';
import type { StepSetting } from './plan.js';

/** A board of a stop as it is called there, its pieces in the order of sawing, and what is left behind them. */
export type HeldBoard = NamedBoard & {
  readonly cuts: readonly { readonly mark: string; readonly length: Mm }[];
  readonly left: Mm;
};

/** What has to be clamped at a stop for these marks, since neither the piece nor the rest is long enough to be held. */
export function holdLines(
  boards: readonly HeldBoard[],
  marks: ReadonlySet<string>,
  { kerf, display }: { readonly kerf: Mm; readonly display: Display },
): readonly StepSetting[] {
  const told = boards.flatMap(board => {
    const count = heldByClamps(board satisfies Row, kerf).filter(at =>
      marks.has(board.cuts[at]?.mark ?? ''),
    ).length;
    const where = board.name === '' ? '' : ` on ${board.name}`;
    return count === 0 ? [] : [`the last ${count === 1 ? 'piece' : `${count} pieces`}${where}`];
  });
  if (told.length === 0) return [];
  const hold = formatLength(TO_HOLD, display);
  const text = `${listWords(told)}: under ${hold} is left to hold`;
  return [{ name: 'Clamp', text, boards: true }];
}
