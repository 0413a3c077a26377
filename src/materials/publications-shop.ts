import type { Publication } from './publication.js';

/** Publications on clamping, weather, measuring, pots and drainage. */
export const SHOP_PUBLICATIONS = {
  'clamp-magazine': {
    name: 'woodwork magazine on clamp pressure',
    citation: 'Woodwork magazine, worked example of clamp pressure and limits of it.',
  },
  'clamp-count': {
    name: 'woodwork article on the number of clamps',
    citation: 'Woodwork article on the number of clamps, after tests by Rabiej.',
  },
  'glue-cold': {
    name: 'glue maker advice on cold',
    citation: 'Advice of a glue maker on gluing in the cold. Seen as relayed by woodworkers.',
  },
  magnus: {
    name: 'Magnus formula, constants 17.625 and 243.04',
    citation: 'Magnus form of the dew point with the constants 17.625 and 243.04 °C, -40 to 50 °C.',
  },
  'magnus-older': {
    name: 'Magnus formula, constants 17.27 and 237.7',
    citation: 'Magnus form of the dew point with the older constants 17.27 and 237.7 °C.',
  },
  'deck-sprinkle': {
    name: 'deck care pages on wet treated lumber',
    citation: 'Deck care and trade pages on the sprinkle test and on finishing treated lumber.',
  },
  hb44: {
    name: 'NIST Handbook 44',
    citation:
      'NIST Handbook 44, section 5.52, metal measuring tapes. Seen as quoted by the US Access Board.',
  },
  'eu-tapes': {
    name: 'Directive 2014/32/EU',
    citation: 'Directive 2014/32/EU on measuring instruments, accuracy classes of tapes.',
  },
  'framing-benchmark': {
    name: 'residential construction handbook on squareness',
    citation:
      'Residential construction handbook, squareness of framing. Seen quoted in an article.',
  },
  'ansi-z60': {
    name: 'ANSI Z60.1',
    citation:
      'ANSI Z60.1 (2004), American Standard for Nursery Stock, container classes. Seen in a summary.',
  },
  'nursery-volumes': {
    name: 'nursery list of true volumes (Bookcliff Gardens)',
    citation: 'Bookcliff Gardens, true container volumes as declared to weights and measures.',
  },
  'nursery-diameters': {
    name: 'nursery container diameters (Planeta Garden)',
    citation: 'Planeta Garden, understanding nursery containers, usual pot sizes and diameters.',
  },
  'nursery-chart': {
    name: 'nursery container size chart',
    citation:
      'Nursery container size chart of a garden page. Seen in a copy that had lost its decimal points.',
  },
  'clay-column': {
    name: 'garden column on clay pots (Shelby County Reporter)',
    citation: 'Shelby County Reporter, garden column with measured 6 in clay pots.',
  },
  'flower-pot-chart': {
    name: 'flower pot dimension chart',
    citation: 'Flower pot dimension chart of a web page that names no source.',
  },
  'pot-catalogs': {
    name: 'typical pot catalogs',
    citation: 'Catalogs typical of nursery, plastic and clay pots.',
  },
  'planter-drainage': {
    name: 'planter maker page on drainage',
    citation: 'Planter maker page on drainage holes and on raising planters.',
  },
} as const satisfies Record<string, Publication>;
