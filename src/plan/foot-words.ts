import type { Display } from '../measure/quantities.js';
import type { FootRow } from './foot-rows.js';
import { onTheTape } from './on-tape.js';
import type { Step } from './plan.js';

/** "16-1/4 in from the high end: about 1/8 in under each foot". */
export function footLine(row: FootRow, display: Display): Step['settings'][number] {
  const { fromHighEnd, shim } = row;
  const under = shim.value === 0 ? 'nothing' : onTheTape(shim.value, display);
  return {
    name: 'Shims',
    text: `${onTheTape(fromHighEnd.value, display)} from the high end: ${under} under each foot`,
  };
}
