import { SEALER_CARE } from '../materials/cautions-handling.js';
import { type SealerId, sealerOf } from '../materials/sealer.js';
import { CANS, SEALER_NEED_SOURCE, sealerNeed } from '../materials/sealer-need.js';
import { COMPUTED } from '../measure/figure.js';
import { figure, sourceText } from '../measure/figure-text.js';
import type { Display, Milliliters } from '../measure/quantities.js';
import { exposed } from '../model/exposed.js';
import type { Model } from '../model/part.js';
import { cansFor } from './cans.js';
import { containerWords } from './container-words.js';
import type { SealerPlan } from './plan.js';
import type { Setting } from './setting.js';

/** What stands outdoors and is only oiled against the rain; common practice. */
export const SEALER: SealerId = 'penetrating-sealer';

/** Sealer for the faces that stay open, contact faces left out and end grain counted more. */
export function sealerPlan(model: Model, { display }: Setting): SealerPlan {
  const open = exposed(model);
  const sealer = sealerOf(SEALER);
  const coats = sealer.usualCoats.value.smooth;
  const need = sealerNeed({ ...open, rough: false, coats, kind: SEALER, method: 'brush' });
  return {
    kind: sealer.name,
    faces: figure(open.faces, 'mm2', 'faces and edges that touch no other wood', COMPUTED),
    endGrain: figure(
      open.endGrain,
      'mm2',
      'ends that touch no other wood; they drink about three times as much',
      COMPUTED,
    ),
    coats,
    amount: figure(
      need.milliliters,
      'ml',
      'open faces, end grain three times, one coat on planed wood, 10 % in the brush',
      SEALER_NEED_SOURCE,
    ),
    buy: containerWords(need.cans[display.system]),
    leastOver: leastOver(need.milliliters, display),
    dwell: figure(
      sealer.dwellMinutes.value,
      'min',
      'flood, wait, wipe back',
      sealer.dwellMinutes.source,
    ),
    dry: figure(
      sealer.rainHours.value * 60,
      'min',
      'before rain or dew may fall on it',
      sealer.rainHours.source,
    ),
    lasts: { ...sealer.lastsYears.value, source: sourceText(sealer.lastsYears.source) },
    care: SEALER_CARE[SEALER].value,
    hotRags: sealer.hotRags,
    notes: sealer.notes,
  };
}

function leastOver(amount: Milliliters, { system }: Display): SealerPlan['leastOver'] {
  const { cans, leftOver } = cansFor(amount, CANS[system], 'left-over');
  const sizes = cans.map(({ offer, count }) => ({ size: offer, count }));
  return {
    cans: containerWords(sizes),
    over: figure(leftOver, 'ml', 'what these cans hold less what is needed', COMPUTED),
  };
}
