import { join } from 'node:path';

/** The files of one build. All lie in one folder and begin with the build's id. */
export type BuildFiles = {
  readonly folder: string;
  readonly id: string;
  readonly main: string;
  /** The save before, whole. */
  readonly previous: string;
  readonly lock: string;
};

/** Names of the files of a build: `bench.json`, `bench.prev.json`, `bench.lock`. */
export function buildFiles(folder: string, id: string): BuildFiles {
  return {
    folder,
    id,
    main: join(folder, `${id}.json`),
    previous: join(folder, `${id}.prev.json`),
    lock: join(folder, `${id}.lock`),
  };
}

/** The id of the build that a file belongs to, for its main file and the save before only. */
export function idOfFile(name: string): string | undefined {
  return /^([a-z0-9-]+)(?:\.prev)?\.json$/.exec(name)?.[1];
}

/** Where a damaged file is copied to: `bench.broken-2026-11-25T014033Z.json`, in universal time. */
export function brokenFile({ folder, id }: BuildFiles, nowMs: number): string {
  const time = new Date(nowMs).toISOString().replace(/:|\.\d+/g, '');
  return join(folder, `${id}.broken-${time}.json`);
}
