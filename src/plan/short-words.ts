import { formatLength } from '../measure/format-length.js';
import { inches } from '../measure/inch.js';
import type { Display, Mm } from '../measure/quantities.js';
import { lessThan } from '../measure/tolerance.js';
import { listWords } from '../text/list.js';
import { onTheTape } from './on-tape.js';
import type { CutRow } from './plan.js';
import { isAsCut, type ShortPiece } from './short-piece.js';

/** Does it matter? In one line. */
export function shortVerdict(short: ShortPiece, { mark }: CutRow, display: Display): string {
  const by = onTheTape(short.by, display);
  if (isAsCut(short)) return `Use it: ${by} short is no more than a stop gives.`;
  return short.isFree
    ? `Use it: nothing meets the ends of ${mark}, so ${by} short only shows.`
    : `Use it: a gap of ${by} does not weaken it.`;
}

/**
 * How to build it in all the same, one line a thing. Where others were cut at this stop before, those are measured
 * too; of a first piece there is nothing to ask: the stop was set wrong.
 */
export function shortLines(short: ShortPiece, display: Display, before: number): readonly string[] {
  const half = onTheTape(short.by / 2, display);
  const notches = short.isNotched
    ? ['Mark its notches from the board that it meets and not from its end: the frame stays true.']
    : [];
  if (isAsCut(short)) return ['It counts as good. Measure the next one before you go on.'];
  const place = short.isFree
    ? [`Set it in the middle: each end shows ${half}.`]
    : [
        ...(short.meets.length > 0 ? [`Its ends meet the ${listWords(short.meets)}.`] : []),
        'Put the whole gap where it is seen least. Glue does not fill it, and a screw must not pull it shut: that bends the frame.',
      ];
  const why = before > 0 ? ['Then find out why: did the stop move? Measure those cut before.'] : [];
  return [...place, ...notches, ...why];
}

/** Nobody makes a piece smaller by more than this for one slip; a judgment of ours. */
const WORTH_ASKING: Mm = inches(1);

/** What else can be done with it where it is too short. */
export function allAlikeLines(
  { by }: ShortPiece,
  { mark, count, length }: CutRow,
  display: Display,
): readonly string[] {
  if (count < 2 || lessThan(WORTH_ASKING, by)) return [];
  const shorter = formatLength(length.value - by, display);
  return [
    `Or cut all ${count} of ${mark} to ${shorter}, if the piece may be that much smaller there and none is built in yet.`,
  ];
}
