import { CLIMATES } from './climates.js';
import { DRYNESS } from './dryness.js';
import { DRAIN_GAP } from './gap-today.js';
import { CELSIUS_FORM, FAHRENHEIT_FORM } from './moisture.js';
import { COEFFICIENT_SOURCE, FRAMING, TOTAL_SHRINKAGE_SOURCE } from './movement-forms.js';
import { SATURATIONS } from './saturation.js';
import { SAWS } from './saws.js';
import { OPEN_POINTS } from './seasons.js';
import { SECTIONS } from './section.js';
import { ROUND_OVERSIZE } from './slot.js';
import { SPECIES } from './species.js';
import { storeLengths } from './store-lengths.js';

/** Tables about boards and how they are cut, by the heading they have on the sources page. */
export const WOOD_TABLES: Readonly<Record<string, unknown>> = {
  'board sizes': SECTIONS,
  'board lengths': SECTIONS.map(storeLengths),
  woods: SPECIES,
  'how dry boards are': DRYNESS,
  'moisture of wood in air': [FAHRENHEIT_FORM, CELSIUS_FORM],
  'moisture of wood by place': [CLIMATES, OPEN_POINTS],
  'movement of boards': [COEFFICIENT_SOURCE, TOTAL_SHRINKAGE_SOURCE, FRAMING, SATURATIONS],
  'gaps and slots': [DRAIN_GAP, ROUND_OVERSIZE],
  'saw kerfs': SAWS,
};
