import { DRYNESS } from '../materials/dryness.js';
import { AGE_BANDS } from '../materials/helper-ages.js';
import { SAWS } from '../materials/saws.js';
import { SCREW_METALS } from '../materials/screw-metal.js';
import { SPECIES } from '../materials/species.js';
import type { Formula, Node } from './formula.js';
import type { Place } from './place.js';
import type { Option, Question } from './recipe.js';

type Standard = Omit<Question, 'id' | 'at' | 'usual' | 'from' | 'to'> & {
  readonly usual?: Node;
  readonly from?: number;
  readonly to?: number;
};

const NOTHING_ELSE = { options: [], fields: [] } as const;

function word(value: string): Node {
  return { kind: 'text', value };
}

const SPECIES_OPTIONS: readonly Option[] = SPECIES.map(({ id, name, durability }) => ({
  id,
  say: name,
  why: durability.value,
}));

const DRYNESS_OPTIONS: readonly Option[] = DRYNESS.map(({ id, name, moisturePercent }) => ({
  id,
  say: name,
  why: `planned with ${moisturePercent.value} % moisture until a meter says otherwise`,
}));

const METAL_OPTIONS: readonly Option[] = SCREW_METALS.map(({ id, name, goodFor }) => ({
  id,
  say: name,
  why: goodFor,
}));

/** Kinds of place by a town whose wood moisture through the year is known. */
const CLIMATE_OPTIONS: readonly Option[] = [
  {
    id: 'dry-inland',
    say: 'Dry inland',
    why: 'cold or hot, but dry most of the year, like Salt Lake City',
  },
  { id: 'wet-coast', say: 'Wet coast', why: 'mild and damp, like Seattle or London' },
  {
    id: 'cold-winter',
    say: 'Cold winters',
    why: 'frost, snow and warm summers, like Minneapolis or Berlin',
  },
];

const EXPOSURE_OPTIONS: readonly Option[] = [
  {
    id: 'open',
    say: 'In rain and sun',
    why: 'boards swing further than the air alone would make them',
  },
  { id: 'sheltered', say: 'Under a roof', why: 'boards follow the dampness of the air' },
];

/** A grown helper is `helper`; what the younger ones may hold follows their age. */
const YOUNG_HELPERS: readonly Option[] = AGE_BANDS.filter(({ id }) => id !== 'grown').map(
  ({ id, name }) => ({
    id: `helper-${id}`,
    say: `Two, the helper ${name}`,
    why: 'saws stay with the lead; the law comes first',
  }),
);

const SAW_OPTIONS: readonly Option[] = SAWS.map(({ id, name }) => ({ id, say: name, why: '' }));

