import type { Source } from '../measure/figure.js';
import { practice, recalled, seen } from './sources.js';
import type { Species } from './species.js';

export type MetalId =
  | 'stainless-304'
  | 'stainless-316'
  | 'hot-dip-galvanized'
  | 'coated-exterior'
  | 'plain-zinc';

export type ScrewMetal = {
  readonly id: MetalId;
  readonly name: string;
  readonly goodFor: string;
  readonly source: Source;
};

/** Best for outdoors first. */
export const SCREW_METALS: readonly ScrewMetal[] = [
  {
    id: 'stainless-316',
    name: 'stainless steel, type 316',
    goodFor: 'everything, and the only one near salt water',
    source: seen('cedar-leaflet', 'sea-coast exposure: type 316'),
  },
  {
    id: 'stainless-304',
    name: 'stainless steel, type 304 or 305',
    goodFor: 'every wood away from salt water',
    source: seen('cedar-leaflet', 'general inland use: type 304'),
  },
  {
    id: 'hot-dip-galvanized',
    name: 'hot-dip galvanized steel (ASTM A153)',
    goodFor: 'treated wood, and tannin woods under paint',
    source: seen('ibc-fasteners', 'hot-dip zinc-coated steel in treated wood'),
  },
  {
    id: 'coated-exterior',
    name: 'coated exterior steel',
    goodFor: 'woods without tannin; treated wood when the box says so',
    source: practice('coated deck screws: the box says which wood they are for'),
  },
  {
    id: 'plain-zinc',
    name: 'plain zinc-plated steel',
    goodFor: 'indoors only',
    source: seen('fpl-stain', 'mechanical and electroplated zinc are shorter-lived'),
  },
];

/** Where the piece stands, as far as screws care. */
export type ScrewSite = {
  /** Near salt water: the trade's figures run from 300 ft to several miles. */
  readonly coast: boolean;
  /** A clear or lightly tinted finish shows a stain; paint hides it for a while. */
  readonly finish: 'clear' | 'opaque';
};

type Case = {
  readonly metal: MetalId;
  readonly species: Species;
  readonly site: ScrewSite;
};

type Rule = { readonly warns: (given: Case) => boolean; readonly words: (given: Case) => string };

const isStainless = (metal: MetalId) => metal === 'stainless-304' || metal === 'stainless-316';

/** The first rule that warns is told; the gravest stands first. */
const RULES: readonly Rule[] = [
  {
    warns: ({ metal }) => metal === 'plain-zinc',
    words: () =>
      'Plain zinc-plated screws rust outdoors within a season or two. Use stainless or hot-dip galvanized.',
  },
  {
    warns: ({ metal, site }) => site.coast && metal !== 'stainless-316',
    words: () => 'Near salt water use stainless type 316: other screws rust or stain there.',
  },
  {
    warns: ({ metal, species, site }) =>
      species.tannin === 'high' && !isStainless(metal) && site.finish === 'clear',
    words: ({ species }) =>
      `${species.name} is rich in tannin: with steel, even galvanized, and rain it makes black stains round every screw, and no clear coat stops them. Use stainless.`,
  },
  {
    warns: ({ metal, species }) => species.tannin === 'high' && metal === 'coated-exterior',
    words: ({ species }) =>
      `${species.name} is rich in tannin: once the coating is scratched by the driver, the steel stains the wood black. Use stainless or hot-dip galvanized.`,
  },
  {
    warns: ({ metal, species }) =>
      species.tannin === 'high' && species.kind === 'hardwood' && !isStainless(metal),
    words: ({ species }) =>
      `The acid in ${species.name.toLowerCase()} attacks steel and zinc when damp. Use stainless or bronze.`,
  },
  {
    warns: ({ metal, species }) => species.treated && metal === 'coated-exterior',
    words: () =>
      'Copper in treated wood eats plain steel: use stainless or hot-dip galvanized, or coated screws whose box names your treatment.',
  },
  {
    warns: ({ metal, species, site }) =>
      species.tannin === 'some' && !isStainless(metal) && site.finish === 'clear',
    words: ({ species }) =>
      `${species.name} has some tannin: a steel screw may leave a dark ring under a clear finish. Stainless avoids it.`,
  },
];

/**
 * What to be told before buying these screws for this wood and place, in one sentence or two;
 * undefined when nothing is known against them.
 * @example metalWarning('hot-dip-galvanized', redcedar, { coast: false, finish: 'clear' })
 */
export function metalWarning(
  metal: MetalId,
  species: Species,
  site: ScrewSite,
): string | undefined {
  const given = { metal, species, site };
  return RULES.find(rule => rule.warns(given))?.words(given);
}

/** Where the warnings come from. */
export const METAL_SOURCES: readonly Source[] = [
  seen('fpl-stain', 'iron stain: oak, redwood, cypress, cedar'),
  seen('cedar-trade', 'clear or semitransparent finish on cedar: stainless only'),
  seen('ibc-fasteners', 'treated wood: hot-dip zinc, stainless, bronze or copper'),
  seen('mixed-metals', 'galvanized beside stainless corrodes'),
  recalled('wood-handbook', 'chapter 16, oak: stainless or bronze'),
];
