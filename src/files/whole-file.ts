import {
  accessSync,
  closeSync,
  constants,
  copyFileSync,
  fsyncSync,
  linkSync,
  openSync,
  renameSync,
  rmSync,
} from 'node:fs';
import { basename, dirname } from 'node:path';
import Conf from 'conf';
import { tempName } from './temp-name.js';

/**
 * Replaces the content of a JSON file as a whole through `conf`: written beside it, flushed, renamed
 * over it. Throws what the disk throws. A disk that fills up meanwhile may leave a cut-off file with
 * no error, so read it back.
 */
export function replaceWhole(file: string, content: Readonly<Record<string, unknown>>): void {
  // Without the right to write, conf would try again for a second before it says so.
  accessSync(dirname(file), constants.W_OK);
  const writer = new Conf<Record<string, unknown>>({
    cwd: dirname(file),
    configName: basename(file, '.json'),
    accessPropertiesByDotNotation: false,
    clearInvalidConfig: false,
    // Only written through: what is there already was read and judged elsewhere.
    deserialize: () => ({}),
  });
  withoutSnap(() => {
    writer.store = { ...content };
  });
  flushFolder(dirname(file));
}

/** Inside a Snap package `conf` writes in place, and a kill would leave half a file. */
function withoutSnap(write: () => void): void {
  const { SNAP } = process.env;
  delete process.env.SNAP;
  try {
    write();
  } finally {
    if (SNAP !== undefined) process.env.SNAP = SNAP;
  }
}

/**
 * Gives a file a second name that replaces whatever had it, in one piece; a copy where the disk knows
 * no hard links. Throws what the disk throws.
 */
export function alsoAs(file: string, name: string): void {
  const temp = tempName(name);
  try {
    linkOrCopy(file, temp);
    renameSync(temp, name);
  } finally {
    // Renaming one name of a file to another name of the same file leaves both.
    rmSync(temp, { force: true });
  }
}

function linkOrCopy(file: string, name: string): void {
  try {
    linkSync(file, name);
  } catch {
    copyFileSync(file, name, constants.COPYFILE_EXCL);
  }
}

/** After this even a power cut keeps the new name. */
function flushFolder(folder: string): void {
  try {
    const handle = openSync(folder, 'r');
    try {
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
  } catch {
    // Not every system can flush a folder.
  }
}