/** Questions that every project asks in the same words, by the id that a project file gives them. */
const STANDARD: Readonly<Record<string, Standard>> = {
  species: {
    kind: 'choice',
    say: 'Which wood will it be?',
    why: 'Weight, screw holes, stains and how long it lasts outdoors all follow the species.',
    usual: word('western-redcedar'),
    options: SPECIES_OPTIONS,
    fields: [],
  },
  dryness: {
    kind: 'choice',
    say: 'How dry are the boards?',
    why: 'Wet boards shrink once they are built in; look for the stamp, or put a meter on one.',
    usual: word('surfaced-dry'),
    options: DRYNESS_OPTIONS,
    fields: [],
  },
  climate: {
    kind: 'choice',
    say: 'What is the weather like where it will stand?',
    why: 'Boards grow and shrink with it, and the gaps between them have to bear that.',
    usual: word('cold-winter'),
    options: CLIMATE_OPTIONS,
    fields: [],
  },
  exposure: {
    kind: 'choice',
    say: 'Will rain and sun reach it?',
    why: 'Open boards get wetter and drier than the air; gaps need more room.',
    usual: word('open'),
    options: EXPOSURE_OPTIONS,
    fields: [],
  },
  metal: {
    kind: 'choice',
    say: 'Which metal are the screws?',
    why: 'Rain and tannin turn the wrong metal into rust and black streaks.',
    usual: word('stainless-304'),
    options: METAL_OPTIONS,
    fields: [],
  },
  saw: {
    kind: 'choice',
    say: 'Which saw makes the crosscuts?',
    why: 'Every cut turns the width of its blade into dust, and that comes off each board.',
    usual: word('miter-saw'),
    options: SAW_OPTIONS,
    fields: [],
  },
  offers: {
    kind: 'offers',
    say: 'Which boards can you buy, and at what price?',
    why: 'Section, length and price of each, as on the shelf; the price may be left out.',
    ...NOTHING_ELSE,
  },
  on_hand: {
    kind: 'boards',
    say: 'Which boards do you have already?',
    why: 'They are used first. Give the length that is sound, without splits and bad ends.',
    ...NOTHING_ELSE,
  },
  left_over: {
    kind: 'choice',
    say: 'Boards can be cut in several ways at the same cost. What do you like better?',
    why: 'It costs nothing either way, and nothing is wasted that could be used.',
    usual: word('settings'),
    options: [
      { id: 'settings', say: 'Setting the stop less often', why: 'quicker, and fewer slips' },
      { id: 'offcut', say: 'One long offcut', why: 'something left to build with, or for a slip' },
    ],
    fields: [],
  },
  people: {
    kind: 'choice',
    say: 'Who builds?',
    why: 'The lead knows the tools, decides and uses the saws; a helper holds, hands, counts and learns.',
    usual: word('helper'),
    options: [
      { id: 'alone', say: 'One person', why: 'a stand or a clamp holds long boards' },
      {
        id: 'helper',
        say: 'Two, the helper 18 or older',
        why: 'the helper is briefed step by step',
      },
      ...YOUNG_HELPERS,
    ],
    fields: [],
  },
  first_day: {
    kind: 'date',
    say: 'On which day do you begin?',
    why: 'With a date every session gets its day, and waits of a night or a week are counted as they fall. None: sessions are only numbered.',
    ...NOTHING_ELSE,
  },
  session_days: {
    kind: 'days',
    say: 'On which days can you work?',
    why: 'Glue and sealer stand overnight, or for the days between two sessions.',
    usual: word('every day'),
    ...NOTHING_ELSE,
  },
  session_from: {
    kind: 'clock',
    say: 'At what time does a session begin?',
    why: 'Early enough that the saws are done before it has to be quiet.',
    usual: word('18:00'),
    ...NOTHING_ELSE,
  },
  session_hours: {
    kind: 'hours',
    say: 'How many hours is one session?',
    why: 'Glue and finish dry between sessions instead of while you stand and wait.',
    usual: { kind: 'number', value: 3 },
    from: 1,
    to: 10,
    ...NOTHING_ELSE,
  },
  noise_until: {
    kind: 'clock',
    say: 'Until what time may it be loud?',
    why: 'Saws, nailer and sander stay off after it; quiet work goes on. Your house or town may have a rule.',
    usual: word('22:00'),
    ...NOTHING_ELSE,
  },
};

export const STANDARD_IDS: readonly string[] = Object.keys(STANDARD);

/** The full question behind `species: standard`, or undefined when there is no such question. */
export function standardQuestion(id: string, at: Place): Question | undefined {
  if (!Object.hasOwn(STANDARD, id)) return undefined;
  const standard = STANDARD[id];
  if (standard === undefined) return undefined;
  const { usual, from, to, ...rest } = standard;
  return {
    ...rest,
    id,
    at,
    ...(usual === undefined ? {} : { usual: written(usual, at) }),
    ...(from === undefined ? {} : { from: written({ kind: 'number', value: from }, at) }),
    ...(to === undefined ? {} : { to: written({ kind: 'number', value: to }, at) }),
  };
}

function written(node: Node, at: Place): Formula {
  const text = node.kind === 'text' || node.kind === 'number' ? String(node.value) : '';
  return { text, node, at };
}
