import { FLOOR_WORDS, GUARD_WORDS } from '../materials/floor-check.js';
import type { Model } from '../model/part.js';
import { floorRows } from './hold-floor.js';
import { notchHoldRows } from './hold-notches.js';
import type { HoldInputs, HoldRole, HoldRow } from './hold-row.js';
import { screwRows } from './hold-screws.js';
import { seatRows } from './hold-seat.js';
import { shelfRows, slatRows } from './hold-slats.js';
import { standRows } from './hold-stand.js';

const NOT_CHECKED: readonly string[] = [
  'Knots, splits, slope of grain, rot and boards weaker than the grade that was taken: look at every board that carries.',
  'Racking and leaning along or across, wind, climbing, jumping, and pushing it over.',
  'Glue, brads, and joints that no screw of this plan carries; screws pulled out by use and by the seasons.',
  'Whatever is under the feet: ground, deck boards, joists, ledgers, roof skins, and railings near by.',
  'These are screening sums for a small piece, not a design: stamps on the boards, local codes and a licensed engineer come first.',
];

/** What these sums leave out, shown with them always; off the ground, whose answer it takes besides. */
export function notChecked({ floor }: Pick<HoldInputs, 'floor'>): readonly string[] {
  return floor.kind === 'ground' ? NOT_CHECKED : [...NOT_CHECKED, FLOOR_WORDS, GUARD_WORDS];
}

/**
 * Will it hold? Each role is looked up in the model by the paths of its boards, spans and notches are
 * taken from the boards in space, and the same model and inputs give the same rows. A role that picks
 * nothing, or boards that lie on nothing, gives no row.
 */
export function holdRows(model: Model, inputs: HoldInputs): readonly HoldRow[] {
  const seats = inputs.roles.flatMap(role => (role.kind === 'slats' ? role.beams : []));
  return [
    ...inputs.roles.flatMap(role => rowsOf(model, role, inputs)),
    ...floorRows(model, seats, inputs),
  ];
}

function rowsOf(model: Model, role: HoldRole, inputs: HoldInputs): readonly HoldRow[] {
  switch (role.kind) {
    case 'seat':
      return [...seatRows(model, role, inputs), ...notchHoldRows(model, role, inputs)];
    case 'slats':
      return slatRows(model, role, inputs);
    case 'shelf':
      return shelfRows(model, role, inputs);
    case 'screws':
      return screwRows(model, role, inputs);
    case 'stand':
      return standRows(model, role, inputs);
  }
}
