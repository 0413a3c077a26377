import type { AtBench } from '../plan/as-cut.js';
import type { Progress } from './workbook.js';

/** What a plan of this build has to heed; undefined where all is still as it was planned. */
export function atBench({ found }: Pick<Progress, 'found'>): AtBench | undefined {
  const { measured, cutBefore } = found;
  if (measured.size === 0 && cutBefore.length === 0) return undefined;
  return { measured, cut: cutBefore, isBought: true };
}

/** Whether two journals ask for the same plan. */
export function isSameBench(a: Pick<Progress, 'found'>, b: Pick<Progress, 'found'>): boolean {
  return benchText(a) === benchText(b);
}

function benchText({ found }: Pick<Progress, 'found'>): string {
  return JSON.stringify([[...found.measured], found.cutBefore]);
}
