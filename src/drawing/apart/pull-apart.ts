import type { Mm } from '../../measure/quantities.js';
import { lessThan } from '../../measure/tolerance.js';
import { bounds, extent, otherAxes } from '../../model/box.js';
import {
  AXES,
  type Axis,
  type Box,
  type Contact,
  type Part,
  type Point,
  type Side,
} from '../../model/part.js';
import { type Held, type Unit, unitsOf } from './units.js';

/** How a unit is drawn away from its place. */
export type Pulled = { readonly unit: Unit; readonly way: Side; readonly by: Mm };

export type Apart = {
  readonly bright: readonly Part[];
  readonly standing: readonly Part[];
  /** What was held together before moves as one. */
  readonly held: readonly Held[];
  readonly contacts: readonly Contact[];
};

/** How far, as a share of the whole, but neither too little to see nor so far that it is lost; by looking. */
const SHARE = 0.2;
const [LEAST, MOST]: readonly [Mm, Mm] = [60, 200];

/** Up first, since most things are set down; then toward whoever looks. */
const WAYS: readonly Side[] = [
  { axis: 'z', toward: 1 },
  { axis: 'y', toward: -1 },
  { axis: 'x', toward: 1 },
  { axis: 'x', toward: -1 },
  { axis: 'y', toward: 1 },
  { axis: 'z', toward: -1 },
];

/**
 * Takes boards off in the order in which they come off, each straight away from what it lies on, the last
 * one to be set farthest out: the way back is the way it is put together. What cannot come off straight
 * stays in its place.
 */
export function pullApart({ bright, standing, held, contacts }: Apart): readonly Pulled[] {
  const all = bounds([...bright, ...standing].map(({ box }) => box));
  if (all === undefined) return [];
  const isBright = new Set(bright);
  const beneath = standing.filter(part => !isBright.has(part));
  const units = unitsOf([...beneath, ...bright], held);
  let left = units.filter(unit => unit.every(part => isBright.has(part)));
  // What hangs together with something that stands there stands there, too.
  const fixed = units.filter(unit => !left.includes(unit)).flat();
  const rounds: { unit: Unit; way: Side }[][] = [];
  while (left.length > 0) {
    const there = [...fixed, ...left.flat()];
    const round = comingOff(left, there, contacts);
    if (round.length === 0) break;
    rounds.push(round);
    const gone = new Set(round.map(({ unit }) => unit));
    left = left.filter(unit => !gone.has(unit));
    // The last unit needs no pulling where nothing else is there: it is what the others are set on.
    if (left.length === 1 && fixed.length === 0) break;
  }
  const most = Math.max(...AXES.map(axis => extent(all, axis)));
  const step = Math.min(MOST, Math.max(LEAST, most * SHARE));
  return rounds.flatMap((round, at) =>
    round.map(({ unit, way }) => ({ unit, way, by: step * (rounds.length - at) })),
  );
}

/** Which units can come off now, and which way: straight off what they lie on, if that is open. */
function comingOff(units: readonly Unit[], there: readonly Part[], contacts: readonly Contact[]) {
  const rated = units.map(unit => ({ unit, ways: openWays(unit, there, contacts) }));
  const straight = rated.flatMap(({ unit, ways }) => {
    const [best] = ways.filter(({ rate }) => rate > 0);
    return best === undefined ? [] : [{ unit, way: best.way }];
  });
  if (straight.length > 0) return straight;
  return rated.flatMap(({ unit, ways }) =>
    ways[0] === undefined ? [] : [{ unit, way: ways[0].way }],
  );
}

/** The ways that are open to a unit, those first that lead off the largest faces it lies on. */
function openWays(unit: Unit, there: readonly Part[], contacts: readonly Contact[]) {
  const own = new Set(unit.map(({ id }) => id));
  const others = there.filter(({ id }) => !own.has(id));
  const isThere = new Set(others.map(({ id }) => id));
  return WAYS.filter(way => isOpen(unit, others, way))
    .map(way => ({ way, rate: rateOf(way, { own, isThere, contacts }) }))
    .sort((a, b) => b.rate - a.rate);
}

type Touching = {
  readonly own: ReadonlySet<string>;
  readonly isThere: ReadonlySet<string>;
  readonly contacts: readonly Contact[];
};

/** The faces that a unit leaves when it goes this way, less those that it would be pushed onto. */
function rateOf({ axis, toward }: Side, { own, isThere, contacts }: Touching): number {
  return contacts.reduce((sum, { a, b, normal, area }) => {
    if (normal.axis !== axis) return sum;
    if (own.has(b) && isThere.has(a)) return sum + area * normal.toward * toward;
    if (own.has(a) && isThere.has(b)) return sum - area * normal.toward * toward;
    return sum;
  }, 0);
}

/** True when nothing stands before any board of the unit on its way out. */
function isOpen(unit: Unit, others: readonly Part[], way: Side): boolean {
  const whole = bounds(unit.map(({ box }) => box));
  if (whole === undefined) return true;
  const ahead = others.filter(({ box }) => blocks(box, whole, way)).flatMap(({ solid }) => solid);
  if (ahead.length === 0) return true;
  return unit.every(({ solid }) => solid.every(box => ahead.every(it => !blocks(it, box, way))));
}

function blocks(other: Box, box: Box, { axis, toward }: Side): boolean {
  const isAhead =
    toward > 0
      ? lessThan(box.min[axis], other.max[axis])
      : lessThan(other.min[axis], box.max[axis]);
  return isAhead && otherAxes(axis).every(across => overlap(other, box, across));
}

function overlap(a: Box, b: Box, axis: Axis): boolean {
  return lessThan(a.min[axis], b.max[axis]) && lessThan(b.min[axis], a.max[axis]);
}

/** From its place to where a unit is drawn. */
export function movedBy({ way, by }: Pulled): Point {
  return { x: 0, y: 0, z: 0, [way.axis]: way.toward * by };
}
