import { type Saw, sawNamed } from '../materials/saws.js';
import { inches } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import { atMost, sameLength } from '../measure/tolerance.js';

/** A board or strip seen from its end. */
export type EndGrain = { readonly thickness: Mm; readonly width: Mm };

/** What ripping takes: a cut along the board, and what comes off its first edge so that the fence has a straight one. */
export type RipCut = { readonly kerf: Mm; readonly edge: Mm };

/** How strips lie in a board. */
export type RipWay = {
  /** Strips out of one board. */
  readonly strips: number;
  /** From the fence to the blade. */
  readonly fence: Mm;
  /** True where the strip's width is the board's thickness: 3/4 in slices off a 2x4 are 1-1/2 in wide. */
  readonly turned: boolean;
};

const FULL_KERF: Mm = inches(1 / 8);

/**
 * Ripping on a table saw with a full-kerf blade. The edge is common practice: store boards have rounded
 * edges, and one light pass makes one straight.
 */
export const USUAL_RIP: RipCut = {
  kerf: sawNamed('table-saw')?.kerf.value ?? FULL_KERF,
  edge: inches(1 / 8),
};

const TABLE_SAWS: readonly string[] = ['table-saw', 'table-saw-thin'];

/** With the blade of the table saw that makes the crosscuts; any other saw leaves ripping to a table saw of the usual kind. */
export function ripCutWith({ id, kerf }: Pick<Saw, 'id' | 'kerf'>): RipCut {
  return TABLE_SAWS.includes(id) ? { ...USUAL_RIP, kerf: kerf.value } : USUAL_RIP;
}

/**
 * How many strips of a size come out of one board, the better way round; undefined when none does, or when
 * the board would have to be resawn thinner as well. The far edge is left as it is. A 1x4, 3-1/2 in wide,
 * gives two strips of 1-1/2 in: 1/8 + 1/8 for the edge and its cut, 2 x 1-1/2, and 1/8 between are 3-3/8 in.
 */
export function ripWay(strip: EndGrain, board: EndGrain, cut: RipCut): RipWay | undefined {
  const ways: RipWay[] = [];
  if (sameLength(strip.thickness, board.thickness))
    ways.push({ ...across(strip.width, board.width, cut), turned: false });
  if (sameLength(strip.width, board.thickness))
    ways.push({ ...across(strip.thickness, board.width, cut), turned: true });
  const [best] = ways.filter(way => way.strips > 0).sort((a, b) => b.strips - a.strips);
  return best;
}

function across(fence: Mm, width: Mm, { kerf, edge }: RipCut) {
  const straight = edge > 0 ? edge + kerf : 0;
  let strips = 0;
  while (atMost(straight + (strips + 1) * fence + strips * kerf, width)) strips += 1;
  return { strips, fence };
}
