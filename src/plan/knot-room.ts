import { formatLength } from '../measure/format-length.js';
import { inches } from '../measure/inch.js';
import type { Display, Mm } from '../measure/quantities.js';
import { snapDown } from '../measure/round.js';
import { lessThan } from '../measure/tolerance.js';
import { boardsNamed, groupedBy, type NamedBoard } from './boards-named.js';
import type { StepSetting } from './plan.js';

/**
 * Less than this is no room to dodge anything: the pin knots of a sound board are about so wide. A judgment of ours,
 * not re-checked against a grading rule.
 */
const NO_ROOM: Mm = inches(1 / 4);

/** A board of a stop, and what it has left beyond its pieces. */
export type Roomy = NamedBoard & { readonly slack: Mm };

/**
 * How much of each board may be cut out with its knots, in all: the pieces of it still come out. It is told at each
 * stop that the board comes to, and may be taken at one of them. A board without a name is the only one.
 */
export function knotLines(boards: readonly Roomy[], display: Display): readonly StepSetting[] {
  if (boards.length === 0) return [];
  const free = boards.filter(({ slack }) => !lessThan(slack, NO_ROOM));
  const full = boards.filter(({ slack }) => lessThan(slack, NO_ROOM));
  if (free.length === 0) return [{ name: 'Knots', text: 'no room to cut one out', boards: true }];
  const told = groupedBy(free, ({ slack }) =>
    formatLength(snapDown(slack, display.grid), display),
  ).map(([room, those]) => {
    if (those[0].name === '') return room;
    return `${room}${those.length > 1 ? ' each' : ''} on ${boardsNamed(those)}`;
  });
  // By their numbers they are told in a few words; rests of boards would each need a row.
  const none = full.every(({ number }) => number !== undefined) ? boardsNamed(full) : 'the others';
  const others = full.length === 0 ? [] : [`none on ${none}`];
  const text = `room to cut them out, in all: ${[...told, ...others].join('; ')}`;
  return [{ name: 'Knots', text, boards: true }];
}
