import { glueOf } from '../materials/glue.js';
import { AGE_BANDS, AGE_WORDS } from '../materials/helper-ages.js';
import { metalWarning, SCREW_METALS } from '../materials/screw-metal.js';
import { GLUE } from './glue-plan.js';
import type { HoldRow } from './hold-row.js';
import type { FitCheck, Purchase, SpacingRow } from './plan.js';
import type { Setting } from './setting.js';

type Given = {
  readonly fit: readonly FitCheck[];
  readonly holds: readonly HoldRow[];
  readonly purchases: readonly Purchase[];
  readonly spacing: readonly SpacingRow[];
  readonly troubles: readonly string[];
  readonly setting: Setting;
};

/** What has to be looked at before money is spent, the worst first. */
export function warnings({
  fit,
  holds,
  purchases,
  spacing,
  troubles,
  setting,
}: Given): readonly string[] {
  const noFit = fit.filter(check => check.verdict !== 'fits');
  const worstFirst = [...noFit].sort(
    (a, b) => Number(b.verdict === 'does not fit') - Number(a.verdict === 'does not fit'),
  );
  return [
    ...worstFirst.map(check => `${check.say}, ${check.verdict}: ${check.advice}`),
    ...holds.filter(fails).map(({ say, verdict, better }) => `${say}: ${verdict}. ${better}`),
    ...closeCalls(holds.filter(isClose)),
    ...purchases.flatMap(purchase =>
      purchase.missing.map(words => `${purchase.section}: ${words}.`),
    ),
    ...troubles,
    ...spacing.flatMap(gapWarnings),
    ...metalWords(setting),
    ...GLUE_WORDS[setting.dryness.forGlue],
    ...ageWords(setting),
  ];
}

const WETTEST = glueOf(GLUE).wettestWoodPercent.value;

/** Both ways out of wood too wet for glue; how long it dries is woodworkers' practice. */
const WAYS_OUT = `Either dry them first, on stickers indoors with the air moving, for weeks until a meter shows ${WETTEST}% or less: the time plan holds no such wait, so buy early and name a later first day. Or leave the glue out, with screws alone, in place of the brads too; without glue a joint is weaker than planned.`;

const GLUE_WORDS: Readonly<Record<Setting['dryness']['forGlue'], readonly string[]>> = {
  ready: [],
  'meter-first': [
    `Put a moisture meter on the boards: they may be sold wetter than the ${WETTEST}% that glue wants. ${WAYS_OUT}`,
  ],
  'too-wet': [`The boards are too wet for glue as they are sold. ${WAYS_OUT}`],
};

/** Who may do what with a young helper is usage, and the law may ask for more. */
function ageWords({ helper }: Setting): readonly string[] {
  if (helper === undefined || helper === 'grown') return [];
  const name = AGE_BANDS.find(({ id }) => id === helper)?.name ?? helper;
  return [`The helper is ${name}: ${AGE_WORDS}`];
}

/** Warned before buying: black rings cannot be washed out afterwards. */
function metalWords({ metal, species }: Setting): readonly string[] {
  const known = SCREW_METALS.find(it => it.id === metal);
  if (!known) return [];
  const warning = metalWarning(known.id, species, { coast: false, finish: 'clear' });
  return warning === undefined ? [] : [warning];
}

function fails({ verdict }: HoldRow): boolean {
  return verdict === 'does not hold by this sum';
}

function isClose({ verdict }: HoldRow): boolean {
  return verdict === 'look again';
}

/** Only what comes first of each, once; the rest stands beside the sum. */
function closeCalls(rows: readonly HoldRow[]): readonly string[] {
  if (rows.length === 0) return [];
  const said = rows.map(
    ({ say, verdict, better }) => `${say}: ${verdict}. ${better.split(/(?<=\.) /)[0]}`,
  );
  return [
    ...new Set(said),
    'The sums of these loads, and who has to be asked, are on the page of fit.',
  ];
}

/** A gap that goes wrong in some month; told shortly, the sum stands on the page of spacings. */
function gapWarnings({ name, year }: SpacingRow): readonly string[] {
  return year.verdict === 'fine'
    ? []
    : [
        `${name}: the gap ${year.verdict} at some time of the year. ${year.words.slice(-2).join(' ')}`,
      ];
}
