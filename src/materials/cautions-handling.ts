import type { Caution } from './cautions.js';
import type { GlueId } from './glue.js';
import type { SealerId } from './sealer.js';
import { type Sourced, sourced } from './sourced.js';
import { practice, recalled, seen } from './sources.js';

/** Cautions for dust, glue, finish and lifting. */
export const HANDLING_CAUTIONS = {
  dust: {
    title: 'Wood dust',
    lines: [
      'Mask on for cutting (N95 or FFP2), a better one for sanding or cedar (P100 or FFP3).',
      'Vacuum rather than sweep, and wash before you eat.',
      'Wheezing, a rash or sore eyes: stop, and see a doctor before working that wood again.',
    ],
    source: seen('osha-dust', '1 mg/m3 over 8 h, western redcedar 0.5; masks are usual guidance'),
  },
  glue: {
    title: 'Glue',
    lines: [
      'In the eye: rinse with clean water for 15 minutes, lids held open, then a doctor. The label comes first.',
    ],
    source: recalled('glue-hazards', 'skin, eyes, air'),
  },
  sealer: {
    title: 'Sealer',
    lines: [
      'Work in moving air, away from flames and pilot lights; gloves and glasses on.',
      'Cover soil, plants and the ponds of neighbors: some sealers harm them and the skin.',
      'The label says what it may touch. Let it cure before people sit on it or food grows beside it.',
    ],
    source: seen('wood-handbook', 'chapter 16, water repellents with fungicide'),
  },
  rags: {
    title: 'Oily rags catch fire',
    lines: [
      'A crumpled rag with oil or oil-borne finish heats up by itself and can burn within hours, even when it feels stiff.',
      'Spread each one flat, outdoors, away from buildings, until hard; or drown them in water in a metal can with a tight lid.',
      'Never in a pile, never in the trash, never indoors overnight. Then dispose of them by local rule.',
    ],
    source: seen('oily-rags', 'submerged in a lidded metal can, or flat outdoors until stiff'),
  },
  spray: {
    title: 'Spraying',
    lines: [
      'Respirator with organic-vapor cartridges and a particle prefilter for oil-borne finish, prefilter for water-borne; the label may ask for more.',
      'Outdoors, wind under 10 mph, nobody and no open window downwind.',
      'Two-part isocyanate finishes are for people with an air-supplied mask, not for this job.',
    ],
    source: seen('spray-masks', 'organic-vapor cartridge and particle prefilter'),
  },
  lifting: {
    title: 'Lifting',
    lines: [
      'Two people for anything over 35 lb (16 kg), over 8 ft, or awkward.',
      'Close to the body, knees bent, no twist; agree who says "down".',
      'Wet pots and planters are heavier than they look: empty or slide them.',
      'Whoever a doctor has told not to lift does not lift.',
    ],
    source: seen('niosh-lifting', '51 lb at the very best; 0.7 of it is used'),
  },
  'treated-wood': {
    title: 'Treated wood',
    lines: [
      'Cut it outdoors with a dust mask, glasses and gloves; wash before you eat, and wash the clothes apart.',
      'Never burn the scraps: ordinary trash, or as the local rule says.',
      'No treated sawdust on beds, and no treated wood where it touches food or feed.',
    ],
    source: seen('treated-wood-sheet', 'consumer handling'),
  },
} as const satisfies Record<string, Caution>;

/** What each kind of glue asks for: typical safety data sheets, not re-checked. */
export const GLUE_CARE: Readonly<Record<GlueId, string>> = {
  'pva-type-1': 'This glue, PVA, is mild: wash it off skin, keep it out of eyes.',
  'pva-type-2': 'This glue, PVA, is mild: wash it off skin, keep it out of eyes.',
  polyurethane: 'Gloves on, and fresh air: this glue does not come off skin and holds isocyanate.',
  'epoxy-slow': 'Gloves on, and fresh air: epoxy can make you allergic for good.',
  resorcinol: 'Gloves on, and fresh air: this glue gives off formaldehyde.',
};

/** What each kind of sealer asks for beside what all of them do. The label of the can comes first. */
export const SEALER_CARE: Readonly<Record<SealerId, Sourced<string>>> = {
  'penetrating-sealer': sourced(
    'This sealer is thinned with solvent: its vapor burns and makes dizzy. Lid on, no flame, no spark, no pilot light; headache means out into the air.',
    recalled('finish-labels', 'oil-borne water repellent: flammable, vapor harmful'),
  ),
  'penetrating-oil': sourced(
    'This oil dries by taking air, and heats up as it does: in rags above all. Thinned, its vapor burns too.',
    recalled('finish-labels', 'drying oil: rags may catch fire by themselves'),
  ),
  'semitransparent-stain': sourced(
    'This stain is thinned with solvent: its vapor burns and makes dizzy. Many hold a mildew poison: gloves on, none on soil or into water.',
    recalled('finish-labels', 'oil stain: flammable, mildewcide harmful to skin and water'),
  ),
  'water-borne-sealer': sourced(
    'This sealer is thinned with water: little vapor, and no fire in the can. Keep it off skin and eyes and out of frost; wash brushes before it dries, the water not onto soil or into a drain for rain.',
    recalled('finish-labels', 'water-borne acrylic: skin and eyes, keep from freezing'),
  ),
};

/** What counts as heavy: below it one grown person, above it two. */
export const TWO_PERSON_SOURCE = practice('lower of 16 kg and 0.7 of the NIOSH 51 lb');
