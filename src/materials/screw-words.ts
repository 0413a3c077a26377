import { SIXTEENTHS } from '../measure/displays.js';
import { formatLength, formatLengthExact } from '../measure/format-length.js';
import type { Display, Mm } from '../measure/quantities.js';
import { lessThan } from '../measure/tolerance.js';
import type { Fitting, NoScrew } from './choose-screw.js';
import { shank } from './gauges.js';
import { type ScrewJoint, USUAL_COVER } from './screw-bite.js';
import { isDense } from './screw-holes.js';
import { stockLengths } from './screw-lengths.js';

/**
 * A screw as it stands on the box.
 * @example screwName({ gauge: 10, length: inches(3.5) }) // 'No. 10 x 3-1/2 in'
 */
export function screwName({
  gauge,
  length,
}: {
  readonly gauge: number;
  readonly length: Mm;
}): string {
  return `No. ${gauge} x ${formatLength(length, SIXTEENTHS)}`;
}

/** The rule in words with the numbers put in. */
export function becauseChosen(
  { through, grain }: ScrewJoint,
  { gauge, length, least }: Fitting,
  display: Display,
): string {
  const say = (value: Mm) => formatLengthExact(value, display);
  const bite = length - through;
  const diameters = (bite / shank(gauge)).toFixed(1);
  const more = grain === 'end' ? ' with the 1/2 in more that end grain wants' : '';
  return (
    `${say(through)} under the head and ${say(bite)} of bite (${diameters} diameters); ` +
    `the least is ${say(least)}${more}, and 10 diameters, ${say(shank(gauge) * 10)}, carry the full sideways load`
  );
}

/** Why no length will do, with the numbers put in. */
export function becauseNone(
  { gauge, why, needed, cap }: Pick<NoScrew, 'gauge' | 'why' | 'needed' | 'cap'>,
  display: Display,
): string {
  const say = (value: Mm) => formatLengthExact(value, display);
  const longest = stockLengths(gauge).at(-1);
  if (why === 'comes-through') {
    return `a No. ${gauge} needs ${say(needed)} to hold, and anything over ${say(cap)} comes too near the far face`;
  }
  if (longest === undefined) return `no lengths are on record for a No. ${gauge}`;
  return `a No. ${gauge} needs ${say(needed)} to hold, and is sold up to ${say(longest)}`;
}

/** What to do instead. */
export function suggestionFor(why: NoScrew['why']): string {
  return why === 'comes-through'
    ? 'Use a through bolt with washers, or a thicker piece behind.'
    : 'Notch the piece so that less wood lies under the head, or use a through bolt or a structural screw.';
}

/** Things the builder should know about this very screw. */
export function notesFor(
  joint: ScrewJoint,
  { gauge, length, least, short }: Fitting,
  { usual, display }: { readonly usual: number; readonly display: Display },
): readonly string[] {
  const cover = joint.through + joint.into - length;
  const bite = length - joint.through;
  const say = (value: Mm) => formatLengthExact(value, display);
  const notes: readonly (string | false)[] = [
    joint.grain === 'end' &&
      'The point goes into end grain: it may hold sideways (about two-thirds, NDS 12.5.2) but is not counted on against pulling out. Let the shoulder carry the load.',
    short &&
      `The bite is short: ${say(bite)} where ${say(least)} is wanted. Add glue or more screws, and do not let it carry alone.`,
    gauge !== usual &&
      `A No. ${gauge} instead of a No. ${usual}, which would not bite enough before coming through.`,
    lessThan(cover, USUAL_COVER) &&
      `Only ${say(cover)} of wood is left beyond the point: try one in scrap of the same thickness first.`,
    isDense(joint.wood) &&
      'Dense wood: drill the pilot to full depth, wax the thread, and run a steel screw of this size in and out before a brass or stainless one.',
  ];
  return notes.filter(note => note !== false);
}
