import { boardYear } from '../materials/board-year.js';
import { shank } from '../materials/gauges.js';
import type { ScrewPlace } from '../materials/screw-spacing.js';
import { slotFor } from '../materials/slot.js';
import { inches } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import { lessThan } from '../measure/tolerance.js';
import type { Joint, Part } from '../model/part.js';
import { onTheTape } from './on-tape.js';
import type { Setting } from './setting.js';

/** Less play than this nobody bores for. */
const NOT_BORED: Mm = inches(1 / 32);

export type Held = {
  readonly joint: Joint;
  readonly from: Part;
  readonly into: Part;
  readonly gauge: number;
  readonly setting: Setting;
};

/**
 * A board held by screws apart across its grain works between them through the year, where the board
 * behind it runs that way and does not move along with it.
 */
export function playNotes(
  places: readonly ScrewPlace[],
  { joint, from, into, gauge, setting }: Held,
): readonly string[] {
  const across = places.map(place => place.across);
  const apart = Math.max(...across) - Math.min(...across);
  const follows = into.runs === from.runs || into.runs === joint.drive.axis;
  if (follows || !lessThan(0, apart)) return [];
  const { species, dryness, swing, display } = setting;
  const side = from.face === joint.drive.axis ? 'width' : 'thickness';
  const half = { size: apart / 2, across: side, wood: species, grain: 'unknown' } as const;
  const year = boardYear(half, dryness.moisturePercent.value, swing);
  const { oversize, shape } = slotFor(year, shank(gauge));
  if (lessThan(oversize, NOT_BORED)) return [];
  const wider = onTheTape(oversize, display);
  const hole =
    shape === 'round'
      ? `bore the clearance hole ${wider} wider than the screw is thick`
      : `make the clearance hole a slot, ${wider} longer than the screw is thick, across the grain`;
  return [`${joint.name}: ${hole}; the board works across its grain between its screws.`];
}
