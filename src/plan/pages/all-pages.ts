import type { Page } from '../../text/page.js';
import type { Plan } from '../plan.js';
import { boardsPage } from './boards-page.js';
import { cutPage } from './cut-page.js';
import { hardwarePage } from './hardware-page.js';
import { fitPage, overviewPage } from './overview-page.js';
import { timePage } from './time-page.js';
import { spacingPage, toolsPage } from './work-pages.js';

/** Every page of a plan, in the order in which somebody reads it. */
export function allPages(plan: Plan): readonly Page[] {
  return [
    overviewPage(plan),
    fitPage(plan),
    cutPage(plan),
    boardsPage(plan),
    spacingPage(plan),
    hardwarePage(plan),
    toolsPage(plan),
    timePage(plan),
  ];
}
