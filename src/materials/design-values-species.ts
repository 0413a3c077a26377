import { inches } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import { lessThan } from '../measure/tolerance.js';
import { type NdsValues, ndsValues } from './design-values-nds.js';
import { southernPine } from './design-values-southern-pine.js';
import { practice, recalled } from './sources.js';
import type { Species } from './species.js';
import { type ClassValues, strengthClass } from './strength-classes.js';

/** Values that a beam of this wood is checked with, and what had to be assumed about the boards. */
export type WoodStrength = {
  readonly values: NdsValues | ClassValues;
  /** "No. 2 redwood, open grain": in a sentence, so that a reader can look at the stamp. */
  readonly assumed: string;
};

type Assumed =
  | { readonly group: string; readonly grade: string; readonly words: string }
  | { readonly southernPine: 'No.2'; readonly words: string }
  | { readonly strengthClass: string; readonly words: string };

const no2 = (group: string, words: string): Assumed => ({ group, grade: 'No.2', words });

/** A store board without a better stamp is taken as No. 2, or as the class of a plain sort. */
const ASSUMED: Readonly<Record<string, Assumed>> = {
  redwood: { group: 'Redwood', grade: 'No.2, open grain', words: 'redwood No. 2, open grain' },
  'western-redcedar': no2('Western Cedars', 'western cedars No. 2'),
  'alaska-yellow-cedar': no2('Western Cedars', 'western cedars No. 2, the group it is graded in'),
  'northern-white-cedar': no2('Northern White Cedar', 'northern white cedar No. 2'),
  baldcypress: no2(
    'Eastern Softwoods',
    'eastern softwoods No. 2, weaker than cypress, which is not in the table at hand',
  ),
  'douglas-fir': no2('Douglas Fir-Larch', 'Douglas fir-larch No. 2'),
  'western-larch': no2('Douglas Fir-Larch', 'Douglas fir-larch No. 2'),
  'southern-pine': { southernPine: 'No.2', words: 'southern pine No. 2, not incised' },
  'hem-fir': no2('Hem-Fir', 'hem-fir No. 2'),
  'spruce-pine-fir': {
    group: 'Spruce-Pine-Fir',
    grade: 'No.1/No.2',
    words: 'spruce-pine-fir No. 2',
  },
  'white-oak': no2('White Oak', 'white oak No. 2'),
  'european-larch': { strengthClass: 'C18', words: 'class C18, a plain sort of larch' },
  'scots-pine': { strengthClass: 'C16', words: 'class C16, a plain sort of pine' },
  'norway-spruce': { strengthClass: 'C16', words: 'class C16, a plain sort of spruce' },
  'sweet-chestnut': { strengthClass: 'D24', words: 'class D24' },
  'black-locust': { strengthClass: 'D30', words: 'class D30, lower than locust is usually sorted' },
  teak: { strengthClass: 'D40', words: 'class D40' },
  iroko: { strengthClass: 'D40', words: 'class D40' },
  ipe: { strengthClass: 'D40', words: 'class D40, lower than ipe is usually sorted' },
};

/** A wood without a row of its own is taken for the weakest there is. */
const WEAKEST = {
  softwood: no2('Northern White Cedar', 'the weakest softwood in the table, No. 2'),
  hardwood: { strengthClass: 'D18', words: 'class D18, the weakest hardwood class' },
} as const satisfies Record<Species['kind'], Assumed>;

/** Where the assumptions come from. */
export const GRADE_SOURCES = [
  practice('a store board without a better stamp is taken as No. 2'),
  practice('unsorted European softwood is taken as C16, larch as C18'),
  recalled('en1912', 'teak and iroko D40, sweet chestnut D24'),
];

/**
 * What a board of this species and width is taken to be. The stamp on the board comes first: a board
 * without one may be weaker.
 * @example strengthOf(redwood, inches(3.5)).values.bending // 5.0 N/mm2: 725 psi
 */
export function strengthOf(species: Pick<Species, 'id' | 'kind'>, width: Mm): WoodStrength {
  const assumed = ASSUMED[species.id] ?? WEAKEST[species.kind];
  const values = valuesOf(assumed, width);
  if (values === undefined) throw new Error(`no row of strength for ${species.id}`);
  const standIn =
    'southernPine' in assumed && values.kind === 'nds' && values.group !== 'Southern Pine';
  return { values, assumed: standIn ? WIDE_PINE : assumed.words };
}

/** Dimension lumber, which the American table is for, starts here; 1-1/2 in dressed. */
const LEAST_THICKNESS: Mm = inches(1.5);

/**
 * The assumption in words, with a warning where the board is thinner than the table is made for.
 * @example assumedWords(wood, inches(1)) // 'redwood No. 2, open grain, by the table for two-by lumber'
 */
export function assumedWords({ values, assumed }: WoodStrength, thickness: Mm): string {
  const thin = values.kind === 'nds' && lessThan(thickness, LEAST_THICKNESS);
  return thin
    ? `${assumed}, by the table for two-by lumber: thinner boards have none here`
    : assumed;
}

function valuesOf(assumed: Assumed, width: Mm): NdsValues | ClassValues | undefined {
  if ('strengthClass' in assumed) return strengthClass(assumed.strengthClass);
  if ('southernPine' in assumed) return widthKept(width);
  return ndsValues(assumed.group, assumed.grade);
}

const WIDE_PINE =
  'eastern softwoods No. 2, weaker than southern pine, whose boards wider than a 2x8 are not kept here';

/** Boards wider than a 2x8 take the values of eastern softwoods, which are lower at any width. */
function widthKept(width: Mm): NdsValues | undefined {
  return southernPine('No.2', width) ?? ndsValues('Eastern Softwoods', 'No.2');
}
