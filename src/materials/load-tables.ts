import * as screws from './screw-strength.js';
import * as soil from './soil-weights.js';
import * as tipping from './tipping.js';
import * as yielding from './yield-model.js';

/** Tables about screws that carry, and about what stands on floors, by their heading. */
export const LOAD_TABLES: Readonly<Record<string, unknown>> = {
  'strength of screws': [{ ...screws }, { ...yielding }],
  'soil and pots': { ...soil },
  tipping: { ...tipping },
};
