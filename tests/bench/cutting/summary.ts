import type { CuttingPlan } from '../../../src/solve/cutting/problem.js';

type Run = { readonly ms: number; readonly plan: CuttingPlan };

/** One line: how many were proven, and how long it took. */
export function summary(runs: readonly Run[]): string {
  const times = runs.map(run => run.ms).sort((a, b) => a - b);
  const at = (share: number): string =>
    (times[Math.min(times.length - 1, Math.floor(share * times.length))] ?? 0).toFixed(1);
  const proven = runs.filter(({ plan }) => plan.proof.kind !== 'none');
  const within = (ms: number): number => proven.filter(run => run.ms <= ms).length;
  const gaps = runs.map(({ plan }) => (plan.cost - plan.lowerBound) / Math.max(1, plan.cost));
  return [
    `proven ${proven.length} of ${runs.length}`,
    `by bound ${runs.filter(({ plan }) => plan.proof.kind === 'bound').length}`,
    `within 0.1 s ${within(100)}, 1 s ${within(1000)}, 10 s ${within(10_000)}`,
    `median ${at(0.5)} ms, 90 % ${at(0.9)} ms, worst ${at(1)} ms`,
    `mean gap ${((100 * gaps.reduce((a, b) => a + b, 0)) / runs.length).toFixed(4)} %, worst ${(100 * Math.max(...gaps)).toFixed(3)} %`,
    `cost ${runs.reduce((sum, { plan }) => sum + plan.cost, 0)}`,
    `steps ${(runs.reduce((sum, { plan }) => sum + plan.work, 0) / 1e6).toFixed(1)} M`,
  ].join('; ');
}
