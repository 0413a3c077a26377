import { statSync } from 'node:fs';
import { homedir, tmpdir } from 'node:os';
import { isAbsolute } from 'node:path';

/** What a place for data depends on, so that every system can be tried out on one. */
export type Machine = {
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly platform: NodeJS.Platform;
  /** None where the user has no home folder, as in some containers and services. */
  readonly home: string | undefined;
  readonly temp: string;
  readonly workingFolder: string;
};

/** The machine that the program runs on. */
export function thisMachine(): Machine {
  return {
    env: process.env,
    platform: process.platform,
    home: homeFolder(),
    temp: tmpdir(),
    workingFolder: process.cwd(),
  };
}

function homeFolder(): string | undefined {
  try {
    const home = homedir();
    return isAbsolute(home) && statSync(home).isDirectory() ? home : undefined;
  } catch {
    return undefined;
  }
}
