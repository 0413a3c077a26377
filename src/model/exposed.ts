import type { Contact, Model, Part } from './part.js';
import { type Surface, surfaceOf } from './solid.js';

type Wood = Pick<Model, 'parts' | 'contacts'>;

/** Kept for a model: sealer, sanding and brushing ask for the same surfaces. */
const known = new WeakMap<Wood, ReadonlyMap<string, Surface>>();

/**
 * The surface of each part that touches no other part, by part id, in square mm: what the sealer
 * reaches after assembly.
 */
export function exposedByPart(model: Wood): ReadonlyMap<string, Surface> {
  const open = known.get(model) ?? openByPart(model);
  known.set(model, open);
  return open;
}

function openByPart(model: Wood): ReadonlyMap<string, Surface> {
  const open = new Map<string, Surface>();
  const runs = new Map(model.parts.map(part => [part.id, part.runs]));
  for (const part of model.parts) open.set(part.id, surfaceOf(part.solid, part.runs));
  for (const contact of model.contacts) {
    for (const id of [contact.a, contact.b]) {
      const surface = open.get(id);
      if (surface === undefined)
        throw new Error(`a contact names the part ${id}, which is not there`);
      open.set(id, without(surface, contact, runs.get(id) === contact.normal.axis));
    }
  }
  return open;
}

/** The surface of the whole piece that touches no other board, in square mm. */
export function exposed(model: Wood): Surface {
  return total([...exposedByPart(model).values()]);
}

/** The surface of these parts as they lie on the bench before assembly, every face of them. */
export function surfaceOfParts(parts: readonly Part[]): Surface {
  return total(parts.map(part => surfaceOf(part.solid, part.runs)));
}

function total(surfaces: readonly Surface[]): Surface {
  let faces = 0;
  let endGrain = 0;
  for (const surface of surfaces) {
    faces += surface.faces;
    endGrain += surface.endGrain;
  }
  return { faces, endGrain };
}

/** Subtracting areas that fill a face leaves a hair on either side of nothing. */
function without(surface: Surface, contact: Contact, atEnd: boolean): Surface {
  const less = (area: number) => Math.max(0, area - contact.area);
  return atEnd
    ? { faces: surface.faces, endGrain: less(surface.endGrain) }
    : { faces: less(surface.faces), endGrain: surface.endGrain };
}
