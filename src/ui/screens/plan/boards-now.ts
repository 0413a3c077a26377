import { boardsNowBlocks } from '../../../plan/pages/boards-now.js';
import type { Page } from '../../../text/page.js';
import { benchOf } from '../../bench-of.js';
import type { Build } from '../../screen.js';

/** What is to be bought is told by the boards that lie there, once the first is cut. */
export function withBoardsNow(page: Page, build: Build): Page {
  if (page.id !== 'boards') return page;
  const now = boardsNowBlocks(benchOf(build));
  if (now.length === 0) return page;
  return { ...page, title: 'Boards: now, and as bought', blocks: [...now, ...page.blocks] };
}
