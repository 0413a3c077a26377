import { posix, win32 } from 'node:path';
import type { Machine } from './machine.js';

/** The folder that holds everything a builder has made, and what to say about it before starting. */
export type DataPlace = { readonly folder: string; readonly warning: string | undefined };

/**
 * Where builds are kept: the folder asked for with `--data`, else `NOTCHBOOK_HOME`, else `notchbook`
 * in `XDG_DATA_HOME`, else the usual place of the system. Without a home folder they go to the
 * temporary folder, with a warning. Nothing is made here.
 */
export function dataPlace(asked: string | undefined, machine: Machine): DataPlace {
  const named = [asked, machine.env.NOTCHBOOK_HOME].find(isGiven);
  if (named !== undefined) return { folder: resolved(named, machine), warning: undefined };
  const usual = usualFolder(machine);
  if (usual !== undefined) return { folder: usual, warning: undefined };
  const { join } = pathsOf(machine);
  const folder = join(machine.temp, 'notchbook');
  return {
    folder,
    warning: `No home folder was found, so builds are kept in ${folder}, which may be emptied at the next restart. Name a folder that stays with --data or NOTCHBOOK_HOME.`,
  };
}

function isGiven(text: string | undefined): text is string {
  return text !== undefined && text.trim() !== '';
}

function pathsOf({ platform }: Machine): typeof posix {
  return platform === 'win32' ? win32 : posix;
}

/** `--data=~/bench` reaches the program with the tilde still in it. */
function resolved(named: string, machine: Machine): string {
  const { resolve, join } = pathsOf(machine);
  const { home, workingFolder } = machine;
  if (home !== undefined && /^~(?:[/\\]|$)/.test(named)) return join(home, named.slice(1));
  return resolve(workingFolder, named);
}

/** A relative `XDG_DATA_HOME` does not count: XDG Base Directory Specification. */
function usualFolder(machine: Machine): string | undefined {
  const { env, home, platform } = machine;
  const { isAbsolute, join } = pathsOf(machine);
  const { XDG_DATA_HOME, APPDATA } = env;
  if (isGiven(XDG_DATA_HOME) && isAbsolute(XDG_DATA_HOME)) return join(XDG_DATA_HOME, 'notchbook');
  if (platform === 'win32' && isGiven(APPDATA)) return join(APPDATA, 'notchbook');
  if (home === undefined) return undefined;
  if (platform === 'win32') return join(home, 'AppData', 'Roaming', 'notchbook');
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', 'notchbook');
  return join(home, '.local', 'share', 'notchbook');
}
