import { constants, copyFileSync } from 'node:fs';
import { fromSaved } from '../workbook/saved.js';
import type { Workbook } from '../workbook/workbook.js';
import { type BuildFiles, brokenFile } from './build-files.js';
import type { Envelope } from './envelope.js';
import { readKept } from './keep.js';
import { alsoAs } from './whole-file.js';

export type Found =
  | { readonly state: 'fine'; readonly workbook: Workbook; readonly envelope: Envelope }
  | { readonly state: 'missing' }
  | { readonly state: 'damaged' | 'newer' | 'refused'; readonly why: string };

export type Loaded =
  | {
      readonly ok: true;
      readonly workbook: Workbook;
      readonly rev: number;
      /** What has to be told before the build goes on; in most cases nothing. */
      readonly notice: string | undefined;
    }
  | { readonly ok: false; readonly why: LoadProblem; readonly words: string };

export type LoadProblem = 'missing' | 'damaged' | 'newer' | 'refused';

/** One file of a build, opened, checked and read; nothing is changed. Never throws. */
export function findWorkbook(file: string): Found {
  const kept = readKept(file);
  if (kept.state === 'newer') return { state: 'newer', why: newerWords(kept.format) };
  if (kept.state === 'missing') return { state: 'missing' };
  if (kept.state !== 'fine') return kept;
  const reading = fromSaved(kept.envelope.doc);
  if (reading.ok) return { state: 'fine', workbook: reading.workbook, envelope: kept.envelope };
  if (reading.why === 'newer') return { state: 'newer', why: newerWords(reading.format) };
  return { state: 'damaged', why: `${reading.where} can't be read` };
}

function newerWords(format: number): string {
  return `it was saved by a newer Notchbook (format ${format})`;
}

/**
 * A build from its file; where that is damaged, from the save before it. The damaged file is copied
 * aside first, and nothing is ever deleted. Never throws.
 */
export function loadWorkbook(files: BuildFiles, nowMs: number): Loaded {
  const main = findWorkbook(files.main);
  if (main.state === 'fine') return loaded(main, undefined);
  if (main.state === 'newer' || main.state === 'refused') return refusedMain(files, main);
  const previous = findWorkbook(files.previous);
  if (previous.state === 'fine') {
    const aside = main.state === 'damaged' ? setAside(files, nowMs) : bringBack(files);
    return loaded(previous, `${asideWords(files, main)} ${aside}`);
  }
  if (main.state === 'missing' && previous.state === 'missing') {
    return { ok: false, why: 'missing', words: `There is no build at ${files.main}.` };
  }
  return bothDamaged(files, main);
}

function loaded(found: Extract<Found, { state: 'fine' }>, notice: string | undefined): Loaded {
  return { ok: true, workbook: found.workbook, rev: found.envelope.rev, notice };
}

function refusedMain({ main }: BuildFiles, found: Extract<Found, { why: string }>): Loaded {
  const advice =
    found.state === 'newer'
      ? 'Open it with that version; nothing was changed.'
      : 'Nothing was changed.';
  return { ok: false, why: found.state, words: `${main} can't be opened: ${found.why}. ${advice}` };
}

function bothDamaged({ main, previous }: BuildFiles, found: Found): Loaded {
  const why = 'why' in found ? found.why : 'it is not there';
  return {
    ok: false,
    why: 'damaged',
    words: `${main} can't be read (${why}), nor can the save before it, ${previous}. Both stay as they are. Copy them somewhere else before you begin this build anew.`,
  };
}

function asideWords({ main }: BuildFiles, found: Found): string {
  const why = 'why' in found ? `is damaged (${found.why})` : 'is gone';
  return `${main} ${why}, so the save before it was opened: what was done last may be missing.`;
}

/** A second copy under the same name would overwrite the first, so then the first one stays. */
function setAside(files: BuildFiles, nowMs: number): string {
  const broken = brokenFile(files, nowMs);
  try {
    copyFileSync(files.main, broken, constants.COPYFILE_EXCL);
  } catch {
    return 'The damaged file is still there; it could not be copied aside.';
  }
  bringBack(files);
  return `The damaged file was copied to ${broken}.`;
}

function bringBack({ main, previous }: BuildFiles): string {
  try {
    alsoAs(previous, main);
    return 'It has taken its place.';
  } catch {
    return 'It could not take its place.';
  }
}
