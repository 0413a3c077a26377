import { flow } from '../sheet/flow.js';
import type { Sheet } from '../sheet/mark.js';
import { careSheets, pageSheets } from './care-sheets.js';
import type { Pack, PageName } from './pack.js';
import { PIECE_PAGES } from './piece-pages.js';
import { stepSheets } from './steps-sheets.js';
import { templateSheets } from './template-sheets.js';
import { WORD_PAGES } from './word-pages.js';

type Maker = (pack: Pack) => readonly Sheet[];

/** What each part but the cover is made of. */
export const PARTS: Readonly<Record<Exclude<PageName, 'cover'>, Maker>> = {
  views: flowing('views'),
  shopping: flowing('shopping'),
  cut: flowing('cut'),
  boards: ofWords('boards'),
  joints: flowing('joints'),
  templates: templateSheets,
  marks: flowing('marks'),
  screws: ofWords('screws'),
  steps: stepSheets,
  time: flowing('time'),
  tools: ofWords('tools'),
  fit: ofWords('fit'),
  words: ofWords('words'),
  care: careSheets,
};

function flowing(name: keyof typeof PIECE_PAGES): Maker {
  const { title, pieces } = PIECE_PAGES[name];
  return pack => flow(pieces(pack), pack.frame.height, title);
}

function ofWords(name: keyof typeof WORD_PAGES): Maker {
  return pack => pageSheets(WORD_PAGES[name](pack), pack);
}
