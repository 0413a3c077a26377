import { YOUNG_JOINT } from '../materials/glue.js';
import { formatMinutes } from '../measure/duration.js';
import type { Minutes } from '../measure/quantities.js';
import { count } from '../text/plural.js';
import type { GlueUpRow } from './glue-rows.js';
import type { Step } from './plan.js';

/** "8, one after the other", "1, all at once". */
export function glueUpCount({ count }: GlueUpRow): string {
  return count.value === 1 ? '1, all at once' : `${count.value}, one after the other`;
}

/** What lies in each: "4 joints of 2 panel rails and 2 posts". */
export function glueUpPieces({ kinds }: GlueUpRow): string {
  const several = kinds.length > 1;
  return kinds
    .map(kind => {
      const words = `${count(kind.joints, 'joint')} of ${kind.pieces}`;
      return several ? `${kind.count} with ${words}` : words;
    })
    .join('; ');
}

/** "about 5 min for two people". */
export function glueUpTime({ kinds, people, fits }: GlueUpRow): string {
  const longest = Math.max(...kinds.map(({ minutes }) => minutes.value));
  const time = `about ${Math.ceil(longest - 1e-9)} min for ${people === 2 ? 'two people' : 'one person'}`;
  return fits
    ? time
    : `${time}, longer than this glue stays open: take a slower one or a second person`;
}

/** "2 each; with 6 nobody waits, 3 glue-ups in clamps at once". */
export function clampWords({ clampsEach, clamps, atOnce }: GlueUpRow): string {
  if (clampsEach === 0) return 'none: brads hold until the glue has set';
  if (atOnce === 1) return String(clampsEach);
  return `${clampsEach} each; with ${clamps.value} nobody waits, ${atOnce} glue-ups in clamps at once`;
}

/** "8 min from first stroke; begin to clamp by minute 3". */
export function openWords({ open, openMinutes, clampsEach }: GlueUpRow): string {
  const what = clampsEach > 0 ? 'clamp' : 'brad';
  return `${openMinutes} min from first stroke; begin to ${what} by minute ${open.minutes}`;
}

/** Name of the line that tells what may be done beside young glue. */
export const BESIDE_GLUE = 'Meanwhile';

/** What may be done beside the clamps, and what the joints bear when. */
export function besideWords({ fixed }: Pick<GlueUpRow, 'fixed'>, waits: GlueWaits): string {
  const { screwed, clamped, handled } = YOUNG_JOINT;
  const first = fixed ? screwed.value : clamped.value;
  const say = (minutes: number) => formatMinutes(minutes);
  return `other work goes on; ${first}. After ${say(waits.clampMinutes)} ${handled.value} before ${say(waits.cureMinutes)}.`;
}

type GlueWaits = { readonly clampMinutes: Minutes; readonly cureMinutes: Minutes };

/** The lines that a step shows about its glue-ups. */
export function glueUpLines(row: GlueUpRow): Step['settings'] {
  return [
    { name: 'Glue-ups', text: glueUpCount(row), glueUp: true },
    { name: 'In each', text: glueUpPieces(row), glueUp: true },
    { name: 'Each takes', text: glueUpTime(row), glueUp: true },
    { name: 'Clamps', text: clampWords(row), glueUp: true },
    { name: 'Open time', text: openWords(row), glueUp: true },
  ];
}
