import type { Workbook } from '../workbook/workbook.js';
import { buildFiles } from './build-files.js';
import { buildFolders, listBuilds } from './list-builds.js';
import { findWorkbook } from './load-workbook.js';
import type { ShelfEntry } from './shelf.js';

export type FoundBuild =
  | { readonly state: 'found'; readonly workbook: Workbook }
  | { readonly state: 'missing' }
  /** Why it can't be read, or which builds are called so. */
  | { readonly state: 'refused'; readonly problem: string };

/**
 * A build by its id or by the name that its builder gave it, only to be read: it is not opened, so
 * another Notchbook may have it open, and nothing is moved or mended.
 */
export function findBuild(folder: string, word: string): FoundBuild {
  const folders = buildFolders(folder);
  const named = listBuilds(folders).filter(entry => isCalled(entry, word));
  const [entry, ...others] = named;
  if (entry === undefined) return { state: 'missing' };
  if (others.length > 0) {
    const ids = named.map(({ id }) => id).join(', ');
    return {
      state: 'refused',
      problem: `${named.length} builds are called "${word}". Name one by its id: ${ids}.`,
    };
  }
  const home = entry.example ? folders.example : folders.own;
  const { main, previous } = buildFiles(home, entry.id);
  const found = findWorkbook(main);
  if (found.state === 'fine') return { state: 'found', workbook: found.workbook };
  const before = findWorkbook(previous);
  if (before.state === 'fine') return { state: 'found', workbook: before.workbook };
  const why = 'why' in found ? found.why : 'it is not there';
  return { state: 'refused', problem: `${main} can't be read: ${why}.` };
}

/** An id wins over a name, so that everything can be reached. */
function isCalled({ id, name }: ShelfEntry, word: string): boolean {
  return id === word || name.toLowerCase() === word.toLowerCase();
}
