import type { AtBench } from '../plan/as-cut.js';
import type { Progress, Workbook } from './workbook.js';

/** What a plan of this build has to heed; undefined where all is still as it would be planned today. */
export function atBench(
  { boards }: Pick<Workbook, 'boards'>,
  { found }: Pick<Progress, 'found'>,
): AtBench | undefined {
  const { measured, cutBefore } = found;
  if (boards === undefined && measured.size === 0 && cutBefore.length === 0) return undefined;
  return { measured, cut: cutBefore, isBought: true, boards };
}

/** Whether two journals ask for the same plan. */
export function isSameBench(a: Pick<Progress, 'found'>, b: Pick<Progress, 'found'>): boolean {
  return benchText(a) === benchText(b);
}

function benchText({ found }: Pick<Progress, 'found'>): string {
  return JSON.stringify([[...found.measured], found.cutBefore]);
}
