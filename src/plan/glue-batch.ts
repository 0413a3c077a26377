import { squareInches } from '../measure/area.js';
import { COMMON_PRACTICE, type Source } from '../measure/figure.js';
import type { Minutes, SquareMm } from '../measure/quantities.js';

/** Common practice: keep a fifth of the open time in hand. */
const SHARE_OF_OPEN_TIME = 0.8;
/** Common practice: a small sub-assembly is clamped and squared in about so long. */
export const CLAMPING_MINUTES: Minutes = 3;
/** Common practice: both faces of a tenon or half-lap brushed and closed; larger faces in proportion. */
const MINUTES_A_JOINT: Minutes = 0.5;
const USUAL_JOINT: SquareMm = squareInches(25);
/** Two people, one brushing and one closing: not half the time, since one of them often waits. */
const WITH_TWO = 0.55;

export const BATCH_SOURCE: Source = {
  ...COMMON_PRACTICE,
  place: 'four fifths of the open time, half a minute a joint, three minutes for the clamps',
};

export type Batch = {
  readonly openMinutes: Minutes;
  readonly clampingMinutes: Minutes;
  readonly minutesEach: Minutes;
};

/** Minutes for brushing that fit into one glue-up: 10 min of open time and 3 for clamps leave 5. */
export function brushingRoom({
  openMinutes,
  clampingMinutes,
}: Omit<Batch, 'minutesEach'>): Minutes {
  return Math.max(0, openMinutes * SHARE_OF_OPEN_TIME - clampingMinutes);
}

/**
 * Joints that fit into one glue-up: (open time x 0.8 - clamping) / time a joint, rounded down; 0 when
 * not even one does.
 * @example batchSize({ openMinutes: 10, clampingMinutes: 3, minutesEach: 0.5 }) // 10
 */
export function batchSize({ minutesEach, ...batch }: Batch): number {
  return Math.floor(brushingRoom(batch) / minutesEach + 1e-9);
}

/** Minutes to brush and close one joint whose faces touch over this area, by one or two people. */
export function minutesForJoint(area: SquareMm, people: 1 | 2): Minutes {
  const alone = MINUTES_A_JOINT * Math.max(1, area / USUAL_JOINT);
  return people === 2 ? alone * WITH_TWO : alone;
}
