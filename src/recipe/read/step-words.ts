import type { MeasureRule, Phase, StepRule, TimerRule } from '../recipe.js';
import type { Entry } from './entry.js';
import { grouped, listed, needed, optional, present, type Reader } from './reader.js';
import { formulaOf, idOf, oneOf, pathOf, selectorOf, templateOf, textOf } from './scalars.js';

const MOST_STEPS = 150;
const MOST_ENTRIES = 40;

const PHASES: readonly Phase[] = [
  'plan',
  'buy',
  'cut',
  'notch',
  'dry-fit',
  'assemble',
  'finish',
  'place',
  'hand-over',
];

const RULES = ['glue-clamp', 'glue-cure', 'sealer-dwell', 'sealer-dry'] as const;
const minutes = formulaOf('minutes');

const lasts: Reader<TimerRule['lasts']> = (entry: Entry, log) => {
  const rule = RULES.find(known => entry.kind === 'scalar' && entry.text === known);
  return rule ?? minutes(entry, log);
};

const timerWords = grouped('a timer', {
  id: needed(idOf('hyphens')),
  name: needed(textOf),
  lasts: needed(lasts),
  before: optional(listed(idOf('hyphens'), MOST_ENTRIES)),
  then: needed(textOf),
});

const timer: Reader<TimerRule> = (entry, log) => {
  const read = timerWords(entry, log);
  return read === undefined ? undefined : { ...read, before: read.before ?? [] };
};

const measureWords = grouped('a measure', {
  size: needed(pathOf),
  say: needed(textOf),
  take: optional(oneOf(['average', 'least', 'most'])),
});

const measure: Reader<MeasureRule> = (entry, log) => {
  const read = measureWords(entry, log);
  return read === undefined ? undefined : { ...read, take: read.take ?? 'average', at: entry.at };
};

const texts = listed(templateOf, MOST_ENTRIES);
const ids = listed(idOf('hyphens'), MOST_ENTRIES);
const paths = listed(pathOf, MOST_ENTRIES);
const selectors = listed(selectorOf, MOST_ENTRIES);

const words = grouped('a step', {
  id: needed(idOf('hyphens')),
  phase: needed(oneOf(PHASES)),
  title: needed(templateOf),
  who: needed(oneOf(['lead', 'helper', 'both'])),
  tools: optional(ids),
  say: needed(texts),
  plain: optional(texts),
  why: optional(templateOf),
  first: optional(templateOf),
  look: optional(texts),
  care: optional(ids),
  cuts: optional(selectors),
  notches: optional(paths),
  joins: optional(paths),
  measure: optional(listed(measure, MOST_ENTRIES)),
  sets: optional(selectors),
  loose: optional(selectors),
  before: optional(ids),
  tally: optional(formulaOf('number')),
  counts: optional(oneOf(['fasteners'])),
  timers: optional(listed(timer, MOST_ENTRIES)),
  minutes: optional(minutes),
  when: optional(formulaOf('flag')),
});

const step: Reader<StepRule> = (entry, log) => {
  const read = words(entry, log);
  if (read === undefined) return undefined;
  const { tools = [], look = [], care = [], cuts = [], ...rest } = read;
  const {
    notches = [],
    joins = [],
    measure = [],
    sets = [],
    loose = [],
    before = [],
    timers = [],
    plain = [],
    ...others
  } = rest;
  const boards = { cuts, notches, joins, sets, loose };
  return {
    ...present(others),
    ...boards,
    tools,
    plain,
    look,
    care,
    measure,
    before,
    timers,
    at: entry.at,
  };
};

/** Reads `steps`, in their order. */
export const steps: Reader<readonly StepRule[]> = listed(step, MOST_STEPS);
