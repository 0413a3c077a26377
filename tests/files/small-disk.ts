import { spawnSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';

/** A disk of a few hundred KB in memory, mounted on a folder. */
export type SmallDisk = {
  readonly folder: string;
  readonly mayWrite: (may: boolean) => void;
  readonly unmount: () => void;
};

/** None where this machine lets nobody mount one: not Linux, or not root. */
export function mountSmallDisk(folder: string, kilobytes: number): SmallDisk | undefined {
  if (process.platform !== 'linux') return undefined;
  mkdirSync(folder, { recursive: true });
  if (!mount(['-t', 'tmpfs', '-o', `size=${kilobytes}k`, 'tmpfs', folder])) return undefined;
  return {
    folder,
    mayWrite: may => {
      if (!mount(['-o', `remount,${may ? 'rw' : 'ro'}`, folder])) throw new Error('no remount');
    },
    unmount: () => {
      spawnSync('umount', [folder]);
    },
  };
}

function mount(args: readonly string[]): boolean {
  return spawnSync('mount', args, { stdio: 'ignore' }).status === 0;
}
