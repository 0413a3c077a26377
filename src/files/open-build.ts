import { mkdirSync } from 'node:fs';
import { fromSaved, toSaved } from '../workbook/saved.js';
import type { Workbook } from '../workbook/workbook.js';
import type { BuildFiles } from './build-files.js';
import { type Holder, holderWords } from './holder.js';
import { anothers, keep, type SaveOutcome } from './keep.js';
import { loadWorkbook } from './load-workbook.js';
import {
  type Lock,
  type LockOutcome,
  releaseLock,
  stateOf,
  takeLock,
  takeOverLock,
} from './lock.js';
import { pause } from './pause.js';
import type { Ahead, Opened } from './shelf.js';

/** A build that this session has open. Its revision and its lock change with what happens on disk. */
export type OpenBuild = {
  readonly files: BuildFiles;
  rev: number;
  /** None where the folder may only be read; it is tried again at each save. */
  lock: Lock | undefined;
};

type Opening = {
  readonly files: BuildFiles;
  readonly nowMs: number;
  readonly claim: 'if free' | 'in any case';
};

type OpeningOutcome = { readonly build: OpenBuild | undefined; readonly opened: Opened };

/** The other program may be in the middle of its last save, which takes a few ms. */
const SAVE_UNDER_WAY_MS = 150;

/** Locks a build and reads it. Where no lock can be made it may be looked at, and a notice says so. */
export function openBuild({ files, nowMs, claim }: Opening): OpeningOutcome {
  const take = claim === 'if free' ? takeLock : takeOverLock;
  const locked = take(files.lock, nowMs);
  if (!locked.ok && locked.why === 'held') return { build: undefined, opened: held(files, locked) };
  const lock = locked.ok ? locked.lock : undefined;
  if (claim === 'in any case') pause(SAVE_UNDER_WAY_MS);
  const loaded = loadWorkbook(files, nowMs);
  if (!loaded.ok) {
    if (lock !== undefined) releaseLock(lock);
    return { build: undefined, opened: loaded };
  }
  const { workbook, rev, notice } = loaded;
  const notices = [notice, noLockWords(locked)].filter(words => words !== undefined);
  return {
    build: { files, rev, lock },
    opened: { ok: true, workbook, notice: notices.length === 0 ? undefined : notices.join(' ') },
  };
}

function held({ id }: BuildFiles, { holder }: { readonly holder: Holder | undefined }): Opened {
  const who = holder === undefined ? 'another one' : holderWords(holder);
  return {
    ok: false,
    why: 'held',
    words: `The build ${id} is open in another Notchbook (${who}). Close it there, or take it over: what is done there from then on is not saved.`,
  };
}

function noLockWords(locked: LockOutcome): string | undefined {
  return locked.ok || locked.why === 'held'
    ? undefined
    : `Nothing can be saved for now. ${locked.words}`;
}

type Saving = {
  readonly workbook: Workbook;
  readonly ahead: Ahead;
  readonly nowMs: number;
};

/** Saves under the lock; an unlocked build is locked first. */
export function saveBuild(build: OpenBuild, { workbook, ahead, nowMs }: Saving): SaveOutcome {
  const refusal = lockRefusal(build, nowMs);
  if (refusal !== undefined) return refusal;
  const outcome = keep(build.files, build.rev, {
    doc: readableText(workbook),
    ...ahead,
    savedAtMs: nowMs,
  });
  if (outcome.ok) build.rev = outcome.rev;
  return outcome;
}

/** What can't be read again is a bug of ours; better found now than by a builder at the next start. */
function readableText(workbook: Workbook): string {
  const doc = toSaved(workbook);
  const reading = fromSaved(doc);
  if (!reading.ok) throw new Error(`would not be readable: ${JSON.stringify(reading)}`);
  return doc;
}

function lockRefusal(build: OpenBuild, nowMs: number): SaveOutcome | undefined {
  const { files, lock } = build;
  const state = lock === undefined ? 'none' : stateOf(lock);
  if (state === 'ours') return undefined;
  if (state === 'taken') return lost(files);
  makeAgain(files.folder);
  const locked = takeLock(files.lock, nowMs, lock?.token);
  if (locked.ok) build.lock = locked.lock;
  else if (locked.why === 'held') return lost(files);
  else return { ok: false, problem: locked.problem, words: locked.words };
  return undefined;
}

/**
 * A folder that somebody cleared away is made again, but not the one above it: that may be a disk that was
 * pulled out, and a build must not be written to a place that vanishes under the disk when it is back.
 */
function makeAgain(folder: string): void {
  try {
    mkdirSync(folder);
  } catch {
    // There already, or not to be made: what is written next tells.
  }
}

function lost({ main }: BuildFiles): SaveOutcome {
  return { ok: false, problem: 'changed-by-another', words: anothers(main) };
}

/** Gives the lock back, so that others may open the build. */
export function releaseBuild({ lock }: OpenBuild): void {
  if (lock !== undefined) releaseLock(lock);
}
