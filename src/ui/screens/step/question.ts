import type { Step } from '../../../plan/plan.js';
import { count } from '../../../text/plural.js';
import { tallyOf } from '../../../workbook/next-step.js';
import { lastAct } from '../../../workbook/taken-back.js';
import type { Build } from '../../screen.js';
import { actWords } from './event-words.js';
import { openChecks } from './next-move.js';
import type { Pane } from './state.js';

/** What is asked before something that one key alone must not do. */
export function questionOf(pane: Pane, step: Step | undefined, build: Build): string | undefined {
  if (pane.kind === 'take-back') {
    const act = lastAct(build.workbook.events);
    return act.length === 0 ? undefined : `Take back: ${actWords(act, build.plan)}?`;
  }
  if (pane.kind !== 'done-anyway' || step === undefined) return undefined;
  const left = leftWords(step, build);
  return left === '' ? 'Done with this step?' : `Done, although ${left} left open?`;
}

function leftWords(step: Step, build: Build): string {
  const tally = tallyOf(step, build.progress);
  const pieces = tally === undefined ? 0 : tally.count - tally.done;
  const checks = openChecks(step, build).length;
  const parts = [
    ...(pieces > 0 ? [count(pieces, tally?.of ?? 'piece')] : []),
    ...(checks > 0 ? [count(checks, 'check')] : []),
  ];
  return parts.length === 0 ? '' : `${parts.join(' and ')} ${pieces + checks === 1 ? 'is' : 'are'}`;
}
