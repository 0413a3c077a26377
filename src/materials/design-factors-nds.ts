import { inches } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import { type Megapascals, psi } from '../measure/stress.js';
import { atMost } from '../measure/tolerance.js';
import { type Sourced, sourced } from './sourced.js';
import { recalled, seen } from './sources.js';

/** How long the load stands in all, over the life of the piece. */
export type LoadTime = 'permanent' | 'ten-years' | 'two-months' | 'seven-days' | 'ten-minutes';

/** Load duration factor CD. Not for stiffness, nor for crushing across the grain (NDS 2.3.2). */
export const LOAD_TIME_FACTOR: Readonly<Record<LoadTime, Sourced<number>>> = {
  permanent: sourced(0.9, seen('load-duration', 'more than ten years')),
  'ten-years': sourced(1, seen('load-duration', 'ten years, occupancy')),
  'two-months': sourced(1.15, seen('load-duration', 'two months, snow')),
  'seven-days': sourced(1.25, seen('load-duration', 'seven days, construction')),
  'ten-minutes': sourced(1.6, seen('load-duration', 'ten minutes, wind')),
};

/** Wet service factor CM, for wood above 19 % moisture for long. */
export const WET_FACTOR = {
  bending: sourced(0.85, seen('purdue-ce479', 'CM, bending')),
  tension: sourced(1, seen('purdue-ce479', 'CM, tension')),
  shear: sourced(0.97, seen('purdue-ce479', 'CM, shear')),
  across: sourced(0.67, seen('lumber-values', 'CM, compression across the grain')),
  along: sourced(0.8, seen('lumber-values', 'CM, compression along the grain')),
  stiffness: sourced(0.9, seen('lumber-values', 'CM, E and Emin')),
} as const satisfies Record<string, Sourced<number>>;

/** Weak boards are not taken down for wet use: Fb with its size factor up to this. */
const BENDING_KEPT: Sourced<Megapascals> = sourced(
  psi(1150),
  seen('purdue-ce479', 'CM is 1.0 where Fb x CF is at most 1150 psi'),
);

/**
 * Wet factor for bending, from the value with its size factor.
 * @example wetBendingFactor(psi(1200)) // 0.85
 * @example wetBendingFactor(psi(1087)) // 1: redwood No. 2, open grain, 2x4
 */
export function wetBendingFactor(sizedBending: Megapascals): number {
  return atMost(sizedBending, BENDING_KEPT.value) ? 1 : WET_FACTOR.bending.value;
}

/** Widest board of a nominal width, green lumber included. */
const NOMINAL: readonly (readonly [nominal: number, widest: Mm])[] = [
  [3, inches(2.5625)],
  [4, inches(3.5625)],
  [5, inches(4.625)],
  [6, inches(5.625)],
  [8, inches(7.5)],
  [10, inches(9.5)],
  [12, inches(11.5)],
  [14, Number.POSITIVE_INFINITY],
];

/** Boards from here on are "4 in thick". */
const FOUR_THICK = inches(3);

/** Nominal width: bending for 2 and 3 in thick, for 4 in thick; tension; compression along. */
const SIZE: ReadonlyMap<number, readonly [number, number, number, number]> = new Map([
  [4, [1.5, 1.5, 1.5, 1.15]],
  [5, [1.4, 1.4, 1.4, 1.1]],
  [6, [1.3, 1.3, 1.3, 1.1]],
  [8, [1.2, 1.3, 1.2, 1.05]],
  [10, [1.1, 1.2, 1.1, 1]],
  [12, [1, 1.1, 1, 1]],
  [14, [0.9, 1, 0.9, 0.9]],
]);

export const SIZE_SOURCE = seen('nelma', 'Table A, size factors, grades SS to No. 3');

/** Nominal width: flat use for 2 and 3 in thick, for 4 in thick. */
const FLAT: ReadonlyMap<number, readonly [number, number]> = new Map([
  [3, [1, 1]],
  [4, [1.1, 1]],
  [5, [1.1, 1.05]],
  [6, [1.15, 1.05]],
  [8, [1.15, 1.05]],
  [10, [1.2, 1.1]],
]);

export const FLAT_SOURCE = seen('lumber-values', 'flat use factor Cfu, widths 2 to 8 in');

type Board = { readonly thickness: Mm; readonly width: Mm };
export type SizedValue = 'bending' | 'tension' | 'along';

/**
 * Size factor CF for a board, by its wide side. A width between two dressed sizes takes the factor of
 * the wider one: 95 mm counts as a nominal 5 in.
 * @example sizeFactor({ thickness: inches(1.5), width: inches(7.25) }, 'bending') // 1.2
 */
export function sizeFactor(board: Board, value: SizedValue): number {
  const [thin, thick, tension, along] = rowOf(SIZE, board.width);
  if (value === 'tension') return tension;
  if (value === 'along') return along;
  return isFourThick(board) ? thick : thin;
}

/**
 * Flat use factor Cfu, for a board loaded on its wide face.
 * @example flatUseFactor({ thickness: inches(1.5), width: inches(5.5) }) // 1.15
 */
export function flatUseFactor(board: Board): number {
  const [thin, thick] = rowOf(FLAT, board.width);
  return isFourThick(board) ? thick : thin;
}

function isFourThick({ thickness }: Board): boolean {
  return atMost(FOUR_THICK, thickness);
}

/** The row of the nominal width that the board counts as, or the nearest row there is. */
function rowOf<Row>(table: ReadonlyMap<number, Row>, width: Mm): Row {
  const nominal = NOMINAL.find(([, widest]) => atMost(width, widest))?.[0] ?? 0;
  const widths = [...table.keys()];
  const key = widths.find(it => it >= nominal) ?? widths.at(-1);
  const row = key === undefined ? undefined : table.get(key);
  if (row === undefined) throw new Error('a table of factors is empty');
  return row;
}

/** Three boards or more, 24 in apart at most, joined so that they share a load: bending only. */
export const SHARING_FACTOR: Sourced<number> = sourced(
  1.15,
  seen('nelma', 'Cr, repetitive members'),
);

/** Incised boards, as some treated ones are: bending and shear; stiffness. */
export const INCISED_FACTOR = {
  strength: sourced(0.8, recalled('nds', '4.3.8, incising factor Ci')),
  stiffness: sourced(0.95, recalled('nds', '4.3.8, incising factor Ci')),
} as const;

/** How much more a wet board sags under a load that stays: seasoned and dry, wet. */
export const CREEP_FACTOR = {
  dry: sourced(1.5, recalled('nds', '3.5.2, creep factor Kcr')),
  wet: sourced(2, recalled('nds', '3.5.2, creep factor Kcr')),
} as const;

/** Deeper for its thickness than this, a beam may roll over unless it is held. */
export const STEADY_DEPTH: Sourced<number> = sourced(
  2,
  recalled('nds', '3.3.3 and 4.4.1: no lateral support where depth is at most 2 x thickness'),
);
