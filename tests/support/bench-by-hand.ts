/**
 * The bench with planter ends worked out with pencil and paper, in inches, without a line of the
 * program: the sums a joiner writes on an offcut. Section sizes are the dressed dry sizes of the
 * American Softwood Lumber Standard PS 20: 2x4 = 1-1/2 x 3-1/2, 2x6 = 1-1/2 x 5-1/2, 1x2 = 3/4 x
 * 1-1/2, 1x3 = 3/4 x 2-1/2, 1x4 = 3/4 x 3-1/2, 5/4x4 = 1 x 3-1/2.
 */
export type Sizes = {
  readonly seat: number;
  readonly seatHeight: number;
  readonly depth: number;
  readonly planterWidth: number;
  readonly planterHeight: number;
  readonly slat: 'thick' | 'thin';
  readonly slatGap: number;
  /** Width of the 2x4s that lie there, where it is not what they are dressed to. */
  readonly width?: number;
};

const T = 1.5;
/** Width of a 1x4. */
const PLANK = 3.5;

/** How many pieces leave the gap nearest to the wish, equal gaps at both ends too. */
export function evenCount(over: number, piece: number, want: number, least: number, most: number) {
  const tries = Array.from({ length: 200 }, (_, n) => ({ n, gap: (over - n * piece) / (n + 1) }));
  const fits = tries.filter(({ n, gap }) => n > 0 && gap >= least - 1e-9 && gap <= most + 1e-9);
  return fits.sort((a, b) => Math.abs(a.gap - want) - Math.abs(b.gap - want))[0];
}

/** Count by `section length` for everything but the pot blocks. */
export function piecesByHand(sizes: Sizes): ReadonlyMap<string, number> {
  const { seat, depth, planterWidth, planterHeight, width: W = 3.5 } = sizes;
  const slatThick = sizes.slat === 'thick' ? 1.5 : 1;
  const slatBoard = sizes.slat === 'thick' ? '2x4' : '5/4x4';
  const railBoard = seat > 52 ? '2x6' : '2x4';
  const railTop = sizes.seatHeight - slatThick;
  const panels = [
    { width: depth, height: railTop - T, count: 2 },
    { width: depth, height: planterHeight - T, count: 4 },
    { width: planterWidth - 2 * T, height: planterHeight - T, count: 4 },
  ];
  const reach = slatThick < 1.25 ? 16 : 24;
  const third = depth - T > reach;
  const found = new Map<string, number>();
  const add = (board: string, length: number, count: number) => {
    const key = `${board} ${length.toFixed(4)}`;
    found.set(key, (found.get(key) ?? 0) + count);
  };
  for (const { width, height, count } of panels) {
    const infill = evenCount(width - 2 * W, 2.5, 1, 1 / 8, 2);
    add('2x4', height - W, 2 * count);
    add('2x4', width, 2 * count);
    add('1x2', width - 2 * W, 2 * count);
    add('1x3', height - 2 * W - 1 / 8, (infill?.n ?? 0) * count);
  }
  add(railBoard, seat, 2);
  if (third) {
    add(railBoard, seat - 2 * T, 1);
    add('2x4', railTop - (seat > 52 ? 5.5 : W) - T, 2);
  }
  if (seat > 48) add('2x4', seat - 2 * T, 1);
  add(slatBoard, depth, evenCount(seat, W, sizes.slatGap, 1 / 8, 5 / 8)?.n ?? 0);
  add('2x4', depth - 2 * T, 4);
  const planks = evenCount(depth - 2 * T, PLANK, 1, 1 / 8, 1.5);
  add('1x4', planterWidth - 2 * T - 1 / 4, 2 * (planks?.n ?? 0));
  add('2x4', W, 8 + 4 + (third ? 2 : 0));
  return found;
}
