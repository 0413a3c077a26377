import { COMPUTED } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import type { Display } from '../measure/quantities.js';
import { lengthKey } from '../measure/tolerance.js';
import type { PlanterRow } from './planter.js';
import { drainFigures } from './planter-drain.js';
import { type Room, roomIn } from './planter-inside.js';
import { pottedWeight, soilFigures } from './planter-soil.js';
import type { PlanterBox } from './planter-stands.js';
import { potRows, standingPots } from './pot-rows.js';

/** Each different planter once: what it holds, how it drains, and where its pots come to. */
export function planterRows(boxes: readonly PlanterBox[], display: Display): readonly PlanterRow[] {
  const alike = new Map<string, PlanterRow>();
  for (const box of boxes) {
    const room = roomIn(
      box.parts,
      box.pots.flatMap(pot => pot.blocks),
    );
    if (room === undefined) continue;
    const row = planterRow(box, room, display);
    const standing = {
      parts: box.parts.map(({ id }) => id),
      floor: room.floor,
      pots: standingPots(box.pots, room),
    };
    const key = JSON.stringify(row, rounded);
    const known = alike.get(key);
    const first = known?.first ?? standing;
    alike.set(key, { ...row, ...known, first, places: (known?.places ?? 0) + 1 });
  }
  return [...alike.values()];
}

/** Figures that differ by what arithmetic loses are equal: one box is the mirror image of the other. */
function rounded(_key: string, value: unknown): unknown {
  return typeof value === 'number' ? lengthKey(value) : value;
}

function planterRow(box: PlanterBox, room: Room, display: Display): Omit<PlanterRow, 'first'> {
  const blocks = box.pots.flatMap(pot => pot.blocks);
  const planks = box.parts.filter(part => part.loose && !blocks.includes(part));
  return {
    name: box.name,
    steps: box.steps,
    places: 1,
    inside: insideFigures(room),
    pots: potRows(box.pots, room, display),
    potted: pottedWeight(box.pots),
    ...soilFigures(room, display),
    ...drainFigures(planks, room),
  };
}

function insideFigures({ x, y, floor, rim }: Room) {
  const between = 'between the boards that face each other';
  return {
    long: figure(x[1] - x[0], 'mm', between, COMPUTED),
    deep: figure(y[1] - y[0], 'mm', between, COMPUTED),
    high: figure(rim - floor, 'mm', 'from the floor to the rim', COMPUTED),
  };
}
