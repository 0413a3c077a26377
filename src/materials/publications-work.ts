import type { Publication } from './publication.js';

/** Publications on finish, tools, health, seats and loads. */
export const WORK_PUBLICATIONS = {
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
  'oily-rags': {
    name: 'NFPA on oily rags',
    citation: 'Home and tool articles quoting NFPA on oily rags.',
  },
  'miter-saw-manuals': {
    name: 'miter saw owner manuals',
    citation: 'Owner manuals of two miter saws.',
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
} as const satisfies Record<string, Publication>;
