import { closeSync, constants, fstatSync, openSync, readFileSync } from 'node:fs';
import { errorCode } from './disk-trouble.js';

export type FileBytes =
  | { readonly state: 'read'; readonly bytes: Buffer }
  | { readonly state: 'missing' }
  /** `why` is half a sentence: "it is a folder". */
  | { readonly state: 'refused'; readonly why: string };

/** Opening a pipe would wait for somebody to write; Windows has neither the pipes nor the flag. */
const OPEN_FLAGS = constants.O_RDONLY | (constants.O_NONBLOCK ?? 0);

const WHY: Readonly<Record<string, string>> = {
  EACCES: 'you have no right to read it',
  EPERM: 'you have no right to read it',
  EISDIR: 'it is a folder',
};

/** The content of a plain file of at most `mostBytes`, or why there is none. Never throws. */
export function readFileBytes(file: string, mostBytes: number): FileBytes {
  try {
    const handle = openSync(file, OPEN_FLAGS);
    try {
      return fromHandle(handle, mostBytes);
    } finally {
      closeSync(handle);
    }
  } catch (error) {
    const code = errorCode(error) ?? 'unknown error';
    if (code === 'ENOENT' || code === 'ENOTDIR') return { state: 'missing' };
    return refused(WHY[code] ?? `it could not be read (${code})`);
  }
}

function fromHandle(handle: number, mostBytes: number): FileBytes {
  const about = fstatSync(handle);
  if (about.isDirectory()) return refused('it is a folder');
  if (!about.isFile()) return refused('it is no plain file');
  if (about.size > mostBytes) {
    return refused(`it is larger than ${Math.floor(mostBytes / 1024)} KB`);
  }
  return { state: 'read', bytes: readFileSync(handle) };
}

function refused(why: string): FileBytes {
  return { state: 'refused', why };
}
