import type { Contact, Joint, Part } from '../../model/part.js';
import type { Scene } from './focus.js';

/** Boards that hang together already and move as one. */
export type Unit = readonly Part[];

/** Two parts that move together. */
export type Held = Pick<Joint, 'from' | 'into'>;

/**
 * What holds boards together that stood there before: joints, and that loose ones lie on others. Where
 * a step sets finished things in place, what lies loose in them comes along.
 */
export function heldBefore(
  joints: readonly Joint[],
  scene: Scene,
  contacts: readonly Contact[],
): readonly Held[] {
  const { bright, standing } = scene;
  const moving = setsFinished(scene) ? [...standing, ...bright] : standing;
  const there = new Map(moving.map(it => [it.id, it]));
  const lying = contacts.flatMap(({ a, b }) => {
    const [one, other] = [there.get(a), there.get(b)];
    if (one === undefined || other === undefined) return [];
    return one.loose || other.loose ? [{ from: a, into: b }] : [];
  });
  return [...joints, ...lying];
}

/** True where a step joins only what stood there before, and what lies loose in it. */
export function setsFinished({ bright, standing, made }: Scene): boolean {
  const stood = new Set(standing);
  return made.length > 0 && bright.every(part => part.loose || stood.has(part));
}

/** Boards in units, by the joints that hold them together already. */
export function unitsOf(parts: readonly Part[], joints: readonly Held[]): readonly Unit[] {
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
