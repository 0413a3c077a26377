import { beforeAll, describe, expect, test } from 'vitest';
import { printPaper } from '../../src/print/print-paper.js';
import { PAPERS } from '../../src/print/sheet/paper.js';
import { paperAsk } from '../support/paper.js';
import { type GrayPicture, HAS_POPPLER, NEEDS_POPPLER, pdfPicture } from '../support/poppler.js';

const DOTS = 300;
const INCH_MM = 25.4;
/** The issue: within half a percent. */
const SHARE = 0.005;

const dots = (millimeters: number) => (millimeters / INCH_MM) * DOTS;

/** The longest dark run of each row, or of each column. */
function runs(
  { width, height, pixels }: GrayPicture,
  along: 'rows' | 'columns',
): readonly number[] {
  const [lines, length] = along === 'rows' ? [height, width] : [width, height];
  return Array.from({ length: lines }, (_, line) => {
    let longest = 0;
    let run = 0;
    for (let at = 0; at < length; at += 1) {
      const [x, y] = along === 'rows' ? [at, line] : [line, at];
      run = (pixels[y * width + x] ?? 255) < 128 ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
    return longest;
  });
}

function hasRun(all: readonly number[], wanted: number): boolean {
  return all.some(run => Math.abs(run - wanted) <= wanted * SHARE);
}

/** Painted by poppler at 300 dots to the inch and measured dot by dot. */
describe.skipIf(!HAS_POPPLER)(`pages at 1:1${NEEDS_POPPLER}`, () => {
  const pictures: Partial<Record<'letter' | 'a4', GrayPicture>> = {};

  beforeAll(async () => {
    for (const paper of ['letter', 'a4'] as const) {
      const pdf = await printPaper(paperAsk({ paper: PAPERS[paper], pages: ['templates'] }));
      pictures[paper] = pdfPicture(pdf, 1, DOTS);
    }
  }, 60_000);

  test.each(['letter', 'a4'] as const)('the rulers on %s are 4 in and 100 mm long', paper => {
    const picture = pictures[paper];
    if (picture === undefined) throw new Error('not painted');
    const rows = runs(picture, 'rows');
    expect(hasRun(rows, 4 * DOTS)).toBe(true);
    expect(hasRun(rows, dots(100))).toBe(true);
    // A ruler shrunk to fit a page, to 97 %, would be found out.
    expect(hasRun(rows, 4 * DOTS * 0.97)).toBe(false);
  });

  // By hand: a 2x4 is 1-1/2 x 3-1/2 in (PS 20), so face, edge and back fold out to 8-1/2 in.
  test.each(['letter', 'a4'] as const)('the template on %s is as high as it folds', paper => {
    const picture = pictures[paper];
    if (picture === undefined) throw new Error('not painted');
    expect(hasRun(runs(picture, 'columns'), 8.5 * DOTS)).toBe(true);
  });
});
