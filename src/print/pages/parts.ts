import { flow } from '../sheet/flow.js';
import type { Sheet } from '../sheet/mark.js';
import type { Piece } from '../sheet/piece.js';
import { blockPieces } from '../sheet/set-blocks.js';
import { titlePieces } from '../sheet/set-words.js';
import { cutPieces } from './cut-sheet.js';
import { jointPieces } from './joint-pieces.js';
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
  marks: ofWords('marks'),
  screws: ofWords('screws'),
  steps: stepSheets,
  time: flowing('Time plan', timePieces),
  tools: ofWords('tools'),
  fit: ofWords('fit'),
  care: ofWords('care'),
};

function flowing(title: string, pieces: (pack: Pack) => readonly Piece[]): Maker {
  return pack => flow(pieces(pack), pack.frame.height, title);
}

function ofWords(name: keyof typeof WORD_PAGES): Maker {
  return ({ plan, measure, frame }) => {
    const { title, blocks } = WORD_PAGES[name](plan);
    const pieces = [...titlePieces(title, measure), ...blockPieces(blocks, measure)];
    return flow(pieces, frame.height, title);
  };
}
