import { boardsPage } from '../../plan/pages/boards-page.js';
import { careSheetPage } from '../../plan/pages/care-sheet-page.js';
import { hardwarePage } from '../../plan/pages/hardware-page.js';
import { fitPage } from '../../plan/pages/overview-page.js';
import { spacingPage, toolsPage } from '../../plan/pages/work-pages.js';
import type { Page } from '../../text/page.js';
import { flow } from '../sheet/flow.js';
import type { Sheet } from '../sheet/mark.js';
import type { Piece } from '../sheet/piece.js';
import { blockPieces } from '../sheet/set-blocks.js';
import { titlePieces } from '../sheet/set-words.js';
import { cutPieces } from './cut-sheet.js';
import type { Pack, PageName } from './pack.js';
import { shoppingPieces } from './shopping-page.js';
import { stepSheets } from './steps-sheets.js';
import { timePieces } from './time-sheet.js';

type Maker = (pack: Pack) => readonly Sheet[];

/** What each part but the cover is made of. */
export const PARTS: Readonly<Record<Exclude<PageName, 'cover'>, Maker>> = {
  shopping: flowing('For the store', shoppingPieces),
  cut: flowing('At the saw', cutPieces),
  boards: fromPage(plan => withoutPrices(boardsPage(plan))),
  marks: fromPage(spacingPage),
  screws: fromPage(hardwarePage),
  steps: stepSheets,
  time: flowing('Time plan', timePieces),
  tools: fromPage(toolsPage),
  fit: fromPage(fitPage),
  care: fromPage(careSheetPage),
};

function flowing(title: string, pieces: (pack: Pack) => readonly Piece[]): Maker {
  return pack => flow(pieces(pack), pack.frame.height, title);
}

/** A page of words as it stands on the screen, set for paper. */
function fromPage(page: (plan: Pack['plan']) => Page): Maker {
  return ({ plan, measure, frame }) => {
    const { title, blocks } = page(plan);
    const pieces = [...titlePieces(title, measure), ...blockPieces(blocks, measure)];
    return flow(pieces, frame.height, title);
  };
}

/** What to pay is told on the page for the store; this one lies beside the saw. */
function withoutPrices(page: Page): Page {
  const from = page.blocks.findIndex(({ kind }) => kind === 'heading');
  return { ...page, title: 'How each board is cut', blocks: page.blocks.slice(Math.max(0, from)) };
}
