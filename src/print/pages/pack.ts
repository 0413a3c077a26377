import type { NamedDrawing } from '../../drawing/drawings.js';
import type { Plan } from '../../plan/plan.js';
import type { Progress, Workbook } from '../../workbook/workbook.js';
import type { Frame } from '../sheet/paper.js';
import type { Measure } from '../sheet/set-words.js';

/** Parts of the printed plan that can be asked for by name, in the order of the paper. */
export const PAGE_NAMES = [
  'cover',
  'views',
  'shopping',
  'cut',
  'boards',
  'joints',
  'templates',
  'marks',
  'screws',
  'steps',
  'time',
  'tools',
  'words',
  'fit',
  'care',
] as const;
export type PageName = (typeof PAGE_NAMES)[number];

/** A build under way, where one is printed. */
export type BuildSoFar = { readonly workbook: Workbook; readonly progress: Progress };

/** What every page is made from. */
export type Pack = {
  readonly plan: Plan;
  /** Every drawing of the plan. */
  readonly drawings: readonly NamedDrawing[];
  readonly build: BuildSoFar | undefined;
  readonly measure: Measure;
  readonly frame: Frame;
};
