import { distinct } from '../drawing/distinct.js';
import { boxRound, type PaperBox } from '../drawing/sight.js';
import type { Drawing, Stroke } from '../drawing/strokes.js';
import type { Mm } from '../measure/quantities.js';
import type { Apart, Lines } from './canvas-fit.js';

/** A line across one direction of the paper: where it stands, and from where to where it goes. */
type Crossing = { readonly at: number; readonly from: number; readonly to: number };

/** The lines along u and v of a drawing, with the number of each position. */
export type DrawingLines = {
  readonly u: Lines;
  readonly v: Lines;
  readonly column: ReadonlyMap<Mm, number>;
  readonly row: ReadonlyMap<Mm, number>;
};

/** Lines that keep a cell of their own; all others go where they come to lie. */
const GUIDES: ReadonlySet<Stroke['kind']> = new Set(['visible', 'break', 'phantom']);

/** Bright boards get an inside of a cell at least, to be filled. */
const BRIGHT_APART = 2;

/** Finds which lines of a drawing face each other, so that a board or a gap between them can be kept. */
export function drawingLines(drawing: Drawing): DrawingLines {
  const visible = drawing.strokes.filter(({ kind }) => GUIDES.has(kind));
  const patches = drawing.patches.map(({ part, corners }) => ({ part, box: boxRound(corners) }));
  const signs = [...drawing.labels, ...drawing.rings];
  const us = distinct([
    ...visible.flatMap(stroke => [stroke.from.u, stroke.to.u]),
    ...patches.flatMap(({ box }) => [box.u.from, box.u.to]),
  ]);
  const vs = distinct([
    ...visible.flatMap(stroke => [stroke.from.v, stroke.to.v]),
    ...patches.flatMap(({ box }) => [box.v.from, box.v.to]),
    ...signs.map(({ at }) => at.v),
  ]);
  const numbered = (stroke: Stroke) => ({
    fromU: us.indexOf.get(stroke.from.u) ?? 0,
    toU: us.indexOf.get(stroke.to.u) ?? 0,
    fromV: vs.indexOf.get(stroke.from.v) ?? 0,
    toV: vs.indexOf.get(stroke.to.v) ?? 0,
  });
  const strokes = visible.map(numbered);
  const upright = strokes
    .filter(one => one.fromU === one.toU)
    .map(one => ({ at: one.fromU, from: one.fromV, to: one.toV }));
  const level = strokes
    .filter(one => one.fromV === one.toV)
    .map(one => ({ at: one.fromV, from: one.fromU, to: one.toU }));
  // A line of words needs a row of its own, and so does a screw.
  const words = signs.map(({ at }) => ({
    at: vs.indexOf.get(at.v) ?? 0,
    from: 0,
    to: us.values.length - 1,
  }));
  const largest = largestPatches(patches);
  return {
    u: {
      at: us.values,
      facing: facing(upright, vs.values.length),
      joined: joined(level, upright),
      filled: patchWidths(largest, us.indexOf),
    },
    v: {
      at: vs.values,
      facing: facing([...level, ...words], us.values.length),
      joined: joined(upright, level),
      filled: patchHeights(largest, vs.indexOf),
    },
    column: us.indexOf,
    row: vs.indexOf,
  };
}

/** Pairs of neighboring lines that overlap in the other direction, each pair once. */
function facing(lines: readonly Crossing[], bands: number): Apart[] {
  const rising = [...lines].sort((a, b) => a.at - b.at);
  const last: (number | undefined)[] = Array.from({ length: bands });
  const pairs = new Map<string, Apart>();
  for (const line of rising) {
    const [low, high] = line.from < line.to ? [line.from, line.to] : [line.to, line.from];
    for (let band = low; band < high; band += 1) {
      const before = last[band];
      last[band] = line.at;
      if (before === undefined || before === line.at) continue;
      const key = `${before} ${line.at}`;
      if (!pairs.has(key)) pairs.set(key, { from: before, to: line.at, least: 1, scaled: true });
    }
  }
  return [...pairs.values()];
}

/** Neighboring places where a stroke is met by strokes that cross it, each pair once. */
function joined(strokes: readonly Crossing[], crossing: readonly Crossing[]): Apart[] {
  const rising = [...crossing].sort((a, b) => a.at - b.at);
  const pairs = new Map<string, Apart>();
  for (const stroke of strokes) {
    let before: number | undefined;
    for (const { at, from, to } of rising) {
      if (at < stroke.from || at > stroke.to || stroke.at < from || stroke.at > to) continue;
      if (before !== undefined && before !== at) {
        pairs.set(`${before} ${at}`, { from: before, to: at, least: 1, scaled: false });
      }
      before = at;
    }
  }
  return [...pairs.values()];
}

type Face = { readonly part: string; readonly box: PaperBox };

/** The largest rectangle of each bright board: there it has to be filled, elsewhere it may be. */
function largestPatches(patches: readonly Face[]): readonly PaperBox[] {
  const largest = new Map<string, PaperBox>();
  for (const { part, box } of patches) {
    const before = largest.get(part);
    if (before === undefined || areaOf(before) < areaOf(box)) largest.set(part, box);
  }
  return [...largest.values()];
}

function areaOf({ u, v }: PaperBox): number {
  return (u.to - u.from) * (v.to - v.from);
}

function patchWidths(boxes: readonly PaperBox[], numberOf: ReadonlyMap<Mm, number>): Apart[] {
  return boxes.map(({ u }) => brightApart(numberOf.get(u.from), numberOf.get(u.to)));
}

function patchHeights(boxes: readonly PaperBox[], numberOf: ReadonlyMap<Mm, number>): Apart[] {
  return boxes.map(({ v }) => brightApart(numberOf.get(v.from), numberOf.get(v.to)));
}

function brightApart(from: number | undefined, to: number | undefined): Apart {
  return { from: from ?? 0, to: to ?? 0, least: BRIGHT_APART, scaled: false };
}
