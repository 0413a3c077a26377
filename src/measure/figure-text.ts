import { formatArea } from './area.js';
import { formatMinutes } from './duration.js';
import type { Figure, Source, Unit } from './figure.js';
import { formatFloorLoad } from './floor-load.js';
import { formatLengthExact } from './format-length.js';
import { formatNumber } from './format-number.js';
import { formatMoney } from './money.js';
import type { Display } from './quantities.js';
import { formatStress } from './stress.js';
import { formatTemperature } from './temperature.js';
import { formatSpace, formatVolume } from './volume.js';
import { formatGrams, formatWeight } from './weight.js';

/**
 * A number that knows where it is from:
 * `figure(inches(41), 'mm', '48 in less two posts of 3-1/2 in', COMPUTED)`.
 */
export function figure(value: number, unit: Unit, because: string, source: Source): Figure {
  return { value, unit, because, source };
}

const WRITERS: Readonly<Record<Unit, (value: number, display: Display) => string>> = {
  mm: formatLengthExact,
  mm2: formatArea,
  mm3: formatSpace,
  kg: formatWeight,
  g: formatGrams,
  'kg/m2': formatFloorLoad,
  MPa: formatStress,
  ml: formatVolume,
  C: formatTemperature,
  min: formatMinutes,
  cents: formatMoney,
  count: value => formatNumber(value, 2),
  percent: value => `${formatNumber(value, 1)}%`,
  ratio: value => formatNumber(value, 3),
};

/** The value of a figure with its unit, as the user reads lengths: "41 in", "12%", "7.48". */
export function formatFigure({ value, unit }: Figure, display: Display): string {
  return WRITERS[unit](value, display);
}

/** Where a figure is from, in words: "Wood Handbook FPL-GTR-190, Table 4-3", "common practice". */
export function sourceText({ publication, place, standing }: Source): string {
  const named = place === undefined ? publication : `${publication}, ${place}`;
  if (standing === 'memory') return `${named}, not re-checked`;
  if (standing === 'practice' && publication !== 'common practice') {
    return `${named}, common practice`;
  }
  return named;
}
