import { mkdirSync, rmdirSync, statSync } from 'node:fs';
import { errorCode } from './disk-trouble.js';
import { pause } from './pause.js';

const PAUSE_MS = 5;
const TRIES = 400;
/** What is done inside takes a millisecond; a folder this old was left behind by a killed program. */
const ABANDONED_MS = 10_000;

/**
 * Does something while no other program does the same: whoever makes the folder may go on. Waits up
 * to 2 s, then throws.
 */
export function withMutex<Result>(folder: string, act: () => Result): Result {
  enter(folder);
  try {
    return act();
  } finally {
    clear(folder);
  }
}

function enter(folder: string): void {
  for (let tries = 0; tries < TRIES; tries += 1) {
    if (made(folder)) return;
    if (isAbandoned(folder)) clear(folder);
    else pause(PAUSE_MS);
  }
  throw new Error(`${folder} is busy`);
}

function made(folder: string): boolean {
  try {
    mkdirSync(folder);
    return true;
  } catch (error) {
    if (errorCode(error) === 'EEXIST') return false;
    throw error;
  }
}

function isAbandoned(folder: string): boolean {
  try {
    return Date.now() - statSync(folder).mtimeMs > ABANDONED_MS;
  } catch {
    return false;
  }
}

function clear(folder: string): void {
  try {
    rmdirSync(folder);
  } catch {
    // Gone already: taken for abandoned while this program was stopped, or another one was quicker.
  }
}
