import { DRYNESS } from './dryness.js';
import { MOVEMENT_TABLES } from './movement-tables.js';
import { SAWS } from './saws.js';
import { SECTIONS } from './section.js';
import { SPECIES } from './species.js';
import { storeLengths } from './store-lengths.js';

/** Tables about boards and how they are cut, by the heading they have on the sources page. */
export const WOOD_TABLES: Readonly<Record<string, unknown>> = {
  'board sizes': SECTIONS,
  'board lengths': SECTIONS.map(storeLengths),
  woods: SPECIES,
  'how dry boards are': DRYNESS,
  ...MOVEMENT_TABLES,
  'saw kerfs': SAWS,
};
