import { dropBetween } from '../materials/leg-trims.js';
import { COMPUTED, type Figure } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import type { Display, Mm } from '../measure/quantities.js';
import { atMost, lengthKey, sameLength } from '../measure/tolerance.js';
import { center, extent } from '../model/box.js';
import type { Model } from '../model/part.js';
import type { Answers } from '../recipe/values.js';
import { onTheTape } from './on-tape.js';

/** Feet that stand equally far from the high end of ground that falls along the piece. */
export type FootRow = {
  readonly fromHighEnd: Figure;
  readonly feet: number;
  /** What lies under each so that all are level. */
  readonly shim: Figure;
  /** Or what each loses instead; the lowest lose nothing. */
  readonly trim: Figure;
  /** False where that would be more than half of the foot. */
  readonly mayTrim: boolean;
};

/** What goes under each row of feet, or comes off it; none on ground that does not fall. */
export function footRows(model: Model, answers: Answers, display: Display): readonly FootRow[] {
  const drop = answers.fall?.kind === 'length' ? answers.fall.value : 0;
  if (atMost(drop, 0)) return [];
  const { overall } = model;
  const over = extent(overall, 'x');
  const feet = model.parts.filter(({ box }) => sameLength(box.min.z, overall.min.z));
  const rows = new Map<string, Mm[]>();
  for (const { box } of feet) {
    const along = center(box).x - overall.min.x;
    rows.set(lengthKey(along), [...(rows.get(lengthKey(along)) ?? []), along]);
  }
  const places = [...rows.values()].sort(([a = 0], [b = 0]) => a - b);
  const first = places[0]?.[0] ?? 0;
  const last = places.at(-1)?.[0] ?? 0;
  const fall = { drop, over };
  const thinnest = Math.min(...feet.map(({ box }) => extent(box, 'z')));
  const rule = `${onTheTape(drop, display)} over ${onTheTape(over, display)}`;
  return places.map(same => {
    const [along = 0] = same;
    const trim = dropBetween(fall, last - along);
    return {
      fromHighEnd: figure(along, 'mm', 'to the middle of the foot', COMPUTED),
      feet: same.length,
      shim: figure(dropBetween(fall, along - first), 'mm', `the ground falls ${rule}`, COMPUTED),
      trim: figure(trim, 'mm', `the ground falls ${rule}`, COMPUTED),
      mayTrim: atMost(trim, thinnest / 2),
    };
  });
}
