// Measures what the project promises about speed, as ratios within one run where machines differ.
// npm run bench                     everything but the instance folders
// npm run bench -- --only plan      one part: plan, pictures, cutting, first-frame, keys, idle
// npm run bench -- --only boards-table   every figure that buying boards has to reach; with --instances DIR the published
//                                   classes too (--most N: a sample of each); takes minutes to hours
// npm run bench -- --instances DIR  published purchase problems, one text file a class; with --most N of each file,
//                                   --effort 10 (1 is the work of about a second), --only NAME,NAME files
import { parseArgs } from 'node:util';
import { printed } from './report.mjs';

const { values } = parseArgs({
  options: {
    only: { type: 'string' },
    instances: { type: 'string' },
    rounds: { type: 'string' },
    effort: { type: 'string' },
    most: { type: 'string' },
  },
});

const most = Number(values.most ?? Infinity);
if (values.only === 'boards-table') {
  const { printTable } = await import('./boards-table.mjs');
  process.exit((await printTable({ instances: values.instances, most })) > 0 ? 1 : 0);
}

if (values.instances) {
  const { measureFolder } = await import('./cutting-instances.mjs');
  const wrong = await measureFolder(values.instances, {
    effort: Number(values.effort ?? 1),
    most,
    only: values.only,
  });
  process.exit(wrong > 0 ? 1 : 0);
}

const PARTS = {
  plan: () => import('./plan-speed.mjs'),
  pictures: () => import('./picture-speed.mjs'),
  cutting: () => import('./cutting-speed.mjs'),
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
