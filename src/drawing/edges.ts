import type { Mm } from '../measure/quantities.js';
import { PAPER, type Seen } from './seen.js';
import type { Stroke, Weight } from './strokes.js';

/**
 * The strokes of a view: a line wherever the part or its depth changes from one side to the other, as
 * long as it can be. Coplanar faces of one part run together; those of two parts keep their joint
 * line. A line belongs to the wood nearer to the eye, and is bright when that is in `bright`.
 */
export function edgeStrokes(seen: Seen, bright: ReadonlySet<number>): readonly Stroke[] {
  const upright = seen.us.flatMap((u, i) =>
    runs(seen.vs, j => edgeWeight(seen, bright, { i: i - 1, j }, { i, j })).map(run => ({
      from: { u, v: run.from },
      to: { u, v: run.to },
      weight: run.weight,
    })),
  );
  const level = seen.vs.flatMap((v, j) =>
    runs(seen.us, i => edgeWeight(seen, bright, { i, j: j - 1 }, { i, j })).map(run => ({
      from: { u: run.from, v },
      to: { u: run.to, v },
      weight: run.weight,
    })),
  );
  return [...level, ...upright];
}

type Cell = { readonly i: number; readonly j: number };

/** What kind of line runs between two neighboring cells; undefined for none. */
function edgeWeight(seen: Seen, bright: ReadonlySet<number>, a: Cell, b: Cell): Weight | undefined {
  const [partA, partB] = [seen.partAt(a.i, a.j), seen.partAt(b.i, b.j)];
  const [depthA, depthB] = [seen.depthAt(a.i, a.j), seen.depthAt(b.i, b.j)];
  if (partA === partB && (partA === PAPER || depthA === depthB)) return undefined;
  const isBright =
    (depthA <= depthB && bright.has(partA)) || (depthB <= depthA && bright.has(partB));
  return isBright ? 'bright' : 'plain';
}

type Run = { readonly from: Mm; to: Mm; readonly weight: Weight };

/** Neighboring stretches of the same weight along one grid line, joined. */
function runs(lines: readonly Mm[], weightOf: (stretch: number) => Weight | undefined): Run[] {
  const found: Run[] = [];
  let open: Run | undefined;
  lines.slice(0, -1).forEach((from, stretch) => {
    const to = lines[stretch + 1] ?? from;
    const weight = weightOf(stretch);
    if (open !== undefined && weight === open.weight) {
      open.to = to;
      return;
    }
    open = weight === undefined ? undefined : { from, to, weight };
    if (open !== undefined) found.push(open);
  });
  return found;
}
