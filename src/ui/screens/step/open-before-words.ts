import type { Step } from '../../../plan/plan.js';
import { listWords } from '../../../text/list.js';
import { runsOf } from '../../../text/runs.js';
import { openBefore, shortCutsBefore } from '../../../workbook/open-before.js';
import type { Build } from '../../screen.js';

/** `steps 4, 5 and 7 to 9`: what was passed over and has to be done before this step; empty where nothing was. */
export function openBeforeWords(step: Step, build: Build): string {
  const open = openBefore(step, build);
  return open.length === 0 ? '' : stepsNamed(open, build);
}

/** Why that matters at the saw: short pieces are cut off while there is a long board to hold. */
export function whyShortFirst(step: Step, build: Build): string {
  const short = shortCutsBefore(step, build);
  if (short.length === 0) return '';
  const cut = `${stepsNamed(short, build)} cut${short.length === 1 ? 's' : ''}`;
  return `Short pieces, which ${cut}, come first: later no board may be long enough to hold.`;
}

function stepsNamed(steps: readonly Step[], { plan }: Build): string {
  const numbers = steps.map(step => plan.steps.indexOf(step) + 1);
  return `step${steps.length === 1 ? '' : 's'} ${listWords(runsOf(numbers))}`;
}
