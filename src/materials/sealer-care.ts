import type { Caution } from './cautions.js';
import { HANDLING_CAUTIONS, SEALER_CARE } from './cautions-handling.js';
import { type SealerId, sealerOf } from './sealer.js';
import { practice } from './sources.js';

/** Cautions for the sealer in hand: what its kind asks for, before what holds for all. */
export function sealerCaution(id: SealerId): Caution {
  const { title, lines } = HANDLING_CAUTIONS.sealer;
  const { value, source } = SEALER_CARE[id];
  return { title, lines: [value, ...lines], source };
}

/** What rags with this sealer want: fire is looked for only where the sealer heats up as it dries. */
export function ragsCaution(id: SealerId): Caution {
  return sealerOf(id).hotRags ? HANDLING_CAUTIONS.rags : COLD_RAGS;
}

const COLD_RAGS: Caution = {
  title: 'Rags with water-borne sealer',
  lines: [
    'They do not heat up by themselves as oily ones do; the label of the can says whether that holds for this one.',
    'Let them dry spread out, and throw them away by the local rule. Keep them apart from any rag with oil or stain.',
  ],
  source: practice(
    'water-borne acrylic holds no drying oil; some hold an alkyd, which the label tells',
  ),
};
