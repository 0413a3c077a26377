import type { Step } from '../../../plan/plan.js';
import { tallyOf } from '../../../workbook/next-step.js';
import { plainer } from '../../widgets/facts.js';
import type { Row } from '../../widgets/rows.js';
import { bigNow, figureRows } from './figure-rows.js';
import { glueUpRows } from './glue-up-rows.js';
import type { Style, Work } from './work-rows.js';

/** What is seen first at a step: its figure, how far the count is, and the glue-up at hand. */
export function topBlocks(work: Work, { columns, large }: Style): readonly (readonly Row[])[] {
  const { step, build } = work;
  const tally = tallyOf(step, build.progress);
  return [figureRows({ big: bigOf(work), tally, columns, large }), glueUpRows(work, columns)];
}

function bigOf({ step, build, at }: Work): Step['big'] {
  const big = bigNow(step, build);
  if (big === undefined) return undefined;
  const plain = plainer(at.ascii);
  return { text: plain(big.text), caption: plain(big.caption) };
}
