import type { Source } from '../measure/figure.js';
import type { Minutes } from '../measure/quantities.js';
import { practice } from './sources.js';

/** Working minutes for one unit of a task, by somebody who has done it before. */
export type TaskTime = {
  readonly name: string;
  /** What one unit is. */
  readonly per: string;
  readonly low: Minutes;
  readonly high: Minutes;
  readonly source: Source;
};

const BY_FEEL = practice('planning minutes; the workbook learns your own');

function task(name: string, per: string, low: Minutes, high: Minutes): TaskTime {
  return { name, per, low, high, source: BY_FEEL };
}

export const TASK_TIMES = {
  'set-stop': task('set and prove a stop', 'stop setting', 3, 6),
  'set-fence': task('set and prove a fence', 'fence setting', 3, 6),
  'rip-cut': task('rip a board along its length', 'cut', 1, 2),
  'crosscut-at-stop': task('crosscut at a stop', 'cut', 0.4, 0.8),
  'square-end': task('square a board end', 'end', 0.5, 1),
  'notch-single': task('jigsaw and chisel one half-depth notch', 'notch', 6, 12),
  'notch-ganged': task('notch several clamped together', 'notch', 3, 5),
  'whole-screw': task('bore, countersink and drive, bit changes spread', 'screw', 0.8, 1.3),
  'glue-joint': task('spread and clamp a joint', 'joint', 2, 4),
  'brad-piece': task('glue and brad a strip or slat on its marks', 'piece', 0.8, 1.2),
  'sand-grit': task('sand with one grit, edges broken on the way', 'square foot', 0.5, 1),
  'brush-coat': task('brush one coat', 'square foot', 0.8, 1.5),
} as const satisfies Record<string, TaskTime>;

export type TaskId = keyof typeof TASK_TIMES;

/** Everything takes a first-time builder this much longer: 1.5 to 2 times. */
export const FIRST_TIME = { low: 1.5, high: 2, source: practice('first-time builders') } as const;

/**
 * Minutes to plan for so many units of a task: the middle of its range.
 * @example taskMinutes('crosscut-at-stop', 20) // 12 min
 */
export function taskMinutes(task: TaskId, units: number): Minutes {
  const { low, high } = TASK_TIMES[task];
  return ((low + high) / 2) * units;
}
