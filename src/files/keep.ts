import { renameSync, rmSync } from 'node:fs';
import { type BuildFiles, brokenFile } from './build-files.js';
import { cutOff, type DiskProblem, diskTrouble } from './disk-trouble.js';
import { type Envelope, sealed, type Unsealed, unsealed } from './envelope.js';
import { readFileBytes } from './read-file.js';
import { alsoAs, replaceWhole } from './whole-file.js';

/** A saved build is a few KB; this much would be some mistake. */
export const MOST_BYTES = 32 * 1024 * 1024;

export type SaveProblem = DiskProblem | 'changed-by-another';

export type SaveOutcome =
  | { readonly ok: true; readonly rev: number; readonly savedAtMs: number }
  /** Nothing was lost on disk: the save before is whole, and the next one may try again. */
  | { readonly ok: false; readonly problem: SaveProblem; readonly words: string };

export type Contents = Pick<Envelope, 'doc' | 'stepsInAll' | 'next' | 'savedAtMs'>;

/** A saved file, looked at without changing anything. */
export type Kept = Unsealed | { readonly state: 'missing' | 'refused'; readonly why: string };

/** What one file of a build holds. Never throws. */
export function readKept(file: string): Kept {
  const found = readFileBytes(file, MOST_BYTES);
  if (found.state === 'missing') return { state: 'missing', why: 'it is not there' };
  if (found.state === 'refused') return found;
  return unsealed(found.bytes.toString('utf8'));
}

/**
 * Saves a build whose file on disk is expected to have revision `rev` (0: none yet). The file there
 * is first kept as the save before; the new one is read back, and only when it is whole does this say
 * so. After any failure the save before is put back. Takes a millisecond or two.
 */
export function keep(files: BuildFiles, rev: number, contents: Contents): SaveOutcome {
  const there = readKept(files.main);
  const objection = objectionTo(there, rev, files);
  if (objection !== undefined) return objection;
  try {
    if (there.state === 'fine') alsoAs(files.main, files.previous);
    if (there.state === 'damaged') alsoAs(files.main, brokenFile(files, contents.savedAtMs));
    const envelope = sealed({ rev: rev + 1, ...contents });
    replaceWhole(files.main, envelope);
    if (isSame(readKept(files.main), envelope)) {
      return { ok: true, rev: envelope.rev, savedAtMs: envelope.savedAtMs };
    }
    putBack(files, there);
    return { ok: false, ...cutOff(files.main) };
  } catch (error) {
    putBack(files, there);
    return { ok: false, ...diskTrouble(error, files.main) };
  }
}

/**
 * A damaged or vanished file is no reason to stop, nor is an earlier save, as on a disk that was away for a
 * while: what is in memory is better. A later one is somebody else's.
 */
function objectionTo(there: Kept, rev: number, { main }: BuildFiles): SaveOutcome | undefined {
  if (there.state === 'refused') {
    const words = `${main} can't be saved to: ${there.why}.`;
    return { ok: false, problem: 'other', words };
  }
  const same = there.state !== 'newer' && (there.state !== 'fine' || there.envelope.rev <= rev);
  return same ? undefined : { ok: false, problem: 'changed-by-another', words: anothers(main) };
}

/** What to say when somebody else has written the file, or has taken the build over. */
export function anothers(main: string): string {
  return `${main} was changed by another Notchbook meanwhile. Nothing was written over it: close this one and open the build again.`;
}

function isSame(there: Kept, { rev, sum }: Envelope): boolean {
  return there.state === 'fine' && there.envelope.rev === rev && there.envelope.sum === sum;
}

/**
 * Leaves the disk as it was before: a cut-off first save goes, a whole save before comes back. On a
 * full disk there may be no room for a second name; then it is moved.
 */
function putBack({ main, previous }: BuildFiles, before: Kept): void {
  const now = readKept(main);
  try {
    if (before.state === 'missing') rmSync(main, { force: true });
    if (before.state === 'fine' && !isSame(now, before.envelope)) alsoAs(previous, main);
  } catch {
    moveBack(previous, main);
  }
}

function moveBack(previous: string, main: string): void {
  try {
    renameSync(previous, main);
  } catch {
    // Loading finds the save before under its own name.
  }
}
