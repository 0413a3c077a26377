import { renameSync, rmSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { fromSaved, toSaved } from '../workbook/saved.js';
import type { Workbook } from '../workbook/workbook.js';
import { type DiskTrouble, diskTrouble } from './disk-trouble.js';
import { sealed } from './envelope.js';
import { readKept } from './keep.js';
import { tempName } from './temp-name.js';

export type CarriedOut =
  | { readonly ok: true; readonly file: string }
  | { readonly ok: false; readonly words: string };

export type CarriedIn =
  | { readonly ok: true; readonly workbook: Workbook; readonly stepsInAll: number }
  | { readonly ok: false; readonly words: string };

/** What the file is called where nobody gives it a name: `roof-bench.notchbook.json`. */
export function carryName({ id }: Workbook): string {
  return `${id}.notchbook.json`;
}

/**
 * Writes a whole build, its recipe and its journal, as one file that can be taken to another machine. An
 * older copy of the same build is replaced, anything else by that name is left alone. Never throws.
 */
export function carryOut(workbook: Workbook, to: string, nowMs: number): CarriedOut {
  const file = resolve(to);
  const there = readKept(file);
  if (there.state !== 'missing' && !isCopyOf(workbook, there)) {
    const words = `${file} is there already and is something else. Give another name with --to.`;
    return { ok: false, words };
  }
  const content = sealed({ rev: 1, stepsInAll: 0, savedAtMs: nowMs, doc: toSaved(workbook) });
  const trouble = written(file, `${JSON.stringify(content)}\n`);
  return trouble === undefined ? { ok: true, file } : { ok: false, words: trouble.words };
}

function isCopyOf({ id, createdAtMs }: Workbook, there: ReturnType<typeof readKept>): boolean {
  const reading = there.state === 'fine' ? fromSaved(there.envelope.doc) : undefined;
  if (reading?.ok !== true) return false;
  return reading.workbook.id === id && reading.workbook.createdAtMs === createdAtMs;
}

function written(file: string, text: string): DiskTrouble | undefined {
  const temp = tempName(file);
  try {
    writeFileSync(temp, text, { flag: 'wx' });
    renameSync(temp, file);
    return undefined;
  } catch (error) {
    return diskTrouble(error, file);
  } finally {
    rmSync(temp, { force: true });
  }
}

/** A build from a file that `carryOut` or the shelf has written. Nothing is changed; never throws. */
export function carryIn(from: string): CarriedIn {
  const file = resolve(from);
  const kept = readKept(file);
  if (kept.state === 'missing') {
    const words = `There is no file ${file}. Check the name, or where you are.`;
    return { ok: false, words };
  }
  if (kept.state === 'newer') return unreadable(`${file} was written by a newer Notchbook`);
  if (kept.state !== 'fine') return unreadable(`${file} is no whole build: ${kept.why}`);
  const reading = fromSaved(kept.envelope.doc);
  if (reading.ok) {
    return { ok: true, workbook: reading.workbook, stepsInAll: kept.envelope.stepsInAll };
  }
  if (reading.why === 'newer') return unreadable(`${file} was written by a newer Notchbook`);
  return unreadable(`${file} is no whole build: ${reading.where} can't be read`);
}

function unreadable(what: string): CarriedIn {
  const words = `${what}. Write it once more with "notchbook export" where it came from.`;
  return { ok: false, words };
}
