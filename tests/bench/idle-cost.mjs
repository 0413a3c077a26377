import { existsSync, mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ROOT } from './bundled.mjs';
import { settled } from './key-speed.mjs';
import { open } from './terminal.mjs';

const SECONDS = 10;
const TICKS_PER_SECOND = 100;

/** Share of a core that a screen takes while nobody touches it: at rest, and with a timer running. */
export async function measure() {
  if (!existsSync('/proc/self/stat')) {
    console.log('  skipped: this machine has no /proc to read processor time from');
    return [];
  }
  return [
    { what: 'home screen at rest', value: await share([]), unit: '% core', goal: 0.3 },
    {
      what: 'a build with a running timer',
      value: await share(['1', ' ', 't', ' ']),
      unit: '% core',
      goal: 2,
    },
  ];
}

/** The keys lead from the home screen to the example's step, and start its timer. */
async function share(keys) {
  const home = mkdtempSync(join(tmpdir(), 'notchbook-idle-'));
  const child = open([join(ROOT, 'src/start.mjs')], { env: { HOME: home, NOTCHBOOK_HOME: home } });
  const seen = [];
  child.onData(text => seen.push(text));
  await settled(child, 1500);
  for (const key of keys) {
    child.write(key);
    await settled(child, 1000);
  }
  if (keys.length > 0 && !/\d (?:h|min) left/.test(seen.join(''))) {
    throw new Error('no timer is running: the keys no longer lead to one');
  }
  // Node tidies its memory once, about eight seconds after the last work: 0.03 s that are not "at rest".
  await new Promise(resolve => setTimeout(resolve, SECONDS * 1000));
  const before = ticks(child.pid);
  await new Promise(resolve => setTimeout(resolve, SECONDS * 1000));
  const used = ticks(child.pid) - before;
  child.kill('SIGKILL');
  return (100 * used) / (SECONDS * TICKS_PER_SECOND);
}

/** User and system time of a process, in clock ticks (proc(5), fields 14 and 15). */
function ticks(pid) {
  const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
  const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
  return Number(fields[11]) + Number(fields[12]);
}
