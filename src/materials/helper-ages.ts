import type { CautionId } from './cautions.js';
import { type Sourced, sourced } from './sourced.js';
import { practice, seen } from './sources.js';

/** How old the helper is, as far as it decides who may do what. */
export type AgeBand = 'under-9' | '9-11' | '12-15' | '16-17' | 'grown';

/** What a briefed helper of some age may do with a tool. */
export type ToolRight =
  /** By the helper alone, the lead within call. */
  | 'alone'
  /** With the lead standing beside it, hands free. */
  | 'together'
  /** Not by the helper. */
  | 'lead';

export const AGE_BANDS: readonly { readonly id: AgeBand; readonly name: string }[] = [
  { id: 'grown', name: '18 or older' },
  { id: '16-17', name: '16 or 17' },
  { id: '12-15', name: '12 to 15' },
  { id: '9-11', name: '9 to 11' },
  { id: 'under-9', name: 'under 9' },
];

/** From the youngest band up. */
type Ladder = Readonly<Record<AgeBand, ToolRight>>;

const LEAD_ONLY: Ladder = {
  'under-9': 'lead',
  '9-11': 'lead',
  '12-15': 'lead',
  '16-17': 'lead',
  grown: 'lead',
};
const ANYBODY: Ladder = {
  'under-9': 'alone',
  '9-11': 'alone',
  '12-15': 'alone',
  '16-17': 'alone',
  grown: 'alone',
};
const GROWN_ALONE: Ladder = {
  'under-9': 'lead',
  '9-11': 'together',
  '12-15': 'together',
  '16-17': 'together',
  grown: 'alone',
};
const FROM_TWELVE_TOGETHER: Ladder = {
  'under-9': 'lead',
  '9-11': 'lead',
  '12-15': 'together',
  '16-17': 'together',
  grown: 'alone',
};
const FROM_TWELVE_ALONE: Ladder = {
  'under-9': 'together',
  '9-11': 'together',
  '12-15': 'alone',
  '16-17': 'alone',
  grown: 'alone',
};
const FROM_NINE_TOGETHER: Ladder = {
  ...FROM_TWELVE_ALONE,
  'under-9': 'lead',
  '12-15': 'together',
};

const SAWS = sourced(
  LEAD_ONLY,
  seen(
    'cfr-570-55',
    'no employment under 18 at powered woodworking tools; for somebody new to them taken at any age',
  ),
);
const POWERED = sourced(
  GROWN_ALONE,
  practice(
    'drill-driver and sander from about nine with somebody beside it; 29 CFR 570.55 keeps under-18s from them at work',
  ),
);
const SHARP = sourced(
  FROM_TWELVE_TOGETHER,
  practice('edge tools from about twelve, as in school shops, with somebody beside it'),
);
const HAND_TOOLS = sourced(
  FROM_TWELVE_ALONE,
  practice('hand tools without an edge, with somebody beside it, alone from about twelve'),
);
const HAND_SAWS = sourced(
  FROM_NINE_TOGETHER,
  practice('hand saws from about nine with somebody beside it, alone from about sixteen'),
);
const FINISHES = sourced(
  FROM_TWELVE_TOGETHER,
  practice('oil and solvents: read the label, which may set an age of its own'),
);
const MARKING = sourced(ANYBODY, practice('measuring and marking can hurt hardly anybody'));

const RIGHTS: Readonly<Record<string, Sourced<Ladder>>> = {
  'miter-saw': SAWS,
  'circular-saw': SAWS,
  'table-saw': SAWS,
  'push-stick': SAWS,
  jigsaw: SAWS,
  'brad-nailer': SAWS,
  'drill-driver': POWERED,
  countersink: POWERED,
  sander: POWERED,
  'hand-saw': HAND_SAWS,
  chisel: SHARP,
  mallet: HAND_TOOLS,
  clamps: HAND_TOOLS,
  'glue-brush': HAND_TOOLS,
  brush: FINISHES,
  'pump-sprayer': FINISHES,
  'moisture-meter': HAND_TOOLS,
};

/**
 * What a briefed helper of this age may do with a tool, and whose view that is. The lead may always
 * allow less; local law and the tool's manual come first. A tool that is not in the table can be held
 * by anybody.
 * @example toolRight('drill-driver', '9-11').value // 'together'
 */
export function toolRight(tool: string, band: AgeBand): Sourced<ToolRight> {
  const { value, source } = RIGHTS[tool] ?? MARKING;
  return sourced(value[band], source);
}

/** Work that somebody of this age does not do alone, whatever the tool. */
const WITH_SOMEBODY: readonly CautionId[] = ['lifting', 'sealer', 'rags', 'spray', 'treated-wood'];

/** Must somebody stand beside a helper of this age because of what the step brings with it? */
export function needsCompany(care: readonly string[], band: AgeBand): boolean {
  return band !== 'grown' && WITH_SOMEBODY.some(id => care.includes(id));
}

/** How much of a shared step a helper does by themselves: the whole of it, what lies beside its tools, or nothing. */
export type HelperShare = 'all' | 'some' | 'none';

/**
 * What a helper of this age can take off the lead in a step that both do. All of it where they may hold every tool
 * alone; where one stays with the lead, or wants the lead beside it, they mark, fetch, hold and clamp meanwhile. Whoever
 * needs somebody beside them even at clamps and glue learns by it and saves no time.
 * @example helperShare({ tools: ['miter-saw', 'tape'], care: [] }, 'grown') // 'some'
 */
export function helperShare(
  { tools, care }: { readonly tools: readonly string[]; readonly care: readonly string[] },
  band: AgeBand,
): HelperShare {
  if (HAND_TOOLS.value[band] !== 'alone' || needsCompany(care, band)) return 'none';
  return tools.every(tool => toolRight(tool, band).value === 'alone') ? 'all' : 'some';
}

/** What every plan with a young helper tells once. */
export const AGE_WORDS =
  'who does what here goes by usual ages, not by a law. Laws on young people and tools differ from place to place, and where somebody is paid they are strict. Your local rules, the manual of the tool and what you know of this helper come first.';
