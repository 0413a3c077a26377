import { CLIMATES } from './climates.js';
import { DRAIN_GAP } from './gap-today.js';
import { CELSIUS_FORM, FAHRENHEIT_FORM } from './moisture.js';
import { COEFFICIENT_SOURCE, FRAMING, TOTAL_SHRINKAGE_SOURCE } from './movement-forms.js';
import { SATURATIONS } from './saturation.js';
import { OPEN_POINTS } from './seasons.js';
import { ROUND_OVERSIZE } from './slot.js';

/** Tables about what weather does to boards, by the heading they have on the sources page. */
export const MOVEMENT_TABLES: Readonly<Record<string, unknown>> = {
  'moisture of wood in air': [FAHRENHEIT_FORM, CELSIUS_FORM],
  'moisture of wood by place': [CLIMATES, OPEN_POINTS],
  'movement of boards': [COEFFICIENT_SOURCE, TOTAL_SHRINKAGE_SOURCE, FRAMING, SATURATIONS],
  'gaps and slots': [DRAIN_GAP, ROUND_OVERSIZE],
};
