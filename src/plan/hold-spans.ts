import type { NotchEdge } from '../materials/notch-limits.js';
import type { Mm } from '../measure/quantities.js';
import { lessThan, sameLength } from '../measure/tolerance.js';
import { extent } from '../model/box.js';
import type { Axis, Box, Contact, Model, Notch, Part } from '../model/part.js';
import { picks } from './select.js';

/** A stretch along a board. */
export type Stretch = { readonly from: Mm; readonly to: Mm };

/** A board lying on supports, along its length. */
export type Bearings = {
  readonly beam: Part;
  /** Where supports touch it from below, in order, each once. */
  readonly stands: readonly Stretch[];
  /** The widest clear stretch between two supports, with the supports on either side. */
  readonly clear: Mm;
  readonly left: Stretch;
  readonly right: Stretch;
  /** How far the longer free end reaches past its support. */
  readonly overhang: Mm;
};

/** Parts that any of the paths picks. */
export function partsAt(model: Model, paths: readonly string[]): readonly Part[] {
  return model.parts.filter(part => paths.some(path => picks(path, part.path)));
}

/** How a board lies on the parts of these paths; undefined with fewer than two supports below it. */
export function bearingsOf(model: Model, beam: Part, on: readonly string[]): Bearings | undefined {
  const below = new Set(partsAt(model, on).map(part => part.id));
  const stands = merged(
    model.contacts
      .filter(contact => liesOn(contact, beam.id, below))
      .map(({ patch }) => along(patch, beam.runs)),
  );
  const bays = stands.slice(1).map((right, i) => ({ left: stands[i] ?? right, right }));
  const [first] = [...bays].sort((a, b) => gapOf(b) - gapOf(a));
  if (first === undefined) return undefined;
  const board = along(beam.box, beam.runs);
  const ends = [(stands[0] ?? board).from - board.from, board.to - (stands.at(-1) ?? board).to];
  return { beam, stands, clear: gapOf(first), ...first, overhang: Math.max(...ends) };
}

function gapOf({ left, right }: { readonly left: Stretch; readonly right: Stretch }): Mm {
  return right.from - left.to;
}

/** True for a touching face with the beam above and one of the supports below. */
function liesOn({ a, b, normal }: Contact, beam: string, below: ReadonlySet<string>): boolean {
  if (normal.axis !== 'z') return false;
  const [upper, lower] = normal.toward < 0 ? [a, b] : [b, a];
  return upper === beam && below.has(lower);
}

export function along({ min, max }: Box, axis: Axis): Stretch {
  return { from: min[axis], to: max[axis] };
}

/** Stretches that touch or overlap are one. */
function merged(stretches: readonly Stretch[]): readonly Stretch[] {
  const done: Stretch[] = [];
  for (const next of [...stretches].sort((a, b) => a.from - b.from)) {
    const last = done.at(-1);
    if (last === undefined || lessThan(last.to, next.from)) done.push(next);
    else done[done.length - 1] = { from: last.from, to: Math.max(last.to, next.to) };
  }
  return done;
}

/** The side of a beam that looks down, and the one across, in mm. */
export function standingSizes({ box, runs }: Part): { readonly depth: Mm; readonly breadth: Mm } {
  return { depth: extent(box, 'z'), breadth: extent(box, runs === 'x' ? 'y' : 'x') };
}

/** A notch in a beam by where it lies: over a support, or somewhere in the span. */
export type BeamNotch =
  | {
      readonly at: 'support';
      readonly edge: NotchEdge;
      readonly depth: Mm;
      /** How far it reaches past the inner face of the support. */
      readonly beyond: Mm;
      readonly bearing: Mm;
    }
  | {
      readonly at: 'span';
      readonly edge: NotchEdge;
      readonly depth: Mm;
      readonly length: Mm;
      /** Middle of the notch as a share of the span. */
      readonly share: number;
    }
  /** Cut into a side, neither from above nor from below. */
  | { readonly at: 'side'; readonly depth: Mm };

/** The notches of a beam, seen from its supports. */
export function beamNotches(bearings: Bearings): readonly BeamNotch[] {
  return bearings.beam.notches.map(notch => placedNotch(notch, bearings));
}

function placedNotch({ box }: Notch, bearings: Bearings): BeamNotch {
  const { beam, stands } = bearings;
  const edge = edgeOf(box, beam.box);
  const depth = extent(box, 'z');
  if (edge === undefined) return { at: 'side', depth };
  const cut = along(box, beam.runs);
  const over = stands.find(({ from, to }) => lessThan(cut.from, to) && lessThan(from, cut.to));
  if (over !== undefined) {
    const isLeft = over.from <= bearings.left.from;
    const beyond = isLeft ? cut.to - over.to : over.from - cut.from;
    return {
      at: 'support',
      edge,
      depth,
      beyond: Math.max(0, beyond),
      bearing: over.to - over.from,
    };
  }
  const middle = (cut.from + cut.to) / 2;
  const share = (middle - bearings.left.to) / bearings.clear;
  return { at: 'span', edge, depth, length: cut.to - cut.from, share };
}

/** Cut from above, from below, or neither, as a slot through the side. */
function edgeOf(notch: Box, board: Box): NotchEdge | undefined {
  if (sameLength(notch.min.z, board.min.z)) return 'bottom';
  return sameLength(notch.max.z, board.max.z) ? 'top' : undefined;
}
