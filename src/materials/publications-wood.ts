import type { Publication } from './publication.js';

/** Publications on lumber, woods and saws. */
export const WOOD_PUBLICATIONS = {
  ps20: {
    name: 'American Softwood Lumber Standard PS 20',
    citation:
      'American Softwood Lumber Standard, Voluntary Product Standard PS 20, nominal and minimum dressed sizes. Seen in the tables of The Engineering ToolBox.',
  },
  en336: {
    name: 'EN 336',
    citation:
      'EN 336, Structural timber: sizes and permitted deviations, with the United Kingdom national annex.',
  },
  vademecum: {
    name: 'Vademecum, timber chapter',
    citation:
      'Vademecum (Dutch university course handbook), timber chapter, table of planed sections.',
  },
  'wood-handbook': {
    name: 'USDA Wood Handbook (FPL-GTR-190)',
    citation:
      'USDA Forest Products Laboratory, Wood Handbook: Wood as an Engineering Material, FPL-GTR-190 (2010). Seen in page copies.',
  },
  'simpson-1973': {
    name: 'Simpson 1973, moisture sorption',
    citation:
      'Simpson (1973), constants of the Hailwood-Horrobin equation in degrees F, as Wood Handbook chapter 4 gives them. Seen in a transcription.',
  },
  'fpl-rp-489': {
    name: 'USDA FPL-RP-489',
    citation:
      'Green, USDA Forest Products Laboratory, Research Paper FPL-RP-489, Moisture Content and the Shrinkage of Lumber (1989).',
  },
  'fpl-rn-0268': {
    name: 'USDA FPL-RN-0268',
    citation:
      'USDA Forest Products Laboratory, Research Note FPL-RN-0268, equilibrium moisture content of wood outdoors. Seen quoted in a trade knowledge base.',
  },
  'climate-normals': {
    name: 'national climate normals',
    citation: 'National climate normals, mean air temperature and humidity of each month.',
  },
  'fpl-0153': {
    name: 'USDA FPL-0153',
    citation:
      'USDA Forest Products Laboratory, Research Note FPL-0153, Comparative Decay Resistance of Heartwood (1967). Seen in a magazine reprint.',
  },
  'fpl-ipe': {
    name: 'USDA FPL technical sheet, ipe',
    citation:
      'USDA Forest Products Laboratory, Technical Sheet, Tabebuia spp., lapacho group (Chudnoff, Tropical Timbers of the World).',
  },
  'fpl-stain': {
    name: 'USDA FPL FinishLine, iron stain',
    citation: 'Knaebe, Iron Stain on Wood, FinishLine, USDA Forest Products Laboratory (2013).',
  },
  'oregon-wood': {
    name: 'Oregon Wood Innovation Center',
    citation:
      'Oregon Wood Innovation Center, table of relative working and physical properties of woods.',
  },
  'tm-5-852-4': {
    name: 'US Army TM 5-852-4',
    citation: 'US Army TM 5-852-4, Table 2-2, specific gravity of woods at 12 percent moisture.',
  },
  'wood-database': {
    name: 'The Wood Database',
    citation: 'The Wood Database, species pages. Some seen in copies kept by timber dealers.',
  },
  nwfa: {
    name: 'National Wood Flooring Association',
    citation:
      'National Wood Flooring Association, dimensional change coefficients. Seen in two trade copies.',
  },
  synthmind: {
    name: 'tabulation of US hardwood properties',
    citation: 'Tabulation of United States hardwood strength properties from Wood Handbook data.',
  },
  'frey-amon': {
    name: 'Frey-Amon data sheet',
    citation: 'Frey-Amon, timber data sheets for larch and robinia.',
  },
  'european-wood': {
    name: 'European Wood data sheet',
    citation: 'European Wood, data sheets for larch and Norway spruce, quoting EN 350-2.',
  },
  betterwood: { name: 'Betterwood lexicon', citation: 'Betterwood, wood lexicon, Scots pine.' },
  espen: { name: 'ESPEN data sheet', citation: 'ESPEN, timber data sheet, sweet chestnut.' },
  whitmores: {
    name: 'Whitmores data sheet',
    citation: 'Whitmores Timber, data sheet, sweet chestnut.',
  },
  cirad: { name: 'CIRAD Tropix', citation: 'CIRAD, Tropix data sheet, iroko, quoting EN 350-2.' },
  dekma: {
    name: 'Dekma data sheet',
    citation: 'Dekma Bolivia, technical sheet, Tabebuia serratifolia.',
  },
  wolman: {
    name: 'Wolman durability table',
    citation: 'Wolman, natural durability of wood, tabulating EN 350-2.',
  },
  nwpc: {
    name: 'Nordic Wood Preservation Council',
    citation:
      'Nordic Wood Preservation Council, natural durability of wood, tabulating EN 350:2016.',
  },
  en350: {
    name: 'EN 350',
    citation: 'EN 350, Durability of wood and wood-based products: natural durability.',
  },
  'saw-articles': {
    name: 'trade articles on saw blades',
    citation: 'Trade articles on table-saw and miter-saw blades, kerf classes.',
  },
} as const satisfies Record<string, Publication>;
