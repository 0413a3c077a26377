import type { Plan } from '../../../plan/plan.js';
import { isDone } from '../../../workbook/next-step.js';
import type { Build } from '../../screen.js';

/** Pieces of one mark that are cut and not yet part of anything. */
export type ReadyPart = { readonly mark: string; readonly name: string; readonly count: number };

/** What lies ready: pieces of finished cutting steps less those that finished steps have set. */
export function readyParts({ plan, progress }: Build): readonly ReadyPart[] {
  const cut = partsOf(plan, step => step.phase === 'cut' && isDone(step, progress));
  const set = partsOf(plan, step => step.phase === 'assemble' && isDone(step, progress));
  return plan.cutList.flatMap(({ mark, name, pieces }) => {
    const count = pieces.filter(id => cut.has(id) && !set.has(id)).length;
    return count === 0 ? [] : [{ mark, name: name.toLowerCase(), count }];
  });
}

function partsOf(
  { steps }: Plan,
  counts: (step: Plan['steps'][number]) => boolean,
): ReadonlySet<string> {
  return new Set(steps.filter(counts).flatMap(({ bright }) => bright));
}
