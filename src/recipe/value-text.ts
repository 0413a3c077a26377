import { formatArea } from '../measure/area.js';
import { formatLengthExact } from '../measure/format-length.js';
import { formatNumber } from '../measure/format-number.js';
import type { Display } from '../measure/quantities.js';
import { formatSpace } from '../measure/volume.js';
import type { Value } from './values.js';

/** A value as a builder reads it: "48 in", "3", "12 sq in", "yes", "roof". */
export function valueText(value: Value, display: Display): string {
  if (value.kind === 'text') return value.value;
  if (value.kind === 'flag') return value.value ? 'yes' : 'no';
  if (value.power === 0) return formatNumber(value.value, 4);
  if (value.power === 1) return formatLengthExact(value.value, display);
  if (value.power === 2) return formatArea(value.value, display);
  if (value.power === 3) return formatSpace(value.value, display);
  return `${formatNumber(value.value, 4)} mm^${value.power}`;
}
