import { sameLength } from '../measure/tolerance.js';
import { faceArea } from './box.js';
import { boxTable } from './box-table.js';
import type { Axis, Box, Contact, Part } from './part.js';
import { mergePatches } from './patches.js';
import { type TouchingFaces, touchingFaces } from './touching-faces.js';

/** Faces of one pair of parts in one plane, looking one way. */
type Group = {
  readonly a: number;
  readonly b: number;
  readonly axis: Axis;
  readonly toward: 1 | -1;
  readonly plane: number;
  readonly patches: Box[];
};

/**
 * Every flat place where two parts lie against each other, in the order of the parts: a 2x4 rail across
 * a 2x4 post touches it over 3-1/2 x 1-1/2 in. Patches of one pair and plane that make one rectangle
 * are one contact.
 */
export function contactsOf(parts: readonly Part[]): readonly Contact[] {
  const faces = touchingFaces(boxTable(parts.map(part => part.solid)));
  return grouped(faces, parts.length).flatMap(group => contacts(group, parts));
}

function grouped(faces: readonly TouchingFaces[], partCount: number): readonly Group[] {
  const byPair = new Map<number, Group[]>();
  for (const face of faces) {
    const toward = face.lower < face.upper ? 1 : -1;
    const a = Math.min(face.lower, face.upper);
    const b = Math.max(face.lower, face.upper);
    const { axis } = face;
    const plane = face.patch.min[axis];
    const groups = byPair.get(a * partCount + b);
    if (groups === undefined) {
      byPair.set(a * partCount + b, [{ a, b, axis, toward, plane, patches: [face.patch] }]);
      continue;
    }
    const same = groups.find(
      group => group.axis === axis && group.toward === toward && sameLength(group.plane, plane),
    );
    if (same === undefined) groups.push({ a, b, axis, toward, plane, patches: [face.patch] });
    else same.patches.push(face.patch);
  }
  return [...byPair.entries()].sort(([a], [b]) => a - b).flatMap(([, groups]) => groups);
}

function contacts(group: Group, parts: readonly Part[]): readonly Contact[] {
  const a = idAt(parts, group.a);
  const b = idAt(parts, group.b);
  const { axis, toward, patches } = group;
  const merged = patches.length > 1 ? mergePatches(patches, axis) : patches;
  return merged.map(patch => ({
    a,
    b,
    normal: { axis, toward },
    patch,
    area: faceArea(patch, axis),
  }));
}

function idAt(parts: readonly Part[], index: number): string {
  const part = parts[index];
  if (part === undefined) throw new Error(`no part ${index} touches anything`);
  return part.id;
}
