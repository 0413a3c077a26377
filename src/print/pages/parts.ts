import { flow } from '../sheet/flow.js';
import type { Sheet } from '../sheet/mark.js';
import type { Piece } from '../sheet/piece.js';
import { careSheets, pageSheets } from './care-sheets.js';
import { cutPieces } from './cut-sheet.js';
import { jointPieces } from './joint-pieces.js';
import { marksPieces } from './marks-pieces.js';
import type { Pack, PageName } from './pack.js';
import { shoppingPieces } from './shopping-page.js';
import { stepSheets } from './steps-sheets.js';
import { templateSheets } from './template-sheets.js';
import { timePieces } from './time-sheet.js';
import { WORD_PAGES } from './word-pages.js';

type Maker = (pack: Pack) => readonly Sheet[];

/** What each part but the cover is made of. */
export const PARTS: Readonly<Record<Exclude<PageName, 'cover'>, Maker>> = {
  shopping: flowing('For the store', shoppingPieces),
  cut: flowing('At the saw', cutPieces),
  boards: ofWords('boards'),
  joints: flowing('Joints', jointPieces),
  templates: templateSheets,
  marks: flowing('Spacing', marksPieces),
  screws: ofWords('screws'),
  steps: stepSheets,
  time: flowing('Time plan', timePieces),
  tools: ofWords('tools'),
  fit: ofWords('fit'),
  words: ofWords('words'),
  care: careSheets,
};

function flowing(title: string, pieces: (pack: Pack) => readonly Piece[]): Maker {
  return pack => flow(pieces(pack), pack.frame.height, title);
}

function ofWords(name: keyof typeof WORD_PAGES): Maker {
  return pack => pageSheets(WORD_PAGES[name](pack), pack);
}
