import type { Mm } from '../measure/quantities.js';
import { fromUnits, toUnits } from '../measure/round.js';
import type { BoughtBoard } from './plan.js';

type Saw = { readonly kerf: Mm; readonly trim: Mm };

type Cut = Omit<BoughtBoard, 'offcut' | 'slack'>;

/** A board with what is left over behind its last cut, and how far in the first cut may start. */
export function cutBoard(board: Cut, saw: Saw): BoughtBoard {
  const free = Math.max(0, freeOn(board, saw));
  const blade = toUnits(saw.kerf, 'up');
  return { ...board, slack: fromUnits(free), offcut: fromUnits(Math.max(0, free - blade)) };
}

/** Whether all these pieces come out of the board, the last one flush with its end at most. */
export function holdsItsCuts(board: Pick<Cut, 'length' | 'cuts'>, saw: Saw): boolean {
  return freeOn(board, saw) >= 0;
}

/** In whole units of 1/320 mm, rounded so that nothing fits on paper that does not fit on the saw. */
function freeOn({ length, cuts }: Pick<Cut, 'length' | 'cuts'>, { kerf, trim }: Saw): number {
  const blade = toUnits(kerf, 'up');
  const usable = toUnits(length, 'down') - toUnits(trim + kerf, 'up');
  return usable - cuts.reduce((sum, cut) => sum + toUnits(cut.length, 'up') + blade, -blade);
}
