import { AIR_ROUND_POT, potFit } from '../materials/pots.js';
import { ANSWERED, COMPUTED } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import type { Display, Mm } from '../measure/quantities.js';
import { atMost, lengthKey } from '../measure/tolerance.js';
import { bounds } from '../model/box.js';
import type { Part } from '../model/part.js';
import { OVER, type StackWish } from '../model/stack.js';
import { listWords } from '../text/list.js';
import { count } from '../text/plural.js';
import { onTheTape } from './on-tape.js';
import type { PotRow, StandingPot } from './planter.js';
import type { Room } from './planter-inside.js';

/** A pot as it was answered, with the blocks that stand under it. */
export type PotOnBlocks = {
  readonly number: number;
  readonly height: Mm;
  readonly diameter: Mm;
  /** Height that its blocks were wished to have. */
  readonly wanted: Mm;
  readonly blocks: readonly Part[];
};

/** The pots of a list, each with its own blocks, which are numbered through in the order of the list. */
export function potsOnBlocks(
  pots: readonly Readonly<Record<string, Mm>>[],
  wish: StackWish,
  blocks: readonly Part[],
): readonly PotOnBlocks[] {
  let from = 0;
  return pots.map(({ height = 0, diameter = 0 }, at) => {
    const { wanted = 0, blocks: own = 0 } = wish.things[at] ?? {};
    const under = blocks.slice(from, from + own);
    from += own;
    return { number: at + 1, height, diameter, wanted, blocks: under };
  });
}

/** Where each pot comes to: its rim, and the air round it. */
export function potRows(
  pots: readonly PotOnBlocks[],
  room: Room,
  display: Display,
): readonly PotRow[] {
  return pots.map(pot => potRow(pot, { room, others: pots.filter(it => it !== pot), display }));
}

/** Where each pot stands. */
export function standingPots(pots: readonly PotOnBlocks[], room: Room): readonly StandingPot[] {
  return pots.map(pot => ({
    number: pot.number,
    ...centerOf(pot, room),
    foot: topOf(pot, room),
    height: pot.height,
    diameter: pot.diameter,
  }));
}

type Round = {
  readonly room: Room;
  readonly others: readonly PotOnBlocks[];
  readonly display: Display;
};

function potRow(pot: PotOnBlocks, around: Round): PotRow {
  const { room, display } = around;
  const { number, height, diameter, wanted } = pot;
  const stands = topOf(pot, room) - room.floor;
  const inside = room.rim - room.floor;
  const rim = inside - stands - height;
  const wished = inside - wanted - height;
  const air = airRound(pot, around);
  const length = (mm: Mm) => onTheTape(mm, display);
  return {
    number,
    height: figure(height, 'mm', 'as you said', ANSWERED),
    across: figure(diameter, 'mm', 'as you said', ANSWERED),
    blocks: blockWords(pot),
    rim: figure(
      rim,
      'mm',
      `${length(inside)} inside less ${length(stands)} of blocks and ${length(height)} of pot`,
      COMPUTED,
    ),
    wished: figure(wished, 'mm', 'as the recipe wishes', COMPUTED),
    near: atMost(Math.abs(rim - wished), OVER),
    air: figure(
      air,
      'mm',
      'least way from its rim to a wall or to half the next pot’s gap',
      AIR_ROUND_POT.source,
    ),
    verdict: potFit(diameter + 2 * air, diameter).verdict,
  };
}

function topOf({ blocks }: PotOnBlocks, { floor }: Room): Mm {
  return Math.max(floor, ...blocks.map(({ box }) => box.max.z));
}

/** "2 stacks, each 2 x 2x4 and 1 x 1x4": layers from the bottom up. */
function blockWords({ blocks }: PotOnBlocks): string {
  const stacks = new Map<string, Part[]>();
  for (const block of blocks) {
    const { x, y } = block.box.min;
    const at = `${lengthKey(x)} ${lengthKey(y)}`;
    stacks.set(at, [...(stacks.get(at) ?? []), block]);
  }
  const [first] = stacks.values();
  if (first === undefined) return 'on the floor, no blocks';
  const layers = [...first].sort((a, b) => a.box.min.z - b.box.min.z);
  const kinds = [...new Set(layers.map(({ section }) => section.name))];
  const words = kinds.map(
    name => `${layers.filter(({ section }) => section.name === name).length} x ${name}`,
  );
  return `${count(stacks.size, 'stack')}, each ${listWords(words)}`;
}

/** Air round a rim: to the walls, and its half of what lies between it and each other pot. */
function airRound(pot: PotOnBlocks, { room, others }: Round): Mm {
  const { x, y } = centerOf(pot, room);
  const radius = pot.diameter / 2;
  const walls = [x - room.x[0], room.x[1] - x, y - room.y[0], room.y[1] - y];
  const between = others.map(other => {
    const at = centerOf(other, room);
    return (Math.hypot(at.x - x, at.y - y) - radius - other.diameter / 2) / 2;
  });
  return Math.min(...walls.map(wall => wall - radius), ...between);
}

/** Over its blocks; in the middle of the box where it needs none. */
function centerOf({ blocks }: PotOnBlocks, room: Room): { readonly x: Mm; readonly y: Mm } {
  const box = bounds(blocks.map(block => block.box));
  if (box === undefined) return { x: (room.x[0] + room.x[1]) / 2, y: (room.y[0] + room.y[1]) / 2 };
  return { x: (box.min.x + box.max.x) / 2, y: (box.min.y + box.max.y) / 2 };
}
