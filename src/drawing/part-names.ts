import type { Plan } from '../plan/plan.js';

/** The mark of every part on the cut list, by part id. */
export function partNames({ cutList }: Plan): ReadonlyMap<string, string> {
  return new Map(cutList.flatMap(row => row.pieces.map(id => [id, row.mark] as const)));
}
