import { textWidth } from '../text/width.js';
import type { KeyHint } from './screen.js';

const GAP = 3;
const TIGHT = 2;
const MOST_ROWS = 2;

/** Cells that `[enter] done` takes. */
function hintWidth({ key, does }: KeyHint): number {
  return textWidth(key) + textWidth(does) + 3;
}

/**
 * The keys that work now, in at most two rows; what is there always has the last one to itself. Where two rows
 * do not hold them the gaps close up, and then the last ones, which are the least needed, are left to the page
 * of keys.
 */
export function hintRows(
  hints: readonly KeyHint[],
  width: number,
): readonly (readonly KeyHint[])[] {
  const own = hints.filter(({ place }) => place === undefined);
  const always = hints.filter(({ place }) => place === 'always');
  const apart = [GAP, TIGHT].map(gap => [own, always].flatMap(row => flowed(row, width, gap)));
  const whole = apart.find(rows => rows.length <= MOST_ROWS);
  if (whole !== undefined) return whole;
  for (let count = own.length; count > 0; count -= 1) {
    const rows = flowed([...own.slice(0, count), ...always], width, TIGHT);
    if (rows.length <= MOST_ROWS) return rows;
  }
  return flowed(always, width, TIGHT);
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
