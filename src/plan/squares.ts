import { DIAGONALS_MAY_DIFFER, diagonalOf, diagonalTolerance } from '../materials/square.js';
import { COMPUTED, type Figure, type Source } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import { feet } from '../measure/inch.js';
import type { Display, Mm } from '../measure/quantities.js';
import { atMost, lengthKey, lessThan } from '../measure/tolerance.js';
import { bounds, extent } from '../model/box.js';
import type { Axis, Box, Joint, Model, Part } from '../model/part.js';
import type { StepRule } from '../recipe/recipe.js';
import { sharedStand } from './glue-ups.js';
import { onTheTape } from './on-tape.js';
import { selectJoints, selectParts } from './select.js';

/** A rectangle that a step closes: its diagonals prove it. */
export type SquareRow = {
  readonly step: string;
  /** Flat, or a box that is looked at from above. */
  readonly kind: 'panel' | 'box';
  readonly long: Figure;
  readonly wide: Figure;
  readonly count: number;
  readonly diagonal: Figure;
  readonly mayDiffer: Figure;
};

type Rectangle = { readonly kind: SquareRow['kind']; readonly long: Mm; readonly wide: Mm };

/**
 * The rectangles of each step, alike ones together: joined boards of one sub-assembly with a joint near
 * each of the four corners of what they fill. A rectangle that an earlier step has closed is not told again.
 */
export function squareRows(
  rules: readonly StepRule[],
  model: Model,
  display: Display,
): readonly SquareRow[] {
  const partById = new Map(model.parts.map(part => [part.id, part]));
  const told = new Set<string>();
  return rules.flatMap(rule => {
    // What brads hold is laid into something that is square already.
    const joints = jointsOf(rule, model).filter(joint => joint.with !== 'brad');
    if (joints.length < CORNERS) return [];
    const found = standsOf(joints).flatMap(([stand, own]) => {
      const rectangle = rectangleOf(own, stand, partById);
      if (rectangle === undefined) return [];
      const key = `${stand} ${sidesOf(rectangle)}`;
      if (told.has(key)) return [];
      if (rule.joins.length > 0) told.add(key);
      return [rectangle];
    });
    // Fitted dry is one of them, to see whether all will go together.
    const dry = rule.joins.length === 0;
    return alike(found).map(same => rowOf(rule.id, dry ? same.slice(0, 1) : same, display));
  });
}

const CORNERS = 4;

/** Joints that a step closes; where it only fits boards dry, those between the boards it sets. */
function jointsOf(rule: StepRule, model: Model): readonly Joint[] {
  if (rule.joins.length > 0) return selectJoints(model, rule.joins);
  if (rule.phase !== 'dry-fit') return [];
  const set = new Set(selectParts(model, rule.sets).map(({ id }) => id));
  return model.joints.filter(({ from, into }) => set.has(from) && set.has(into));
}

function standsOf(joints: readonly Joint[]): readonly (readonly [string, readonly Joint[]])[] {
  const groups = new Map<string, Joint[]>();
  for (const joint of joints) {
    const of = sharedStand(joint.from, joint.into);
    const own = groups.get(of);
    if (own === undefined) groups.set(of, [joint]);
    else own.push(joint);
  }
  return [...groups];
}

/** Share of the widest board that a corner's joint may lie off the corner. */
const NEAR = 0.75;

function rectangleOf(
  joints: readonly Joint[],
  stand: string,
  partById: ReadonlyMap<string, Part>,
): Rectangle | undefined {
  if (joints.length < CORNERS || !isOnePiece(joints, stand)) return undefined;
  const ids = new Set(joints.flatMap(({ from, into }) => [from, into]));
  const parts = [...ids].flatMap(id => partById.get(id) ?? []);
  const box = bounds(parts.map(part => part.box));
  if (box === undefined) return undefined;
  const board = Math.max(...parts.map(({ section }) => section.width));
  const thin = (['y', 'x', 'z'] as const).find(axis => atMost(extent(box, axis), board));
  const [one, other] = planeOf(thin);
  const patches = joints.map(({ patch }) => patch);
  if (!reachesCorners(patches, box, { one, other, near: board * NEAR })) return undefined;
  const sides = [extent(box, one), extent(box, other)];
  return {
    kind: thin === undefined ? 'box' : 'panel',
    long: Math.max(...sides),
    wide: Math.min(...sides),
  };
}

