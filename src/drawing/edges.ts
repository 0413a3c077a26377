import type { Mm } from '../measure/quantities.js';
import { PAPER, type Seen } from './seen.js';
import type { Stroke } from './strokes.js';

/**
 * The strokes of a view: a line wherever the part or its depth changes from one side to the other, as
 * long as it can be. Coplanar faces of one part run together; those of two parts keep their joint
 * line. A line belongs to the wood nearer to the eye, and is bright when that is in `bright`.
 */
export function edgeStrokes(seen: Seen, bright: ReadonlySet<number>): readonly Stroke[] {
  const upright = seen.us.flatMap((u, i) =>
    runs(seen.vs, j => edgeBetween(seen, bright, { i: i - 1, j }, { i, j })).map(run => ({
      from: { u, v: run.from },
      to: { u, v: run.to },
      kind: 'visible' as const,
      bright: run.edge === 'bright',
    })),
  );
  const level = seen.vs.flatMap((v, j) =>
    runs(seen.us, i => edgeBetween(seen, bright, { i, j: j - 1 }, { i, j })).map(run => ({
      from: { u: run.from, v },
      to: { u: run.to, v },
      kind: 'visible' as const,
      bright: run.edge === 'bright',
    })),
  );
  return [...level, ...upright];
}

type Edge = 'bright' | 'plain';

type Cell = { readonly i: number; readonly j: number };

/** What kind of line runs between two neighboring cells; undefined for none. */
function edgeBetween(seen: Seen, bright: ReadonlySet<number>, a: Cell, b: Cell): Edge | undefined {
  const [partA, partB] = [seen.partAt(a.i, a.j), seen.partAt(b.i, b.j)];
  const [depthA, depthB] = [seen.depthAt(a.i, a.j), seen.depthAt(b.i, b.j)];
  if (partA === partB && (partA === PAPER || depthA === depthB)) return undefined;
  const isBright =
    (depthA <= depthB && bright.has(partA)) || (depthB <= depthA && bright.has(partB));
  return isBright ? 'bright' : 'plain';
}

type Run = { readonly from: Mm; to: Mm; readonly edge: Edge };

/** Neighboring stretches of the same edge along one grid line, joined. */
function runs(lines: readonly Mm[], edgeAt: (stretch: number) => Edge | undefined): Run[] {
  const found: Run[] = [];
  let open: Run | undefined;
  lines.slice(0, -1).forEach((from, stretch) => {
    const to = lines[stretch + 1] ?? from;
    const edge = edgeAt(stretch);
    if (open !== undefined && edge === open.edge) {
      open.to = to;
      return;
    }
    open = edge === undefined ? undefined : { from, to, edge };
    if (open !== undefined) found.push(open);
  });
  return found;
}
