import { randomUUID } from 'node:crypto';
import { linkSync, renameSync, rmSync, statSync, unlinkSync, writeFileSync } from 'node:fs';
import { type DiskTrouble, diskTrouble, errorCode } from './disk-trouble.js';
import { type Holder, holderIn, isAlive, thisHolder } from './holder.js';
import { withMutex } from './mutex.js';
import { readFileBytes } from './read-file.js';
import { tempName } from './temp-name.js';

/** A lock that this session holds. */
export type Lock = { readonly file: string; readonly token: string };

export type LockOutcome =
  | { readonly ok: true; readonly lock: Lock }
  /** Another one has it; none is named where its lock file can't be read. */
  | { readonly ok: false; readonly why: 'held'; readonly holder: Holder | undefined }
  /** No lock can be made here at all: a folder that may only be read, a full disk. */
  | ({ readonly ok: false; readonly why: 'disk' } & DiskTrouble);

const MOST_BYTES = 4096;
/** A lock file without a readable holder may be one that is being written just now. */
const UNREADABLE_MS = 10_000;

/**
 * Takes the lock if it is free, or if whoever held it no longer runs. One that was lost with its folder is
 * taken again under the `token` it had: the folder may come back.
 */
export function takeLock(file: string, nowMs: number, token: string = randomUUID()): LockOutcome {
  return attempt({ file, token }, nowMs, 'if dead');
}

/** Takes the lock from whoever holds it: only where a person has said so. */
export function takeOverLock(file: string, nowMs: number): LockOutcome {
  return attempt({ file, token: randomUUID() }, nowMs, 'in any case');
}

/** Is the lock still ours, has somebody taken it over, or is its file gone? */
export function stateOf({ file, token }: Lock): 'ours' | 'taken' | 'none' {
  const there = readLock(file);
  if (there.state === 'free') return 'none';
  return there.holder?.token === token ? 'ours' : 'taken';
}

/** Gives the lock back; one that somebody took over stays. Never throws. */
export function releaseLock(lock: Lock): void {
  try {
    withMutex(`${lock.file}.busy`, () => {
      if (stateOf(lock) === 'ours') unlinkSync(lock.file);
    });
  } catch {
    // It names this process, which will soon be dead: the next one takes it over.
  }
}

type Claim = 'if dead' | 'in any case';

function attempt(lock: Lock, nowMs: number, claim: Claim): LockOutcome {
  const { file } = lock;
  const temp = tempName(file);
  try {
    writeFileSync(temp, JSON.stringify(thisHolder(lock.token, nowMs)), { flag: 'wx' });
    if (placedFirst(temp, file)) return { ok: true, lock };
    return replaced({ lock, temp, claim });
  } catch (error) {
    return { ok: false, why: 'disk', ...diskTrouble(error, file) };
  } finally {
    rmSync(temp, { force: true });
  }
}

/** A hard link appears whole or not at all, and never replaces anything. */
function placedFirst(temp: string, file: string): boolean {
  try {
    linkSync(temp, file);
    return true;
  } catch (error) {
    if (errorCode(error) === 'EEXIST') return false;
    return createdFirst(temp, file);
  }
}

/** Where the disk knows no hard links: created by whoever comes first, then filled. */
function createdFirst(temp: string, file: string): boolean {
  try {
    writeFileSync(file, '', { flag: 'wx' });
  } catch (error) {
    if (errorCode(error) === 'EEXIST') return false;
    throw error;
  }
  renameSync(temp, file);
  return true;
}

type Replacing = { readonly lock: Lock; readonly temp: string; readonly claim: Claim };

/** Two that find the same dead holder would both replace it, so only one may look and act. */
function replaced({ lock, temp, claim }: Replacing): LockOutcome {
  return withMutex(`${lock.file}.busy`, () => {
    const there = readLock(lock.file);
    if (there.state === 'held' && claim === 'if dead' && holds(there)) {
      return { ok: false, why: 'held', holder: there.holder };
    }
    renameSync(temp, lock.file);
    return { ok: true, lock };
  });
}

type Found = {
  readonly state: 'held';
  readonly holder: Holder | undefined;
  readonly ageMs: number;
};

function readLock(file: string): Found | { readonly state: 'free' } {
  const found = readFileBytes(file, MOST_BYTES);
  if (found.state === 'missing') return { state: 'free' };
  const holder = found.state === 'read' ? holderIn(found.bytes.toString('utf8')) : undefined;
  return { state: 'held', holder, ageMs: ageOf(file) };
}

function holds({ holder, ageMs }: Found): boolean {
  return holder === undefined ? ageMs < UNREADABLE_MS : isAlive(holder);
}

/** A lock file from the future, after the clock was set back, counts as new. */
function ageOf(file: string): number {
  try {
    return Date.now() - statSync(file).mtimeMs;
  } catch {
    return 0;
  }
}
