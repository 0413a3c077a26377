import { isShortToHold } from '../plan/cutting-order.js';
import type { CutRow, Plan, Step } from '../plan/plan.js';
import { isDone } from './next-step.js';
import type { Progress } from './workbook.js';

type Standing = { readonly plan: Plan; readonly progress: Progress };

/** Steps that have to be done before this one and are not, in their order; what those wait for counts too. */
export function openBefore(step: Step, { plan, progress }: Standing): readonly Step[] {
  const before = new Set<string>();
  const waiting = [...step.needs];
  for (let id = waiting.pop(); id !== undefined; id = waiting.pop()) {
    if (before.has(id)) continue;
    before.add(id);
    waiting.push(...(plan.steps.find(it => it.id === id)?.needs ?? []));
  }
  return plan.steps.filter(it => before.has(it.id) && !isDone(it, progress));
}

/** Those of them that saw pieces too short to be held, off the same boards as this step: later these may be too short. */
export function shortCutsBefore(step: Step, standing: Standing): readonly Step[] {
  if (step.phase !== 'cut') return [];
  const { cutList } = standing.plan;
  const sections = new Set(rowsOf(step, cutList).map(({ section }) => section));
  return openBefore(step, standing).filter(
    it =>
      it.phase === 'cut' &&
      rowsOf(it, cutList).some(
        ({ section, length }) => sections.has(section) && isShortToHold(length.value),
      ),
  );
}

function rowsOf({ bright }: Step, cutList: readonly CutRow[]): readonly CutRow[] {
  return cutList.filter(({ pieces }) => pieces.some(id => bright.includes(id)));
}
