import { formatLength } from '../measure/format-length.js';
import type { Display } from '../measure/quantities.js';
import type { CuttingPlan } from '../solve/cutting/problem.js';
import type { CutRow } from './plan.js';
import type { SectionProblem } from './purchase-problem.js';

/** How good the plan is known to be, in words. */
export function proofWords(plan: CuttingPlan, asked: SectionProblem): string {
  const what = asked.priced ? 'costs less' : 'needs less length';
  if (plan.missing.length > 0) return 'some pieces have no board';
  if (plan.proof.kind === 'bound') return `proven: no other way ${what}`;
  if (plan.proof.kind === 'search') return `proven by search: no other way ${what}`;
  const percent = plan.lowerBound > 0 ? (100 * (plan.cost - plan.lowerBound)) / plan.lowerBound : 0;
  return `not proven: at most ${percent.toFixed(1)} % above the best possible`;
}

/** Pieces that no board is left for, each with why. */
export function missingWords(
  plan: CuttingPlan,
  rows: readonly CutRow[],
  display: Display,
): readonly string[] {
  return plan.missing.map(({ piece, count, why }) => {
    const row = rows.find(it => it.mark === piece);
    const length = row ? formatLength(row.length.value, display) : '';
    return why === 'longer-than-every-board'
      ? `${count} of ${piece}, ${length}: longer than every board after squaring`
      : `${count} of ${piece}, ${length}: no board left`;
  });
}
