import type { Mm } from '../measure/quantities.js';
import { atMost, sameLength } from '../measure/tolerance.js';
import { center, faceArea, otherAxes } from './box.js';
import type { Axis, Box, Contact, Part, Point, Side } from './part.js';
import { connectedPatches, largestRectangle } from './patches.js';

/** One place where a pair lies on each other: the largest rectangle in it, and the way from head to point. */
export type JointPlace = { readonly patch: Box; readonly drive: Side };

/**
 * The places of a pair square to a driving axis. Patches that hang together are one place; screws go
 * into its largest rectangle. Without an axis the axis of the largest place is taken.
 * @param head id of the part under the head of the fastener
 */
export function jointPlaces(
  contacts: readonly Contact[],
  head: string,
  drive: Axis | undefined,
): readonly JointPlace[] {
  const axis = drive ?? widestAxis(contacts);
  if (axis === undefined) return [];
  const square = contacts.filter(contact => contact.normal.axis === axis);
  if (square.length === 1) return square.map(contact => placeOf([contact.patch], contact, head));
  return planes(square).flatMap(plane =>
    connectedPatches(
      plane.map(contact => contact.patch),
      axis,
    ).flatMap(patches => plane.slice(0, 1).map(contact => placeOf(patches, contact, head))),
  );
}

/**
 * How far a solid reaches without a gap, starting at a face, along the line through a point: a rail of
 * 3-1/2 in that is notched to half its depth over the post reaches 1-3/4 in there.
 * @param toward the way into the wood
 */
export function depthAt(solid: readonly Box[], from: Point, toward: Side): Mm {
  const { axis } = toward;
  let reached = from[axis];
  let next = nextBox(solid, from, { side: toward, reached });
  while (next !== undefined) {
    reached = toward.toward === 1 ? next.max[axis] : next.min[axis];
    next = nextBox(solid, from, { side: toward, reached });
  }
  return Math.abs(reached - from[axis]);
}

/** Wood under the head and wood around the point of a fastener driven through the middle of a place. */
export function driveDepths(
  place: JointPlace,
  head: Part,
  point: Part,
): { readonly through: Mm; readonly holds: Mm } {
  const middle = center(place.patch);
  const back: Side = { axis: place.drive.axis, toward: place.drive.toward === 1 ? -1 : 1 };
  return {
    through: depthAt(head.solid, middle, back),
    holds: depthAt(point.solid, middle, place.drive),
  };
}

function placeOf(patches: readonly Box[], contact: Contact, head: string): JointPlace {
  const { axis, toward } = contact.normal;
  const away = toward === 1 ? -1 : 1;
  return {
    patch: largestRectangle(patches, axis),
    drive: { axis, toward: contact.a === head ? toward : away },
  };
}

function widestAxis(contacts: readonly Contact[]): Axis | undefined {
  let widest: Contact | undefined;
  for (const contact of contacts) {
    if (widest === undefined || contact.area > widest.area) widest = contact;
  }
  return widest === undefined ? undefined : widest.normal.axis;
}

/** Contacts in groups that lie in one plane and look the same way. */
function planes(contacts: readonly Contact[]): readonly (readonly Contact[])[] {
  const groups: Contact[][] = [];
  for (const contact of contacts) {
    const same = groups.find(group => group.every(other => samePlane(contact, other)));
    if (same === undefined) groups.push([contact]);
    else same.push(contact);
  }
  return groups;
}

function samePlane(a: Contact, b: Contact): boolean {
  const { axis, toward } = a.normal;
  return toward === b.normal.toward && sameLength(a.patch.min[axis], b.patch.min[axis]);
}

function nextBox(
  solid: readonly Box[],
  line: Point,
  at: { readonly side: Side; readonly reached: Mm },
): Box | undefined {
  const { axis, toward } = at.side;
  const [u, v] = otherAxes(axis);
  const onLine = (box: Box, across: Axis) =>
    atMost(box.min[across], line[across]) && atMost(line[across], box.max[across]);
  return solid.find(
    box =>
      sameLength(toward === 1 ? box.min[axis] : box.max[axis], at.reached) &&
      onLine(box, u) &&
      onLine(box, v),
  );
}

/** Sides of a flat patch, the longer first. */
export function patchSides(place: JointPlace): { readonly long: Mm; readonly short: Mm } {
  const [u, v] = otherAxes(place.drive.axis);
  const across = place.patch.max[u] - place.patch.min[u];
  const up = place.patch.max[v] - place.patch.min[v];
  return { long: Math.max(across, up), short: Math.min(across, up) };
}

/** All area over which a pair touches, whichever way the faces look: what glue is brushed on. */
export function gluedArea(contacts: readonly Contact[]): number {
  return contacts.reduce((sum, contact) => sum + faceArea(contact.patch, contact.normal.axis), 0);
}
