import { boardsPage } from '../../plan/pages/boards-page.js';
import { careSheetPage } from '../../plan/pages/care-sheet-page.js';
import { hardwarePage } from '../../plan/pages/hardware-page.js';
import { fitPage } from '../../plan/pages/overview-page.js';
import { spacingPage, toolsPage } from '../../plan/pages/work-pages.js';
import type { Plan } from '../../plan/plan.js';
import type { Page } from '../../text/page.js';
import type { PageName } from './pack.js';

type WordPage = Extract<PageName, 'boards' | 'marks' | 'screws' | 'tools' | 'fit' | 'care'>;

/** Pages that stand on paper as they stand on the screen. */
export const WORD_PAGES: Readonly<Record<WordPage, (plan: Plan) => Page>> = {
  boards: plan => withoutPrices(boardsPage(plan)),
  marks: spacingPage,
  screws: hardwarePage,
  tools: toolsPage,
  fit: fitPage,
  care: careSheetPage,
};

/** What to pay is told on the page for the store; this one lies beside the saw. */
function withoutPrices(page: Page): Page {
  const from = page.blocks.findIndex(({ kind }) => kind === 'heading');
  return { ...page, title: 'How each board is cut', blocks: page.blocks.slice(Math.max(0, from)) };
}
