import { mkdirSync, renameSync } from 'node:fs';
import { join } from 'node:path';
import * as z from 'zod/mini';
import type { Learned } from '../workbook/learned.js';
import { type DiskTrouble, diskTrouble } from './disk-trouble.js';
import { readFileBytes } from './read-file.js';
import { replaceWhole } from './whole-file.js';

/** What helpers did and learned, kept beside the builds. */
export type HelperStore = {
  /** Of all builds; nothing where there is no file. */
  readonly known: () => readonly Learned[];
  /** Takes the place of what was kept of that build; `undefined` takes it away. */
  readonly keep: (build: string, learned: Learned | undefined) => DiskTrouble | undefined;
};

const FORMAT = 1;
const count = z.int().check(z.nonnegative());
const FORM = z.strictObject({
  format: z.literal(FORMAT),
  builds: z.array(
    z.strictObject({
      build: z.string(),
      tools: z.array(z.strictObject({ tool: z.string(), atMs: z.number() })),
      alone: count,
      together: count,
      sinceMs: z.number(),
      lastAtMs: z.number(),
    }),
  ),
});
const MOST_BYTES = 4 * 1024 * 1024;

/**
 * The helper file of a data folder. A file that can't be read is moved aside, never overwritten; one
 * of a newer program is left alone. Writing that fails is told, and tried again with the next change.
 */
export function helperStore(folder: string, now: () => number): HelperStore {
  const file = join(folder, 'helper.json');
  const written = new Map<string, string>();
  return {
    known: () => read(file, now()) ?? [],
    keep: (build, learned) => {
      const text = JSON.stringify(learned ?? null);
      if (written.get(build) === text) return undefined;
      const there = read(file, now());
      if (there === undefined) return undefined;
      const before = there.find(one => one.build === build);
      if (JSON.stringify(before ?? null) !== text) {
        const others = there.filter(one => one !== before);
        const trouble = write(file, learned === undefined ? others : [...others, learned]);
        if (trouble !== undefined) return trouble;
      }
      written.set(build, text);
      return undefined;
    },
  };

  function write(to: string, builds: readonly Learned[]): DiskTrouble | undefined {
    try {
      mkdirSync(folder, { recursive: true });
      replaceWhole(to, { format: FORMAT, builds });
      return undefined;
    } catch (error) {
      return diskTrouble(error, to);
    }
  }
}

/** None where the file must not be touched. */
function read(file: string, nowMs: number): readonly Learned[] | undefined {
  const found = readFileBytes(file, MOST_BYTES);
  if (found.state === 'missing') return [];
  if (found.state === 'refused') return undefined;
  const saved = asJson(found.bytes.toString('utf8'));
  const result = FORM.safeParse(saved);
  if (result.success) return result.data.builds;
  if (isNewer(saved)) return undefined;
  return moveAside(file, nowMs) ? [] : undefined;
}

function asJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function isNewer(saved: unknown): boolean {
  if (typeof saved !== 'object' || saved === null || !('format' in saved)) return false;
  return typeof saved.format === 'number' && saved.format > FORMAT;
}

function moveAside(file: string, nowMs: number): boolean {
  const time = new Date(nowMs).toISOString().replace(/:|\.\d+/g, '');
  try {
    renameSync(file, file.replace(/\.json$/, `.broken-${time}.json`));
    return true;
  } catch {
    return false;
  }
}
