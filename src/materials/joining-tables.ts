import { BRAD_DIAMETER, BRAD_LENGTHS, BRAD_SOURCE, BRADS_HOLD } from './brads.js';
import { GAUGES } from './gauges.js';
import { METRIC_SOURCE } from './metric-screw.js';
import { BITE_SOURCES } from './screw-bite.js';
import { HOLE_SOURCES, screwHoles } from './screw-holes.js';
import { LENGTH_STEPS_SOURCE } from './screw-lengths.js';
import { METAL_SOURCES, SCREW_METALS } from './screw-metal.js';
import { screwDistances } from './screw-spacing.js';
import { SPECIES } from './species.js';

/** Tables about screws and brads, by the heading they have on the sources page. */
export const JOINING_TABLES: Readonly<Record<string, unknown>> = {
  'screw sizes': GAUGES,
  'screw lengths': [LENGTH_STEPS_SOURCE, BITE_SOURCES, METRIC_SOURCE],
  'screw holes': [
    HOLE_SOURCES,
    SPECIES.flatMap(wood => GAUGES.map(row => screwHoles(row.gauge, wood))),
  ],
  'room round screws': [screwDistances(10, true), screwDistances(10, false)],
  'screw metals': [SCREW_METALS, METAL_SOURCES],
  brads: [BRAD_DIAMETER, BRAD_LENGTHS, BRAD_SOURCE, BRADS_HOLD],
};
