import type { Seen } from './seen.js';
import { cornersOf } from './sight.js';
import type { Patch } from './strokes.js';

type Open = {
  readonly part: number;
  readonly fromI: number;
  readonly toI: number;
  readonly fromJ: number;
};

/**
 * What can be seen of the bright parts, as rectangles that do not overlap. A face that something
 * stands before comes as several rectangles, row by row.
 */
export function brightPatches(
  seen: Seen,
  bright: ReadonlySet<number>,
  idOf: (part: number) => string,
): readonly Patch[] {
  const patches: Patch[] = [];
  let open = new Map<string, Open>();
  for (let j = 0; j < seen.vs.length; j += 1) {
    const row = brightRuns(seen, bright, j);
    for (const [key, run] of open) {
      if (!row.has(key)) patches.push(patchOf(seen, run, { toJ: j, part: idOf(run.part) }));
    }
    open = new Map([...row].map(([key, run]) => [key, open.get(key) ?? run]));
  }
  return patches;
}

/** The bright stretches of one row of cells, by what and where they are. */
function brightRuns(seen: Seen, bright: ReadonlySet<number>, j: number): Map<string, Open> {
  const found = new Map<string, Open>();
  let fromI = 0;
  for (let i = 0; i < seen.us.length; i += 1) {
    const part = seen.partAt(i, j);
    const depth = seen.depthAt(i, j);
    if (seen.partAt(i + 1, j) === part && seen.depthAt(i + 1, j) === depth) continue;
    if (bright.has(part))
      found.set(`${part} ${depth} ${fromI} ${i}`, { part, fromI, toI: i + 1, fromJ: j });
    fromI = i + 1;
  }
  return found;
}

function patchOf(seen: Seen, run: Open, { toJ, part }: { toJ: number; part: string }): Patch {
  const u = seen.us[run.fromI] ?? 0;
  const v = seen.vs[run.fromJ] ?? 0;
  const box = {
    u: { from: u, to: seen.us[run.toI] ?? u },
    v: { from: v, to: seen.vs[toJ] ?? v },
  };
  return { part, corners: cornersOf(box), look: 'added', lean: 'right' };
}
