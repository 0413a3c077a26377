import { careSheetPage } from '../../plan/pages/care-sheet-page.js';
import type { Page } from '../../text/page.js';
import { handOverPages } from '../../workbook/pages/hand-over-pages.js';
import { flow } from '../sheet/flow.js';
import type { Sheet } from '../sheet/mark.js';
import { blockPieces } from '../sheet/set-blocks.js';
import { titlePieces } from '../sheet/set-words.js';
import type { Pack } from './pack.js';

/** What the owner is given; after it, for a build that was begun, the record of how it was built. */
export function careSheets(pack: Pack): readonly Sheet[] {
  const { plan, build } = pack;
  const begun = build !== undefined && build.progress.done.size > 0;
  const pages = begun ? handOverPages({ ...build, plan }) : [careSheetPage(plan)];
  return pages.flatMap(page => pageSheets(page, pack));
}

/** A page of words as it stands on the screen, set for paper. */
export function pageSheets({ title, blocks }: Page, { measure, frame }: Pack): readonly Sheet[] {
  return flow(
    [...titlePieces(title, measure), ...blockPieces(blocks, measure)],
    frame.height,
    title,
  );
}
