// Measures what the project promises about speed, as ratios within one run where machines differ.
// npm run bench                     everything but the instance folders
// npm run bench -- --only plan      one part: plan, first-frame, keys, idle
import { parseArgs } from 'node:util';
import { printed } from './report.mjs';

const { values } = parseArgs({
  options: { only: { type: 'string' }, instances: { type: 'string' }, rounds: { type: 'string' } },
});

const PARTS = {
  plan: () => import('./plan-speed.mjs'),
  'first-frame': () => import('./first-frame.mjs'),
  keys: () => import('./key-speed.mjs'),
  idle: () => import('./idle-cost.mjs'),
};

const wanted = values.only ? values.only.split(',') : Object.keys(PARTS);
const unknown = wanted.filter(name => !(name in PARTS));
if (unknown.length > 0) {
  console.error(
    `No part called ${unknown.join(', ')}. There are: ${Object.keys(PARTS).join(', ')}.`,
  );
  process.exit(2);
}

let missed = 0;
for (const name of wanted) {
  const { measure } = await PARTS[name]();
  const rows = await measure({ rounds: Number(values.rounds ?? 15) });
  missed += printed(name, rows);
}
process.exit(missed > 0 ? 1 : 0);
