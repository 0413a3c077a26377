import { bundled } from './bundled.mjs';
import { quantile } from './report.mjs';

/** What the 300 made-up workbook purchases cost together, in cents, each proven; a change here is a wrong plan. */
const TOTAL_CENTS = 8_933_256;

/** Purchases of the size of one project, 300 fixed start numbers, in one warm process. */
export async function measure() {
  const { runs, settings, SEEDS } = await bundled('tests/bench/cutting/workbook-runs.ts');
  runs(1, 60);
  const usual = runs(1);
  const cents = usual.reduce((sum, { plan }) => sum + plan.cost, 0);
  const times = usual.map(run => run.ms);
  const unproven = ms =>
    SEEDS - usual.filter(run => run.plan.proof.kind !== 'none' && run.ms <= ms).length;
  const short = runs(0.1).map(({ plan }) => (100 * (plan.cost - plan.lowerBound)) / plan.cost);
  const stops = settings();
  const share =
    stops.reduce((sum, { given }) => sum + given, 0) /
    stops.reduce((sum, { plain }) => sum + plain, 0);
  return [
    {
      what: 'cents off the written total of 300',
      value: Math.abs(cents - TOTAL_CENTS),
      unit: 'cents',
      goal: 0,
    },
    { what: 'not proven in 0.1 s, of 300', value: unproven(100), unit: '', goal: 15 },
    { what: 'not proven in 1 s, of 300', value: unproven(1000), unit: '', goal: 2 },
    { what: 'not proven in 10 s, of 300', value: unproven(10_000), unit: '', goal: 0 },
    { what: 'time, median', value: quantile(times, 0.5), unit: 'ms', goal: 10 },
    { what: 'time, 90 of 100', value: quantile(times, 0.9), unit: 'ms' },
    { what: 'time, worst', value: quantile(times, 1), unit: 'ms' },
    {
      what: 'gap after a tenth of the usual work, worst',
      value: Math.max(...short),
      unit: '%',
      goal: 1,
    },
    {
      what: 'gap after a tenth of the usual work, mean',
      value: short.reduce((a, b) => a + b, 0) / SEEDS,
      unit: '%',
      goal: 0.02,
    },
    {
      what: 'stop settings against the plain cheapest plan',
      value: 100 * share,
      unit: '%',
      goal: 85,
    },
  ];
}
