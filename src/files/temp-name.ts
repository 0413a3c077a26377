import { randomBytes, randomInt } from 'node:crypto';
import { readdirSync, statSync, unlinkSync } from 'node:fs';
import { join } from 'node:path';

/** What a program killed in the middle of a write leaves behind: ours and those of `conf` alike. */
const TEMP = /^[a-z0-9-]+\.(?:json|prev\.json|lock)\.tmp-\d{10}[0-9a-f]{6}$/;
const STALE_MS = 3_600_000;

/** A name beside the file for a moment: `bench.json.tmp-1764039600a1b2c3`. */
export function tempName(file: string): string {
  return `${file}.tmp-${randomInt(1e9, 1e10)}${randomBytes(3).toString('hex')}`;
}

/** Clears away temporary files older than an hour; younger ones may belong to a running program. */
export function sweepTemps(folder: string, nowMs: number): void {
  for (const name of namesIn(folder)) {
    if (TEMP.test(name)) removeStale(join(folder, name), nowMs);
  }
}

function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}

function removeStale(file: string, nowMs: number): void {
  try {
    if (nowMs - statSync(file).mtimeMs > STALE_MS) unlinkSync(file);
  } catch {
    // One that stays does no harm.
  }
}
