import type { Stand } from '../recipe/recipe.js';
import { bounds } from './box.js';
import type { Box, Point } from './part.js';
import type { Built } from './setout-draft.js';
import { mirror, quarterTurn, translate, turnAxis } from './turn.js';

/** Where an assembly is put: under which name of use, on which stand, at which corner. */
export type Spot = {
  readonly use: string;
  readonly stand: Stand;
  readonly corner: Point;
  /** How many parts are there already: indices go on from there. */
  readonly offset: number;
};

/**
 * An assembly carried to a stand: turned about the upright axis, mirrored where it is the other hand,
 * then moved so that the corner nearest the origin of all its blanks lies on the stand's corner.
 */
export function placeAt(built: Built, spot: Spot): Built {
  const around = bounds(built.parts.map(part => part.box));
  if (around === undefined) return built;
  const carry = carrier(around, spot);
  const { use, stand, offset } = spot;
  const prefix = `${use}/${stand.id}`;
  return {
    parts: built.parts.map(part => ({
      ...part,
      id: `${prefix}.${part.id}`,
      path: `${use}.${part.path}`,
      runs: turnAxis(part.runs, stand.turn),
      face: turnAxis(part.face, stand.turn),
      box: carry(part.box),
      notches: part.notches.map(notch => ({
        rule: notch.rule,
        box: carry(notch.box),
        for: notch.for + offset,
      })),
    })),
    spreads: built.spreads.map(spread => ({
      ...spread,
      spreads: `${use}.${spread.spreads}`,
      within: spread.within === '' ? prefix : `${prefix}.${spread.within}`,
    })),
    joints: built.joints.map(joint => ({
      ...joint,
      drive: joint.drive === undefined ? undefined : turnAxis(joint.drive, stand.turn),
      from: joint.from.map(index => index + offset),
      into: joint.into.map(index => index + offset),
    })),
  };
}

function carrier(around: Box, { stand, corner }: Spot): (box: Box) => Box {
  const turned = (box: Box) => {
    const there = quarterTurn(box, stand.turn);
    return stand.mirror === undefined ? there : mirror(there, stand.mirror);
  };
  const { min } = turned(around);
  const by = { x: corner.x - min.x, y: corner.y - min.y, z: corner.z - min.z };
  return box => translate(turned(box), by);
}
