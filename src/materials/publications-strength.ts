import type { Publication } from './publication.js';

/** Publications on the strength of wood, screws and what stands below. */
export const STRENGTH_PUBLICATIONS = {
  'lumber-values': {
    name: 'design values for dimension lumber, transcription',
    citation:
      'NDS Supplement 2018, Table 4A, and the Southern Pine Use Guide (SFPA), metric edition. Seen in a transcription of both.',
  },
  'redwood-values': {
    name: 'design values for redwood, quotation',
    citation: 'NDS Supplement, Table 4A, one row for redwood, open grain. Seen as a quotation.',
  },
  'load-duration': {
    name: 'load duration table (after Breyer)',
    citation:
      'Breyer and others, Design of Wood Structures, table of load duration factors. Seen in an engineering reference.',
  },
  'purdue-ce479': {
    name: 'Purdue CE 479 wood design example',
    citation: 'Purdue University, CE 479, wood design example after NDS 2001 Tables 2.3.2 and 4A.',
  },
  nelma: {
    name: 'NELMA Standard Grading Rules, section 8',
    citation:
      'Northeastern Lumber Manufacturers Association, Standard Grading Rules, section 8, Tables A and B.',
  },
  'ibc-deflection': {
    name: 'IBC Table 1604.3',
    citation:
      'International Building Code, Table 1604.3, deflection limits. Seen in a reproduction.',
  },
  'irc-deflection': {
    name: 'IRC Table R301.7',
    citation:
      'International Residential Code, Table R301.7, allowable deflection. Seen in a code-change text.',
  },
  'awc-notches': {
    name: 'American Wood Council on notches',
    citation: 'American Wood Council, how to design for notches in a bending member.',
  },
  ec5: { name: 'EN 1995-1-1', citation: 'EN 1995-1-1 (Eurocode 5), Design of timber structures.' },
  en1990: { name: 'EN 1990', citation: 'EN 1990 (Eurocode), Basis of structural design.' },
  en1912: {
    name: 'EN 1912',
    citation: 'EN 1912, Structural timber, strength classes: assignment of species and grades.',
  },
  'beam-pages': {
    name: 'engineering pages on beams',
    citation:
      'Engineering reference pages of beam formulas (uniform load, center load, two loads).',
  },
  'screw-withdrawal': {
    name: 'engineering page on screw withdrawal',
    citation: 'Engineering reference page, allowable withdrawal loads of wood screws.',
  },
  'civil-formulas': {
    name: 'Civil Engineering Formulas, chapter 6',
    citation: 'Civil Engineering Formulas, chapter 6, timber engineering, pages 170 and 171.',
  },
  'soil-densities': {
    name: 'engineering pages on soil and dirt',
    citation: 'Engineering reference pages, densities of dirt, mud and earth.',
  },
} as const satisfies Record<string, Publication>;
