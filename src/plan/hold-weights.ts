import { PERSON } from '../materials/loads.js';
import type { Kilograms } from '../measure/quantities.js';
import { sameLength } from '../measure/tolerance.js';
import { formatWeight } from '../measure/weight.js';
import { bounds, extent } from '../model/box.js';
import type { Model, Part } from '../model/part.js';
import { weightOf } from '../model/weight.js';
import type { HoldInputs, StandRole } from './hold-row.js';
import { sitters } from './hold-seat.js';
import { partsAt } from './hold-spans.js';

/** What stands on its own feet, with what it carries. */
export type Standing = {
  readonly parts: readonly Part[];
  readonly feet: readonly Part[];
  readonly wood: Kilograms;
  readonly load: Kilograms;
  readonly people: number;
  /** How many of them there are, by their feet: two planters of four feet. */
  readonly units: number;
  readonly words: string;
};

const FEET_EACH = 4;

/** Weight of the boards of a part of the piece, at the density they have at 12 % moisture. */
export function woodWeight(parts: readonly Part[], { species }: HoldInputs): Kilograms {
  return weightOf({ parts }, () => species.density12.value);
}

/** Everybody who can sit on these boards at once; none where there are no boards to sit on. */
export function peopleOn(model: Model, seat: readonly string[]): number {
  const box = bounds(partsAt(model, seat).map(part => part.box));
  return box === undefined ? 0 : sitters(Math.max(extent(box, 'x'), extent(box, 'y')));
}

/** What a role picks, its feet and its load; undefined where none of its boards reaches the ground. */
export function standingOf(
  model: Model,
  role: StandRole,
  inputs: HoldInputs,
): Standing | undefined {
  const parts = partsAt(model, role.parts);
  const feet = parts.filter(part => sameLength(part.box.min.z, model.overall.min.z));
  if (feet.length === 0) return undefined;
  const people = role.carries === 'people' ? peopleOn(model, role.seat) : 0;
  const load = role.carries === 'people' ? people * PERSON.value : inputs.pots.soaked;
  return {
    parts,
    feet,
    wood: woodWeight(parts, inputs),
    load,
    people,
    units: role.carries === 'people' ? 1 : Math.max(1, Math.floor(feet.length / FEET_EACH)),
    words:
      role.carries === 'people'
        ? `${people} x ${formatWeight(PERSON.value, inputs.display)}`
        : 'soaked pots',
  };
}
