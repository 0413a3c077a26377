import { writeSync } from 'node:fs';
import { createInterface } from 'node:readline';
import { takeLock } from '../../src/files/lock.js';
import { openShelf } from '../../src/files/open-shelf.js';
import { record } from '../../src/workbook/start-workbook.js';
import type { Workbook } from '../../src/workbook/workbook.js';
import { ahead } from '../support/journal.js';

/**
 * A second program for tests that need a real one: it can be killed, and it has a process number of
 * its own. It speaks one line at a time on its standard output.
 */
const [, , task, folder = '', id = ''] = process.argv;

function say(line: string): void {
  // Past all buffers, so that what was said is out before a kill comes.
  writeSync(1, `${line}\n`);
}

/** Saves one more piece after the other until it is killed or fails, and names each one that is on disk. */
function saveForEver(): void {
  const shelf = openShelf(folder, Date.now);
  const opened = shelf.load(id);
  if (!opened.ok) throw new Error(opened.words);
  let workbook: Workbook = opened.workbook;
  for (;;) {
    const atMs = Date.now();
    workbook = record(workbook, { kind: 'piece-done', atMs, step: 'cut-frame/1', count: 1 });
    const outcome = shelf.save(workbook, ahead(40));
    say(outcome.ok ? `saved ${workbook.events.length}` : `failed ${outcome.words}`);
    if (!outcome.ok) return;
  }
}

/** Opens a build and holds it until the input ends. */
function hold(): void {
  const opened = openShelf(folder, Date.now).load(id);
  say(opened.ok ? 'open' : `refused ${opened.why}`);
  process.stdin.resume();
}

/** For each line `file instant`: waits for the instant, then tries to take that lock. */
async function race(): Promise<void> {
  say('ready');
  for await (const line of createInterface({ input: process.stdin })) {
    const [file = '', instant = ''] = line.split(' ');
    while (Date.now() < Number(instant)) {
      // Spinning, so that all racers start in the same millisecond.
    }
    say(takeLock(file, Date.now()).ok ? 'won' : 'lost');
  }
}

/** One save, what came of it, and how many ms it took. */
function saveOnce(): void {
  const shelf = openShelf(folder, Date.now);
  const opened = shelf.load(id);
  if (!opened.ok) throw new Error(opened.words);
  say(`notice ${opened.notice ?? 'none'}`);
  const start = performance.now();
  const outcome = shelf.save(opened.workbook, ahead(40));
  const took = Math.round(performance.now() - start);
  say(outcome.ok ? 'saved' : `${outcome.problem} ${outcome.words}`);
  say(`took ${took}`);
}

if (task === 'save') saveForEver();
if (task === 'save-once') saveOnce();
if (task === 'hold') hold();
if (task === 'race') await race();
