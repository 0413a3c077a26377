import { sealDay } from '../materials/seal-day.js';
import { formatSpread, sealVerdict, sealWhen } from '../materials/seal-words.js';
import { sealerOf } from '../materials/sealer.js';
import { formatTemperature } from '../measure/temperature.js';
import type { DayVerdict, Seen } from './day-verdict.js';
import { SEALER } from './sealer-plan.js';
import type { ToldDay } from './told-day.js';

/** May it be sealed on the day that was told? What nobody told is no yes: it is said to be open. */
export function sealVerdictOf(told: ToldDay, { display, clockMinutes }: Seen): DayVerdict {
  const { now, coldest, humidityPercent, sunsetMinutes, moisturePercent } = told;
  if (now === undefined || humidityPercent === undefined)
    return {
      kind: 'not-told',
      words: 'Warmth or humidity was not told: go by the rules of this step and the label.',
      when: '',
      sums: [],
    };
  const day = sealDay(SEALER, {
    air: now,
    surface: now,
    humidityPercent,
    // What was not told is no obstacle of its own; the verdict says that it is open.
    low: coldest ?? now,
    ...(moisturePercent !== undefined && { moisturePercent }),
    sprinkle: 'not-tried',
    nowMinutes: clockMinutes,
    ...(sunsetMinutes !== undefined && { sunsetMinutes }),
  });
  const dew = `Dew point ${formatTemperature(day.dewPoint, display)}: the wood is ${formatSpread(day.spread, display)} above it, ${formatSpread(3, display)} is wanted.`;
  const hours =
    sunsetMinutes === undefined ? ['Under a roof: hours to sunset were not looked at.'] : [];
  const open = coldest === undefined && SEAL_KINDS[day.verdict] !== 'not-today';
  const night = formatTemperature(sealerOf(SEALER).lowest.value, display);
  return {
    kind: open ? 'look-first' : SEAL_KINDS[day.verdict],
    words: open
      ? `Not decided: the coldest until tomorrow evening was not told; under ${night} it would not dry. Else: ${sealVerdict(day, display)}`
      : sealVerdict(day, display),
    when: sealWhen(day, display),
    sums: [dew, ...hours],
  };
}

const SEAL_KINDS = {
  yes: 'go',
  'test-first': 'look-first',
  'later-today': 'not-today',
  'not-today': 'not-today',
} as const;
