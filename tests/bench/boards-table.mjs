import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { cpus, loadavg } from 'node:os';
import { join } from 'node:path';
import { classRows } from './boards-classes.mjs';
import { bundled, ROOT } from './bundled.mjs';
import { median } from './report.mjs';
import { tableRow } from './table-row.mjs';

/** Seconds by the clock that the general solver may take for one model; a busy machine gives it less processor time. */
const SOLVER_SECONDS = 20;

/** Every figure that buying boards has to reach, one row each. Times are processor time of the process. */
export async function printTable({ instances, most }) {
  console.log(
    `Node ${process.version}, ${cpus()[0]?.model ?? ''}, load ${loadavg()[0]?.toFixed(1)}. Times are processor time.\n`,
  );
  const rows = [...(await workbookRows()), ...(await commandRows()), ...(await solverRows())];
  if (instances) rows.push(...(await classRows(instances, most)));
  else console.log('The published classes are left out: name their folder with --instances.');
  const missed = rows.filter(({ isReached }) => !isReached).length;
  console.log(`\n${rows.length - missed} of ${rows.length} figures reached.`);
  return missed;
}

/** The workbook set and what its plans are like. */
async function workbookRows() {
  const { runs, settings, SEEDS } = await bundled('tests/bench/cutting/workbook-runs.ts');
  runs(1, 60);
  const usual = runs(1);
  const within = seconds =>
    usual.filter(({ ms, plan }) => plan.proof.kind !== 'none' && ms <= 1000 * seconds).length;
  const proven = (seconds, wanted) =>
    tableRow(
      `workbook set: proven in ${seconds} s each`,
      `${wanted} of ${SEEDS}`,
      String(within(seconds)),
      within(seconds) >= wanted,
    );
  const middle = median(usual.map(({ ms }) => ms));
  const gaps = runs(0.1).map(({ plan }) => (100 * (plan.cost - plan.lowerBound)) / plan.cost);
  const fewer = from => {
    const stops = settings(SEEDS, from);
    const given = stops.reduce((sum, one) => sum + one.given, 0);
    const share = 100 * (1 - given / stops.reduce((sum, one) => sum + one.plain, 0));
    const what = `stop settings fewer, start numbers from ${from}`;
    return tableRow(what, '15 %', `${share.toFixed(1)} %`, share >= 15);
  };
  return [
    proven(10, 300),
    proven(1, 298),
    proven(0.1, 285),
    tableRow('workbook set: median, warm', '10 ms', `${middle.toFixed(1)} ms`, middle <= 10),
    tableRow(
      'workbook set: worst gap after 0.1 s of work',
      '1 %',
      `${Math.max(...gaps).toFixed(2)} %`,
      Math.max(...gaps) <= 1,
    ),
    fewer(1),
    fewer(301),
  ];
}

/** The bench's own purchase in the interview, and the whole command from its start. */
async function commandRows() {
  const { purchaseTimes } = await bundled('tests/bench/cutting/own-purchase.ts');
  const text = readFileSync(join(ROOT, 'projects/planter-bench/recipe.yaml'), 'utf8');
  const own = median(purchaseTimes(text));
  const words =
    'work boards --piece 21in*4 --piece 34.5in*6 --board 8ft@7.48 --board 10ft@9.98 --on-hand 52in --kerf 1/8in --trim 1/4in --as json';
  const cold = median(Array.from({ length: 10 }, () => childSeconds(words.split(' '))).slice(1));
  return [
    tableRow('the bench’s own purchase, warm, median', '8 ms', `${own.toFixed(1)} ms`, own <= 8),
    tableRow('whole command, cold, median', '0.3 s', `${cold.toFixed(3)} s`, cold < 0.3),
  ];
}

/** Processor seconds of the program run with some words, as `times` of the shell adds them up (POSIX). */
function childSeconds(words) {
  const script = '"$@" >/dev/null || exit 1; times';
  const program = [process.execPath, join(ROOT, 'src/start.mjs'), ...words];
  const { status, stdout } = spawnSync('sh', ['-c', script, 'sh', ...program], {
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error('the command failed');
  const [, children = ''] = stdout.trim().split('\n');
  return [...children.matchAll(/(\d+)m([\d.]+)s/g)].reduce(
    (sum, [, minutes, seconds]) => sum + 60 * Number(minutes) + Number(seconds),
    0,
  );
}

/** HiGHS, presolve off, on the same problems in the same run; stopped runs count as long as they ran. */
async function solverRows() {
  const { ratios } = await bundled('tests/bench/cutting/general-solver.ts');
  const highs = await createRequire(import.meta.url)('highs')();
  const options = { presolve: 'off', mip_rel_gap: 0, time_limit: SOLVER_SECONDS };
  const { ways, arcFlow, faults } = ratios(lp => highs.solve(lp, options));
  for (const fault of faults) console.log(`other value: ${fault}`);
  const row = (what, wanted, all) => {
    const middle = median(all);
    const title = `HiGHS takes longer, ${what}, ${all.length} problems`;
    return tableRow(title, `${wanted} x`, `${middle.toFixed(0)} x`, middle >= wanted);
  };
  return [row('every way to fill', 50, ways), row('arc-flow', 150, arcFlow)];
}