function planeOf(thin: Axis | undefined): readonly [Axis, Axis] {
  if (thin === 'x') return ['y', 'z'];
  return thin === 'y' ? ['x', 'z'] : ['x', 'y'];
}

/** True when all boards hang together through these joints, those of one panel being joined already. */
function isOnePiece(joints: readonly Joint[], stand: string): boolean {
  const pairs = joints.map(
    ({ from, into }) => [pieceIn(from, stand), pieceIn(into, stand)] as const,
  );
  const reached = new Set<string>();
  const open = [pairs[0]?.[0] ?? ''];
  for (let piece = open.pop(); piece !== undefined; piece = open.pop()) {
    if (reached.has(piece)) continue;
    reached.add(piece);
    for (const [one, other] of pairs) {
      if (one === piece) open.push(other);
      if (other === piece) open.push(one);
    }
  }
  return pairs.every(([one]) => reached.has(one));
}

/** The panel, or the board alone, that a part belongs to within a stand. */
function pieceIn(id: string, stand: string): string {
  const inside = stand === '' ? id : id.slice(stand.length + 1);
  return inside.split('.')[0] ?? inside;
}

type Plane = { readonly one: Axis; readonly other: Axis; readonly near: Mm };

function reachesCorners(patches: readonly Box[], box: Box, { one, other, near }: Plane): boolean {
  const off = (patch: Box, axis: Axis, end: 'min' | 'max') =>
    Math.abs(patch[end][axis] - box[end][axis]);
  return (['min', 'max'] as const).every(a =>
    (['min', 'max'] as const).every(b =>
      patches.some(
        patch => lessThan(off(patch, one, a), near) && lessThan(off(patch, other, b), near),
      ),
    ),
  );
}

function sidesOf({ long, wide }: Rectangle): string {
  return `${lengthKey(long)} ${lengthKey(wide)}`;
}

function alike(found: readonly Rectangle[]): readonly (readonly Rectangle[])[] {
  const groups = new Map<string, Rectangle[]>();
  for (const rectangle of found) {
    const key = `${rectangle.kind} ${sidesOf(rectangle)}`;
    groups.set(key, [...(groups.get(key) ?? []), rectangle]);
  }
  return [...groups.values()];
}

function rowOf(step: string, same: readonly Rectangle[], display: Display): SquareRow {
  const [first] = same;
  if (first === undefined) throw new Error('a kind of rectangle without one');
  const { kind, long, wide } = first;
  const length = (mm: Mm) => onTheTape(mm, display);
  const root = `root of ${length(long)} squared and ${length(wide)} squared`;
  return {
    step,
    kind,
    long: figure(long, 'mm', 'outside, over the boards that it joins', COMPUTED),
    wide: figure(wide, 'mm', 'outside, over the boards that it joins', COMPUTED),
    count: same.length,
    diagonal: figure(diagonalOf(long, wide), 'mm', root, COMPUTED),
    mayDiffer: figure(
      diagonalTolerance(long),
      'mm',
      'how far the two diagonals may differ, by the longer side',
      toleranceSource(long),
    ),
  };
}

function toleranceSource(longerSide: Mm): Source {
  const { toFourFeet, toEightFeet, longer } = DIAGONALS_MAY_DIFFER;
  if (atMost(longerSide, feet(4))) return toFourFeet.source;
  return atMost(longerSide, feet(8)) ? toEightFeet.source : longer.source;
}
