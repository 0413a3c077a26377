import type { Contact, Part } from '../../model/part.js';
import type { Patch } from '../strokes.js';

/** Which way each cut board hatches: other than the boards before it that it touches, where that works out. */
export function leans(
  parts: readonly Part[],
  contacts: readonly Contact[],
): ReadonlyMap<string, Patch['lean']> {
  const found = new Map<string, Patch['lean']>();
  for (const { id } of parts) {
    const near = contacts.flatMap(({ a, b }) => (a === id ? [b] : b === id ? [a] : []));
    const right = near.filter(it => found.get(it) === 'right').length;
    const left = near.filter(it => found.get(it) === 'left').length;
    found.set(id, right > left ? 'left' : 'right');
  }
  return found;
}
