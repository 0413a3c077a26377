import type { Mm } from '../../measure/quantities.js';
import { type Mark, moved, type Sheet } from './mark.js';
import { MARGIN } from './paper.js';
import type { Piece } from './piece.js';

/**
 * Pieces one under the other, on as many sheets as they need. What stays with the next goes to the
 * next sheet with it; a run longer than a sheet is parted between its pieces.
 */
export function flow(pieces: readonly Piece[], height: Mm, title: string): readonly Sheet[] {
  const pages: Mark[][] = [[]];
  let used = 0;
  for (const run of runsOf(pieces)) {
    const need = run.reduce((sum, one) => sum + one.above + one.height, 0);
    const whole = used + need > height && used > 0 && need <= height;
    for (const [at, one] of run.entries()) {
      const over = used > 0 && used + one.above + one.height > height;
      const fresh = over || (whole && at === 0);
      if (fresh) {
        pages.push([]);
        used = 0;
      }
      const page = pages.at(-1) ?? [];
      if (fresh && one.head !== undefined) {
        page.push(...placed(one.head, used));
        used += one.head.height;
      }
      used += used === 0 ? 0 : one.above;
      page.push(...placed(one, used));
      used += one.height;
    }
  }
  return pages.map((marks, at) => ({ title, marks, ...(at === 0 ? { bookmark: title } : {}) }));
}

function placed({ marks }: Piece, y: Mm): readonly Mark[] {
  return moved(marks, { x: MARGIN.left, y: MARGIN.top + y });
}

function runsOf(pieces: readonly Piece[]): readonly (readonly Piece[])[] {
  const runs: Piece[][] = [];
  let open = false;
  for (const one of pieces) {
    if (open) runs.at(-1)?.push(one);
    else runs.push([one]);
    open = one.staysWithNext;
  }
  return runs;
}
