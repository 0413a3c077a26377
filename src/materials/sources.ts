import type { Source } from '../measure/figure.js';

export type Publication = {
  /** Short enough to stand beside a number. */
  readonly name: string;
  readonly citation: string;
};

/**
 * Every publication that a trade number here is taken from, in full. "Seen in" names the copy that
 * was read where the publication itself was not at hand: such a copy can carry its own misprints.
 */
export const PUBLICATIONS = {
  ps20: {
    name: 'American Softwood Lumber Standard PS 20',
    citation:
      'American Softwood Lumber Standard, Voluntary Product Standard PS 20, nominal and minimum dressed sizes. Seen in the tables of The Engineering ToolBox.',
  },
  'grading-rules': {
    name: 'American softwood grading rules',
    citation:
      'American softwood grading rules, moisture wording of the grade stamp (S-DRY, S-GRN, KD15).',
  },
  'size-chart': {
    name: 'Sizes, Inc., US softwood lumber',
    citation: 'Sizes, Inc., page on United States softwood lumber, quoting PS 20 on lengths.',
  },
  en336: {
    name: 'EN 336',
    citation:
      'EN 336, Structural timber: sizes and permitted deviations, with the United Kingdom national annex.',
  },
  'en1313-1': {
    name: 'EN 1313-1',
    citation: 'EN 1313-1, Round and sawn timber: permitted deviations and preferred sizes, part 1.',
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
  'fpl-rp-489': {
    name: 'USDA FPL-RP-489',
    citation:
      'Green, Moisture Content and the Shrinkage of Lumber, Research Paper FPL-RP-489, USDA Forest Products Laboratory (1989).',
  },
  'fpl-0153': {
    name: 'USDA FPL-0153',
    citation:
      'USDA Forest Products Laboratory, Research Note FPL-0153, Comparative Decay Resistance of Heartwood (1967). Seen in a magazine reprint.',
  },
  'fpl-larch': {
    name: 'USDA FPL technical sheet, western larch',
    citation:
      'USDA Forest Products Laboratory, Technical Sheet, Larix occidentalis (Softwoods of North America, FPL-GTR-102).',
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
  nds: {
    name: 'NDS 2018',
    citation:
      'ANSI/AWC NDS, National Design Specification for Wood Construction (2018), with its appendixes and commentary.',
  },
  'nds-supplement': {
    name: 'NDS Supplement 2018',
    citation: 'ANSI/AWC NDS Supplement, Design Values for Wood Construction (2018).',
  },
  ec5: {
    name: 'EN 1995-1-1',
    citation: 'EN 1995-1-1, Eurocode 5: Design of timber structures, part 1-1.',
  },
  en14592: {
    name: 'EN 14592',
    citation: 'EN 14592, Timber structures: dowel-type fasteners, requirements.',
  },
  'asme-b18-6-1': { name: 'ASME B18.6.1', citation: 'ASME B18.6.1, Wood Screws (Inch Series).' },
  'boring-chart': {
    name: 'boat-owner wood-screw chart (L-36)',
    citation: 'Boat-owner reference table of wood-screw shank, root and pilot sizes (L-36).',
  },
  'boring-plate': {
    name: 'boatbuilding plate 6B (Glen-L)',
    citation: 'Glen-L, boatbuilding plate 6B, Wood Screw Chart: pilot, clearance, counterbore.',
  },
  'screw-sizes': {
    name: 'distributor wood-screw chart (Albany County Fasteners)',
    citation: 'Albany County Fasteners, chart of United States wood screw sizes.',
  },
  'thread-limits': {
    name: 'trade page on ASME B18.6.1',
    citation: 'Trade page quoting ASME B18.6.1 wood-screw diameters and threads.',
  },
  'head-sizes': {
    name: 'trade page on screw heads and threads',
    citation: 'Trade page of maximum flat-head diameters and threads by gauge.',
  },
  'gauge-formula': {
    name: 'screw maker page on gauges',
    citation: 'Fastener maker page, diameter from the gauge number.',
  },
  'shop-boring': {
    name: 'hardware store boring chart',
    citation: 'Hardware store boring chart for wood screws, explanatory notes.',
  },
  'design-text': {
    name: 'civil engineering design text, wood screws',
    citation: 'Civil engineering design text, section on wood screws, after the NDS of its day.',
  },
  'screw-length-magazine': {
    name: 'This Old House, fastener length',
    citation: 'This Old House, how long a fastener should be.',
  },
  'screw-length-two-thirds': {
    name: 'trade article, two-thirds rule',
    citation: 'Trade article, threads to enter by two-thirds of the fastened piece.',
  },
  'screw-engagement': {
    name: 'trade article, thread engagement',
    citation: 'Trade article, how much thread the second board needs.',
  },
  'nail-gauges': {
    name: 'trade articles on nail gauges',
    citation: 'Trade articles on brad and finish nail gauges and lengths.',
  },
  'ibc-fasteners': {
    name: 'IBC 2304.9.5 and IRC R317.3',
    citation:
      '2012 International Building Code 2304.9.5 and 2009 International Residential Code R317.3, fasteners in treated wood. Seen in an extract.',
  },
  'cedar-leaflet': {
    name: 'western red cedar leaflet',
    citation: 'Western red cedar assembly leaflet, fastener advice.',
  },
  'cedar-trade': {
    name: 'cedar trade association',
    citation: 'Lumber dealer interview with the cedar trade association on fasteners.',
  },
  'mixed-metals': {
    name: 'trade article on mixed metals',
    citation: 'Trade article on mixing galvanized and stainless fasteners outdoors.',
  },
  en204: {
    name: 'EN 204',
    citation:
      'EN 204, Classification of thermoplastic wood adhesives. Class meanings seen in a supplier note.',
  },
  hpva: {
    name: 'ANSI/HPVA HP-1',
    citation: 'ANSI/HPVA HP-1, Type I and Type II water tests. Seen in the wood-industry press.',
  },
  'pva-guide': {
    name: 'PVA glue maker guides',
    citation: 'Glue maker guides for polyvinyl acetate wood glues.',
  },
  'pva-sheets': {
    name: 'typical PVA data sheets',
    citation: 'Data sheets typical of cross-linking polyvinyl acetate glues.',
  },
  'glue-table': {
    name: 'woodwork archive glue table',
    citation: 'Woodwork archive, table of glue characteristics.',
  },
  'pu-articles': {
    name: 'polyurethane glue maker articles',
    citation: 'Glue maker articles on one-part polyurethane.',
  },
  'pu-sheets': {
    name: 'typical polyurethane data sheets',
    citation: 'Data sheets typical of one-part polyurethane glues.',
  },
  'epoxy-notes': {
    name: 'epoxy maker notes',
    citation: 'Epoxy maker and supplier notes on gel time, cure and cold.',
  },
  'resorcinol-bulletin': {
    name: 'resorcinol glue bulletin',
    citation:
      'Resorcinol glue technical bulletin reprinted in a wooden-aircraft construction manual.',
  },
  'resorcinol-sheets': {
    name: 'typical resorcinol bulletins',
    citation: 'Bulletins typical of resorcinol glues.',
  },
  'older-finishing': {
    name: 'extension text on wood finishing',
    citation: 'Extension-derived text on wood finishing, coverage of penetrating stains.',
  },
  'oil-sheet': {
    name: 'penetrating oil application sheet',
    citation: 'Application sheet of a penetrating exterior oil.',
  },
  'finish-labels': {
    name: 'typical finish labels',
    citation: 'Labels typical of exterior sealers and stains.',
  },
  'deck-finishing': {
    name: 'This Old House, deck finishing',
    citation: 'This Old House, quoting a USDA chemist on deck finishing.',
  },
  'coating-weather': {
    name: 'coating trade notes on weather',
    citation: 'Coating trade notes on dew point and humidity.',
  },
  'southern-pine-finish': {
    name: 'southern pine trade association',
    citation: 'Southern pine trade association, sealers and finishes for treated lumber.',
  },
  'oily-rags': {
    name: 'NFPA on oily rags',
    citation: 'Home and tool articles quoting NFPA on oily rags.',
  },
  'saw-articles': {
    name: 'trade articles on saw blades',
    citation: 'Trade articles on table-saw and miter-saw blades, kerf classes.',
  },
  'miter-saw-manuals': {
    name: 'miter saw owner manuals',
    citation: 'Owner manuals of two miter saws.',
  },
  'shop-rules': {
    name: 'woodwork magazine on the power miter saw',
    citation: 'Woodwork magazine, keeping out of trouble at a power miter saw (2008).',
  },
  'tool-institute': {
    name: 'Power Tool Institute',
    citation: 'Power Tool Institute, general rules for power tools.',
  },
  'nail-gun-guide': {
    name: 'OSHA/NIOSH nail gun guide',
    citation:
      'OSHA/NIOSH, Nail Gun Safety: a guide for construction contractors. Seen in a trade reprint.',
  },
  'osha-hand-tools': {
    name: 'OSHA, Hand and Power Tools',
    citation: 'OSHA, Hand and Power Tools.',
  },
  'osha-dust': { name: 'OSHA on wood dust', citation: 'OSHA, wood dust, evaluating exposure.' },
  'niosh-pocket': {
    name: 'NIOSH Pocket Guide, wood dust',
    citation: 'NIOSH Pocket Guide to Chemical Hazards, wood dust.',
  },
  'noise-survey': {
    name: 'magazine shop noise survey',
    citation: 'Woodwork magazine shop noise survey (2004) with the NIOSH rule.',
  },
  'noise-hobby': {
    name: 'hobby readings of shop tools',
    citation: 'Single-meter readings of shop tools published by a woodworker.',
  },
  'niosh-lifting': {
    name: 'NIOSH lifting recommendation',
    citation: 'OSHA page on the NIOSH lifting recommendation.',
  },
  'cfr-570-55': {
    name: '29 CFR 570.55',
    citation:
      '29 CFR 570.55, power-driven woodworking machines and young workers. Seen in a handbook.',
  },
  'gfci-note': {
    name: 'National Electrical Code, Class A GFCI',
    citation:
      'National Electrical Code note on Class A ground-fault interrupters. Seen in a glossary.',
  },
  'outdoor-cords': {
    name: 'university page on outdoor cords',
    citation: 'Southern Utah University, working outdoors and extension cords.',
  },
  'treated-wood-sheet': {
    name: 'consumer sheets on treated wood',
    citation: 'Treated-wood maker and Wood Handbook chapter 15, consumer handling of treated wood.',
  },
  'wood-toxicity': {
    name: 'HSE Woodworking Sheet 30',
    citation: 'Woodturning club summary of HSE Woodworking Sheet 30, Toxic woods.',
  },
  'oak-dust': {
    name: 'timber guide on toxic woods',
    citation: 'Timber guide, overview of toxic woods.',
  },
  'glue-hazards': {
    name: 'typical glue safety data sheets',
    citation: 'Safety data sheets typical of wood glues.',
  },
  'spray-masks': {
    name: 'respirator maker article',
    citation: 'Respirator maker article on choosing a respirator for painting.',
  },
  'ada-903': {
    name: '2010 ADA Standards',
    citation: '2010 ADA Standards for Accessible Design, sections 305, 403, 902 and 903.',
  },
  pheasant: {
    name: 'Pheasant, seat recommendations',
    citation:
      'Pheasant, Bodyspace, seat recommendations for British adults. Seen in a design course page.',
  },
  'seat-note': {
    name: 'outdoor furniture maker note',
    citation: 'Outdoor furniture maker note on bench dimensions.',
  },
  cpsc: {
    name: 'US CPSC playground handbook',
    citation: 'US CPSC, Public Playground Safety Handbook, B.2.5, entrapment.',
  },
  bs8579: {
    name: 'BS 8579:2020',
    citation: 'BS 8579:2020, gaps between deck boards. Seen in a trade learning module.',
  },
  'en581-1': { name: 'EN 581-1', citation: 'EN 581-1, Outdoor furniture, gaps and holes.' },
  'deck-loads': {
    name: 'International Residential Code, decks',
    citation:
      'International Residential Code, deck live load. Seen in notes on the 2000 to 2009 editions.',
  },
  'soil-weights': {
    name: 'gardening pages on soil weight',
    citation: 'Gardening reference pages on the weight of potting mix and soil.',
  },
  'deck-times': {
    name: 'deck trade figures',
    citation: 'Deck trade figures, hours for laying deck boards.',
  },
} as const satisfies Record<string, Publication>;

export type PublicationId = keyof typeof PUBLICATIONS;

/** Source of a number that was read in the publication or a copy of it. */
export function seen(id: PublicationId, place: string): Source {
  return { publication: PUBLICATIONS[id].name, place, standing: 'checked' };
}

/** Source of a number remembered from the publication and not looked up. */
export function recalled(id: PublicationId, place: string): Source {
  return { publication: PUBLICATIONS[id].name, place, standing: 'memory' };
}

/** Source of a number worked out here from a published rule or table; `place` says how. */
export function workedOut(id: PublicationId, place: string): Source {
  return { publication: PUBLICATIONS[id].name, place, standing: 'computed' };
}

/** Source of a number that the trade uses without anybody publishing it; `place` says what for. */
export function practice(place: string): Source {
  return { publication: 'common practice', place, standing: 'practice' };
}
