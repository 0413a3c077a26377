import { FILLS, fillWeight } from '../materials/loads.js';
import { coneSpace } from '../materials/pot.js';
import { bagsFor, looseFill, SETTLING, SOIL_BAGS, spaceOf } from '../materials/soil.js';
import { COMPUTED, type Figure } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import { inches } from '../measure/inch.js';
import type { Display, Mm } from '../measure/quantities.js';
import { formatSpace } from '../measure/volume.js';
import { onTheTape } from './on-tape.js';
import type { Room } from './planter-inside.js';

/** Common practice: soil ends an inch under the rim, so that water stands until it has sunk in. */
const BELOW_RIM: Mm = inches(1);

const SOAKED_SOURCE = FILLS['potting-mix'].heavy.source;

/** What the pots of one planter weigh when soaked. */
export function pottedWeight(
  pots: readonly { readonly diameter: Mm; readonly height: Mm }[],
): Figure {
  const space = pots.reduce(
    (sum, { diameter, height }) => sum + coneSpace(diameter, diameter, height),
    0,
  );
  const { heavy } = fillWeight(space, 'potting-mix');
  const words = 'pots taken as cylinders, full of potting mix as heavy as it gets';
  return figure(heavy, 'kg', words, SOAKED_SOURCE);
}

/** Soil in place of pots: how much, how many bags, how heavy. */
export function soilFigures({ x, y, floor, rim }: Room, display: Display) {
  const depth = Math.max(0, rim - floor - BELOW_RIM);
  const space = spaceOf({ length: x[1] - x[0], width: y[1] - y[0], depth });
  const [, bag] = SOIL_BAGS[display.system];
  const { heavy } = fillWeight(space, 'potting-mix');
  const loose = formatSpace(looseFill(space), display);
  return {
    soil: figure(space, 'mm3', `${onTheTape(depth, display)} deep, 1 in below the rim`, COMPUTED),
    bags: figure(
      bagsFor(space, bag.holds),
      'count',
      `${loose} filled in, since loose fill settles about ${SETTLING.value * 100} %`,
      SOIL_BAGS.source,
    ),
    bag: bag.name,
    soaked: figure(heavy, 'kg', 'potting mix as heavy as it gets in all of it', SOAKED_SOURCE),
  };
}
