import { bounds } from '../../model/box.js';
import type { Point } from '../../model/part.js';
import type { Way } from '../corner/corner-arrows.js';
import type { Eye } from '../corner/corner-sight.js';
import { movedBy, type Pulled } from './pull-apart.js';

/**
 * Where arrows show the way to the place: for boards of one kind that go the same way, on the first
 * and the last of them, from the corner nearest to the eye.
 */
export function waysBack(pulled: readonly Pulled[], eye: Eye): readonly Way[] {
  const kinds = new Map<string, Pulled[]>();
  for (const one of pulled) {
    const names = [...new Set(one.unit.map(({ path }) => path))].sort().join();
    const key = `${names} ${one.way.axis} ${one.way.toward} ${one.by}`;
    kinds.set(key, [...(kinds.get(key) ?? []), one]);
  }
  return [...kinds.values()].flatMap(alike => {
    const ends = alike.length > 1 ? [alike.at(0), alike.at(-1)] : alike;
    return ends.flatMap(one => (one === undefined ? [] : wayBack(one, eye)));
  });
}

function wayBack(pulled: Pulled, eye: Eye): readonly Way[] {
  const box = bounds(pulled.unit.map(part => part.box));
  if (box === undefined) return [];
  const { axis, toward } = pulled.way;
  const nearest = (at: 'x' | 'y' | 'z') => (eye[at] > 0 ? box.max[at] : box.min[at]);
  // The face that comes to lie on the others goes before.
  const leading = toward > 0 ? box.min[axis] : box.max[axis];
  const to: Point = { x: nearest('x'), y: nearest('y'), z: nearest('z'), [axis]: leading };
  const moved = movedBy(pulled);
  return [{ from: { x: to.x + moved.x, y: to.y + moved.y, z: to.z + moved.z }, to }];
}
