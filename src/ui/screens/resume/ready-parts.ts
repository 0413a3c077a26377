import type { Step } from '../../../plan/plan.js';
import { selectJoints } from '../../../plan/select.js';
import { isDone, tallyOf } from '../../../workbook/next-step.js';
import type { Build } from '../../screen.js';

/** Pieces of one mark that are cut and not yet part of anything. */
export type ReadyPart = { readonly mark: string; readonly name: string; readonly count: number };

/** What lies ready: pieces of finished cutting steps less those that later steps have set, or have under way. */
export function readyParts({ plan, progress }: Build): readonly ReadyPart[] {
  const cut = new Set(
    plan.steps
      .filter(step => step.phase === 'cut' && isDone(step, progress))
      .flatMap(({ bright }) => bright),
  );
  const set = new Set(
    plan.steps
      .filter(({ phase }) => phase === 'assemble' || phase === 'place')
      .flatMap(step => setBy(step, { plan, progress })),
  );
  return plan.cutList.flatMap(({ mark, name, pieces }) => {
    const count = pieces.filter(id => cut.has(id) && !set.has(id)).length;
    return count === 0 ? [] : [{ mark, name: name.toLowerCase(), count }];
  });
}

/**
 * Pieces that a step has put in their places. Joints are counted one by one, and take the pieces that they hold; of
 * pieces of several kinds nobody has told which were taken, and in a step under way they are taken in their order.
 */
function setBy(
  step: Step,
  { plan, progress }: Pick<Build, 'plan' | 'progress'>,
): readonly string[] {
  if (isDone(step, progress)) return step.bright;
  const done = tallyOf(step, progress)?.done ?? 0;
  if (step.tally?.of !== 'joint') return step.bright.slice(0, done);
  const joined = selectJoints(plan.model, step.joins).slice(0, done);
  const held = new Set(joined.flatMap(({ from, into }) => [from, into]));
  return step.bright.filter(id => held.has(id));
}
