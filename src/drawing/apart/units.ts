import type { Joint, Part } from '../../model/part.js';

/** Boards that hang together already and move as one. */
export type Unit = readonly Part[];

/** Boards in units, by the joints that hold them together already. */
export function unitsOf(parts: readonly Part[], joints: readonly Joint[]): readonly Unit[] {
  const unitOf = new Map<string, Part[]>(parts.map(part => [part.id, [part]]));
  for (const { from, into } of joints) {
    const [a, b] = [unitOf.get(from), unitOf.get(into)];
    if (a === undefined || b === undefined || a === b) continue;
    const [larger, smaller] = a.length < b.length ? [b, a] : [a, b];
    for (const part of smaller) {
      larger.push(part);
      unitOf.set(part.id, larger);
    }
  }
  return [...new Set(unitOf.values())];
}
