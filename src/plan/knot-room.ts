import { formatLength } from '../measure/format-length.js';
import { inches } from '../measure/inch.js';
import type { Display, Mm } from '../measure/quantities.js';
import { snapDown } from '../measure/round.js';
import { lessThan } from '../measure/tolerance.js';
import type { StepSetting } from './plan.js';

/**
 * Less than this is no room to dodge anything: the pin knots of a sound board are about so wide. A judgment of ours,
 * not re-checked against a grading rule.
 */
const NO_ROOM: Mm = inches(1 / 4);

/** A board of a stop, as it is called there, and what it has left beyond its pieces. */
export type Roomy = { readonly name: string; readonly slack: Mm };

/**
 * How much of each board may be skipped for a knot, in all: the pieces of it still come out. It is told at each
 * stop that the board comes to, and may be taken at one of them. A board without a name is the only one.
 */
export function knotLines(boards: readonly Roomy[], display: Display): readonly StepSetting[] {
  if (boards.length === 0) return [];
  const free = boards.filter(({ slack }) => !lessThan(slack, NO_ROOM));
  const told = free.map(({ name, slack }) => {
    const room = formatLength(snapDown(slack, display.grid), display);
    return name === '' ? room : `${room} on ${name}`;
  });
  const others = free.length < boards.length ? ', none on the others' : '';
  const text =
    free.length === 0 ? 'no room to skip one' : `once a board: skip ${told.join(', ')}${others}`;
  return [{ name: 'Knots', text, boards: true }];
}
