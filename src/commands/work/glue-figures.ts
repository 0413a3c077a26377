import { COMPUTED } from '../../measure/figure.js';
import { figure } from '../../measure/figure-text.js';
import { formatNumber } from '../../measure/format-number.js';
import type { Minutes, SquareMm } from '../../measure/quantities.js';
import {
  BATCH_SOURCE,
  batchSize,
  CLAMPING_MINUTES,
  minutesForJoint,
} from '../../plan/glue-batch.js';
import type { Answered, Given } from './rule.js';

/** How many joints fit the open time, and how many goes that makes. */
export function glueUpFigures(
  openMinutes: Minutes,
  jointArea: SquareMm,
  given: Given,
): readonly Answered[] {
  const people = given.number('people') === 2 ? 2 : 1;
  const joints = given.number('joints');
  const minutesEach = minutesForJoint(jointArea, people);
  const fitting = batchSize({ openMinutes, clampingMinutes: CLAMPING_MINUTES, minutesEach });
  const each = formatNumber(minutesEach, 2);
  const sum = `(${openMinutes} min x 0.8 - ${CLAMPING_MINUTES} min for clamps) / ${each} min a joint, ${people === 2 ? 'one brushing and one closing' : 'alone'}`;
  const none = `not even one fits ${sum}: a slower glue, a second person, or a cooler hour`;
  return [
    {
      name: 'joints_in_one_go',
      say: 'joints in one go',
      figure: figure(fitting, 'count', fitting > 0 ? sum : none, BATCH_SOURCE),
    },
    {
      name: 'glue_ups',
      say: 'glue-ups',
      figure: figure(
        Math.ceil(joints / Math.max(1, fitting)),
        'count',
        `${joints} joints, ${Math.max(1, fitting)} in each; keep what belongs together in one`,
        COMPUTED,
      ),
    },
  ];
}
