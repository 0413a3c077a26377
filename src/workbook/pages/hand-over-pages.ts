import { careSheetPage } from '../../plan/pages/care-sheet-page.js';
import type { Page } from '../../text/page.js';
import { careDays } from '../hand-over.js';
import { buildRecordPage, type Recorded } from './build-record-page.js';

/**
 * What is left when a build is done: the care sheet for the owner, with its days once it was handed
 * over, and the record for the builder.
 */
export function handOverPages(recorded: Recorded, zone?: string): readonly Page[] {
  return Object.values(HAND_OVER).map(page => page(recorded, zone));
}

/** The same, each by itself. */
export const HAND_OVER: Readonly<
  Record<'care' | 'record', (recorded: Recorded, zone?: string) => Page>
> = {
  care: ({ workbook, plan }, zone) => careSheetPage(plan, careDays(workbook.events, plan, zone)),
  record: buildRecordPage,
};
