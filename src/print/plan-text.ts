import { allPages } from '../plan/pages/all-pages.js';
import { careSheetPage } from '../plan/pages/care-sheet-page.js';
import { wordsPage } from '../plan/pages/words-page.js';
import type { Plan } from '../plan/plan.js';
import { pageLines } from '../text/page-lines.js';
import { pageMarkdown } from '../text/page-markdown.js';
import { stepsPage } from './steps-page.js';

/** The whole plan as plain text no wider than `columns`: every page, then the steps. */
export function planText(plan: Plan, columns: number): string {
  const pages = [...allPages(plan), stepsPage(plan), wordsPage(plan), careSheetPage(plan)];
  return `${pages.map(page => pageLines(page, columns).join('\n')).join('\n\n\n')}\n`;
}

/** The whole plan as Markdown. */
export function planMarkdown(plan: Plan): string {
  const pages = [...allPages(plan), stepsPage(plan), wordsPage(plan), careSheetPage(plan)];
  return `# ${plan.title}\n\n${pages.map(pageMarkdown).join('\n\n')}\n`;
}
