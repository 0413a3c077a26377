import type { Workbook } from '../workbook/workbook.js';
import { type BuildFiles, buildFiles } from './build-files.js';
import { buildFolders, buildsIn } from './list-builds.js';
import { findWorkbook } from './load-workbook.js';
import type { ShelfEntry } from './shelf.js';

export type ReadBuild =
  | LookedAt
  /** `known` are the builds there are. */
  | { readonly ok: false; readonly why: 'unknown'; readonly known: readonly ShelfEntry[] };

/** What a build's files hold just now. */
export type LookedAt =
  | { readonly ok: true; readonly workbook: Workbook; readonly savedBefore: boolean }
  | { readonly ok: false; readonly why: 'unreadable'; readonly words: string };

/**
 * A build by its name or id, to be looked at only: no lock, nothing written, so it may be open in
 * another window. Where its file is damaged the save before it stands in (`savedBefore`).
 */
export function readBuild(folder: string, name: string): ReadBuild {
  const known = buildsIn(folder);
  const wanted = name.trim().toLowerCase();
  const entry =
    known.find(({ id }) => id === wanted) ??
    known.find(build => build.name.trim().toLowerCase() === wanted);
  if (entry === undefined) return { ok: false, why: 'unknown', known };
  const folders = buildFolders(folder);
  return lookAt(buildFiles(entry.example ? folders.example : folders.own, entry.id));
}

/** The same by its files. */
export function lookAt(files: BuildFiles): LookedAt {
  const main = findWorkbook(files.main);
  if (main.state === 'fine') return { ok: true, workbook: main.workbook, savedBefore: false };
  const before = findWorkbook(files.previous);
  if (before.state === 'fine' && main.state !== 'newer' && main.state !== 'refused') {
    return { ok: true, workbook: before.workbook, savedBefore: true };
  }
  const why = 'why' in main ? main.why : 'it is not there';
  return { ok: false, why: 'unreadable', words: `${files.main} can't be read: ${why}.` };
}
