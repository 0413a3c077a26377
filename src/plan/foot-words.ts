import type { Display } from '../measure/quantities.js';
import { count } from '../text/plural.js';
import type { FootRow } from './foot-rows.js';
import { onTheTape } from './on-tape.js';
import type { Step } from './plan.js';

/** "2 feet about 16-1/4 in from the high end: about 1/8 in under each". */
export function footLine(row: FootRow, display: Display): Step['settings'][number] {
  const { feet, fromHighEnd, shim } = row;
  const under =
    shim.value === 0 ? 'nothing under them' : `${onTheTape(shim.value, display)} under each`;
  return {
    name: 'Shims',
    text: `${count(feet, 'foot')} ${onTheTape(fromHighEnd.value, display)} from the high end: ${under}`,
  };
}
