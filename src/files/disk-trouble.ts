import { statfsSync } from 'node:fs';
import { dirname } from 'node:path';

export type DiskProblem = 'disk-full' | 'read-only' | 'gone' | 'other';

/** Why the disk did not do what it was asked to, in one or two sentences a person can act on. */
export type DiskTrouble = { readonly problem: DiskProblem; readonly words: string };

/** Less room than this and a build of a few pages may no longer fit. */
const ROOM_BYTES = 64 * 1024;

/** The code of a system error, `ENOSPC` for example; none for anything else that was thrown. */
export function errorCode(error: unknown): string | undefined {
  if (!(error instanceof Error) || !('code' in error)) return undefined;
  return typeof error.code === 'string' ? error.code : undefined;
}

/** What an error thrown while writing to a file means for the builder. */
export function diskTrouble(error: unknown, file: string): DiskTrouble {
  const code = errorCode(error);
  switch (code) {
    case 'ENOSPC':
    case 'EDQUOT':
    case 'EFBIG':
      return diskFull(file);
    case 'EROFS':
    case 'EACCES':
    case 'EPERM':
      return readOnly(file);
    case 'ENOENT':
    case 'ENOTDIR':
      return gone(file);
    default:
      return other(file, code ?? (error instanceof Error ? error.message : String(error)));
  }
}

/**
 * A file that came out shorter than what was written, with no error: nearly always a disk that filled
 * up just then.
 */
export function cutOff(file: string): DiskTrouble {
  return hasRoom(dirname(file)) ? other(file, 'what was read back differs') : diskFull(file);
}

function hasRoom(folder: string): boolean {
  try {
    const { bavail, bsize } = statfsSync(folder);
    return bavail * bsize > ROOM_BYTES;
  } catch {
    return true;
  }
}

function diskFull(file: string): DiskTrouble {
  return {
    problem: 'disk-full',
    words: `The disk that holds ${file} is full. Make some room on it; the next key tries again.`,
  };
}

function readOnly(file: string): DiskTrouble {
  return {
    problem: 'read-only',
    words: `${file} may not be written. Give yourself the right to write there, or start with --data and another folder.`,
  };
}

function gone(file: string): DiskTrouble {
  return {
    problem: 'gone',
    words: `${dirname(file)} is not there, or is not a folder. Put the disk back or make the folder again; the next key tries again.`,
  };
}

function other(file: string, why: string): DiskTrouble {
  return {
    problem: 'other',
    words: `${file} could not be written (${why}). The next key tries again.`,
  };
}
