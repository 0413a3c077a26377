import { readFileSync } from 'node:fs';
import { hostname } from 'node:os';
import * as z from 'zod/mini';
import { errorCode } from './disk-trouble.js';

/** Who has a build open: what a lock file says. */
export type Holder = {
  readonly pid: number;
  /** Start of that process, so that a later one with the same number is not taken for it. */
  readonly born: string;
  readonly host: string;
  /** Tells two sessions of one process apart. */
  readonly token: string;
  readonly sinceMs: number;
};

const HOLDER_FORM = z.strictObject({
  pid: z.int().check(z.positive()),
  born: z.string(),
  host: z.string(),
  token: z.string(),
  sinceMs: z.number(),
});

/** This process as a holder. */
export function thisHolder(token: string, nowMs: number): Holder {
  const { pid } = process;
  return { pid, born: bornOf(pid) ?? '', host: hostname(), token, sinceMs: nowMs };
}

/** The holder that a lock file names; none where the file is cut off or not ours. */
export function holderIn(text: string): Holder | undefined {
  try {
    const result = HOLDER_FORM.safeParse(JSON.parse(text));
    return result.success ? result.data : undefined;
  } catch {
    return undefined;
  }
}

/**
 * Does the holder still run? On another machine nobody can know, so it counts as running. A process
 * that was killed but not yet cleared away is dead.
 */
export function isAlive({ pid, born, host }: Holder): boolean {
  if (host !== hostname()) return true;
  const bornNow = bornOf(pid);
  if (bornNow !== undefined && born !== '') return bornNow === born;
  return answersSignal(pid);
}

/** "process 4242 on garage". */
export function holderWords({ pid, host }: Holder): string {
  return `process ${pid} on ${host}`;
}

/**
 * When a process started, as the kernel of this boot counts it; `dead` where there is no such process;
 * none where there is no `/proc`. Fields 3 and 22 of `stat`: proc(5).
 */
function bornOf(pid: number): string | undefined {
  const boot = procText('sys/kernel/random/boot_id');
  if (boot === undefined) return undefined;
  const stat = procText(`${pid}/stat`);
  if (stat === undefined) return 'dead';
  // The name in field 2 is in parentheses and may hold anything, spaces and parentheses too.
  const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
  const [state = '', start = ''] = [fields[0], fields[19]];
  return /^[ZX]/.test(state) ? 'dead' : `${boot.trim()} ${start}`;
}

function procText(name: string): string | undefined {
  try {
    return readFileSync(`/proc/${name}`, 'utf8');
  } catch {
    return undefined;
  }
}

/** Signal 0 only asks. Somebody else's process may not be signaled, and runs all the same. */
function answersSignal(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    return errorCode(error) === 'EPERM';
  }
}
