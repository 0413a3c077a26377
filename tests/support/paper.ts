import { readTypeface } from '../../src/files/typeface.js';
import { PAGE_NAMES } from '../../src/print/pages/pack.js';
import type { PaperAsk } from '../../src/print/print-paper.js';
import { PAPERS } from '../../src/print/sheet/paper.js';
import { planOf, project } from './projects.js';

/** Sunday, November 29, 2026, 12:00 universal time. */
export const PRINTED_MS = Date.UTC(2026, 10, 29, 12);

/** What is asked of the printer unless a test says otherwise: all of the bench on letter. */
export function paperAsk(more: Partial<PaperAsk> = {}): PaperAsk {
  return {
    plan: more.plan ?? planOf(project('planter-bench')),
    build: undefined,
    pages: PAGE_NAMES,
    paper: PAPERS.letter,
    fonts: readTypeface(import.meta.url),
    madeAtMs: PRINTED_MS,
    ...more,
  };
}
