import type { Contact } from './part.js';

/** The contacts of a model by part: for each part id, the parts that it touches and where. */
export type TouchingPairs = ReadonlyMap<string, ReadonlyMap<string, readonly Contact[]>>;

/** Contacts looked up from either side: what touches the seat rail, and where. */
export function touchingPairs(contacts: readonly Contact[]): TouchingPairs {
  const pairs = new Map<string, Map<string, Contact[]>>();
  for (const contact of contacts) {
    note(pairs, contact, [contact.a, contact.b]);
    note(pairs, contact, [contact.b, contact.a]);
  }
  return pairs;
}

function note(
  pairs: Map<string, Map<string, Contact[]>>,
  contact: Contact,
  [part, other]: readonly [string, string],
): void {
  let neighbors = pairs.get(part);
  if (neighbors === undefined) {
    neighbors = new Map();
    pairs.set(part, neighbors);
  }
  const known = neighbors.get(other);
  if (known === undefined) neighbors.set(other, [contact]);
  else known.push(contact);
}
