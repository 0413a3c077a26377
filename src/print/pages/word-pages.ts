import { boardsNowBlocks } from '../../plan/pages/boards-now.js';
import { boardsPage } from '../../plan/pages/boards-page.js';
import { hardwarePage } from '../../plan/pages/hardware-page.js';
import { fitPage } from '../../plan/pages/overview-page.js';
import { wordsPage } from '../../plan/pages/words-page.js';
import { toolsPage } from '../../plan/pages/work-pages.js';
import type { Page } from '../../text/page.js';
import type { Pack, PageName } from './pack.js';
import { benchOf } from './so-far.js';

type WordPage = Extract<PageName, 'boards' | 'screws' | 'tools' | 'words' | 'fit'>;

/** Pages that stand on paper as they stand on the screen. */
export const WORD_PAGES: Readonly<Record<WordPage, (pack: Pack) => Page>> = {
  boards: boardsToCut,
  screws: ({ plan }) => hardwarePage(plan),
  tools: ({ plan }) => toolsPage(plan),
  words: ({ plan }) => wordsPage(plan),
  fit: ({ plan }) => fitPage(plan),
};

/**
 * What to pay is told on the page for the store; this one lies beside the saw. In a build the boards
 * stand first as they are now.
 */
function boardsToCut(pack: Pack): Page {
  const page = boardsPage(pack.plan);
  const from = page.blocks.findIndex(({ kind }) => kind === 'heading');
  const planned = page.blocks.slice(Math.max(0, from));
  const bench = benchOf(pack);
  const now = bench === undefined ? [] : boardsNowBlocks(bench);
  return { ...page, title: 'How each board is cut', blocks: [...now, ...planned] };
}
