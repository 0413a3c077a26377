import type { Publication } from './publication.js';

/** Publications on screws, nails, metals and glue. */
export const JOINING_PUBLICATIONS = {
  nds: {
    name: 'NDS 2018',
    citation:
      'ANSI/AWC NDS, National Design Specification for Wood Construction (2018), with its appendixes and commentary.',
  },
  'nds-supplement': {
    name: 'NDS Supplement 2018',
    citation: 'ANSI/AWC NDS Supplement, Design Values for Wood Construction (2018).',
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
} as const satisfies Record<string, Publication>;
