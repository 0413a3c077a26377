import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ROOT } from './bundled.mjs';
import { median, quantile } from './report.mjs';
import { open } from './terminal.mjs';

const DOWN = '\x1b[B';
const UP = '\x1b[A';

/** From a key on the home screen of 100 x 40 to the frame that answers it, with pauses between keys. */
export async function measure({ rounds }) {
  const home = mkdtempSync(join(tmpdir(), 'notchbook-keys-'));
  const app = join(ROOT, 'src/start.mjs');
  const child = open([app], { env: { HOME: home, NOTCHBOOK_HOME: home } });
  await settled(child);
  const times = [];
  for (let at = 0; at < Math.max(60, rounds * 4); at += 1) {
    times.push(await answered(child, at % 2 === 0 ? DOWN : UP));
    await pause(60);
  }
  child.kill('SIGKILL');
  return [
    { what: 'key to frame at 100x40, median', value: median(times), unit: 'ms', goal: 12 },
    {
      what: 'key to frame at 100x40, 95 of 100',
      value: quantile(times, 0.95),
      unit: 'ms',
      goal: 28,
    },
  ];
}

function pause(ms) {
  return new Promise(resolve => setTimeout(resolve, ms));
}

/** Waits until the program has been quiet for a while. */
export function settled(child, quietMs = 700) {
  return new Promise(resolve => {
    let timer = setTimeout(resolve, quietMs);
    child.onData(() => {
      clearTimeout(timer);
      timer = setTimeout(resolve, quietMs);
    });
  });
}

function answered(child, key) {
  return new Promise((resolve, reject) => {
    const late = setTimeout(() => reject(new Error('a key was not answered')), 5000);
    const from = performance.now();
    const listening = child.onData(() => {
      listening.dispose();
      clearTimeout(late);
      resolve(performance.now() - from);
    });
    child.write(key);
  });
}
