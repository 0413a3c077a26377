import { textWidth } from '../text/width.js';
import type { KeyHint } from './screen.js';

const GAP = 3;
const TIGHT = 2;

/** Cells that `[enter] done` takes. */
function hintWidth({ key, does }: KeyHint): number {
  return textWidth(key) + textWidth(does) + 3;
}

/**
 * The keys that work now, in at most two rows. Where two rows do not hold them the gaps close up, and
 * then the last ones, which are the least needed, are left to the page of keys.
 */
export function hintRows(
  hints: readonly KeyHint[],
  width: number,
): readonly (readonly KeyHint[])[] {
  const roomy = flowed(hints, width, GAP);
  return roomy.length <= 2 ? roomy : flowed(hints, width, TIGHT).slice(0, 2);
}

function flowed(hints: readonly KeyHint[], width: number, gap: number): KeyHint[][] {
  const rows: KeyHint[][] = [];
  let used = width;
  for (const hint of hints) {
    const row = rows.at(-1);
    const wider = used + gap + hintWidth(hint);
    if (row === undefined || wider > width) {
      rows.push([hint]);
      used = hintWidth(hint);
    } else {
      row.push(hint);
      used = wider;
    }
  }
  return rows;
}
