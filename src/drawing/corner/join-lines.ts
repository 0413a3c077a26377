import type { Mm } from '../../measure/quantities.js';
import { lessThan } from '../../measure/tolerance.js';
import type { Axis } from '../../model/part.js';
import type { PaperPoint, Stroke } from '../strokes.js';

/** A stroke along one of the three directions of a corner view. */
export type Along = { readonly axis: Axis; readonly stroke: Stroke };

type Stretch = { from: Mm; to: Mm };
type Line = { readonly at: (along: Mm) => PaperPoint; bright: Stretch[]; plain: Stretch[] };

/** Lines nearer to each other than this, in mm, are one on any paper. */
const ONE_LINE: Mm = 1e-3;

/**
 * Strokes that lie on each other drawn once, and those that go on in one line drawn as one: two boards
 * that lie flush have an edge each in the same place. Where one of them is bright, the line is.
 */
export function joinLines(strokes: readonly Along[]): readonly Stroke[] {
  const lines = new Map<string, Line>();
  for (const { axis, stroke } of strokes) {
    const { key, at, along } = lineOf(axis, stroke);
    const line = lines.get(key) ?? { at, bright: [], plain: [] };
    lines.set(key, line);
    line[stroke.bright ? 'bright' : 'plain'].push(along);
  }
  return [...lines.values()].flatMap(line => {
    const bright = united(line.bright);
    const plain = bright.reduce(
      (left, hidden) => left.flatMap(it => without(it, hidden)),
      united(line.plain),
    );
    const stroke =
      (isBright: boolean) =>
      ({ from, to }: Stretch): Stroke => ({
        from: line.at(from),
        to: line.at(to),
        kind: 'visible',
        bright: isBright,
      });
    return [...plain.map(stroke(false)), ...bright.map(stroke(true))];
  });
}

/** Upright lines are told by u, the others by where they cross u = 0. */
function lineOf(axis: Axis, { from, to }: Stroke) {
  const isUpright = axis === 'z';
  const slope = isUpright ? 0 : (to.v - from.v) / (to.u - from.u);
  const off = isUpright ? from.u : from.v - slope * from.u;
  const ends = isUpright ? [from.v, to.v] : [from.u, to.u];
  const at = (along: Mm): PaperPoint =>
    isUpright ? { u: off, v: along } : { u: along, v: off + slope * along };
  const way = isUpright ? 'up' : slope > 0 ? 'rises' : 'falls';
  return {
    key: `${way} ${Math.round(off / ONE_LINE)}`,
    at,
    along: { from: Math.min(...ends), to: Math.max(...ends) },
  };
}

function united(stretches: readonly Stretch[]): Stretch[] {
  const found: Stretch[] = [];
  for (const { from, to } of [...stretches].sort((a, b) => a.from - b.from)) {
    const last = found.at(-1);
    if (last !== undefined && !lessThan(last.to + ONE_LINE, from)) last.to = Math.max(last.to, to);
    else found.push({ from, to });
  }
  return found;
}

function without(one: Stretch, hidden: Stretch): Stretch[] {
  return [
    { from: one.from, to: Math.min(one.to, hidden.from) },
    { from: Math.max(one.from, hidden.to), to: one.to },
  ].filter(left => lessThan(left.from + ONE_LINE, left.to));
}
