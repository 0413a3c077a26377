import type { Assembly, BoardRule, FitRule, HoldRule, Recipe } from '../recipe.js';
import { each, joints, layouts, notches, parts, sizes, stacks } from './assembly-words.js';
import type { Entry, MapEntry } from './entry.js';
import { named } from './ids.js';
import type { Log } from './log.js';
import { places, takes } from './place-words.js';
import { questionGroups } from './question-words.js';
import { asMap, grouped, listed, needed, optional, present, type Reader } from './reader.js';
import {
  flagOf,
  formulaOf,
  idOf,
  oneOf,
  pathOf,
  selectorOf,
  templateOf,
  textOf,
} from './scalars.js';
import { steps } from './step-words.js';

const FORMAT = '1';
const MOST_BOARDS = 40;
const MOST_ASSEMBLIES = 40;
const MOST_FITS = 60;

/** What an assembly may hold; the whole piece holds the same at the top of the file. */
const INSIDE = {
  let: optional(sizes),
  places: optional(places),
  parts: optional(parts),
  layouts: optional(layouts),
  stacks: optional(stacks),
  notches: optional(notches),
  joints: optional(joints),
};

type Inside = Partial<Omit<Assembly, 'id' | 'at' | 'sizes' | 'takes'>> & {
  readonly let?: Assembly['sizes'];
  readonly takes?: Assembly['takes'];
};

function filled(inside: Inside): Omit<Assembly, 'id' | 'at'> {
  return {
    takes: inside.takes ?? [],
    sizes: inside.let ?? [],
    parts: inside.parts ?? [],
    layouts: inside.layouts ?? [],
    stacks: inside.stacks ?? [],
    places: inside.places ?? [],
    notches: inside.notches ?? [],
    joints: inside.joints ?? [],
  };
}

const assemblies: Reader<readonly Assembly[]> = each(
  named({
    what: 'assemblies',
    read: grouped('an assembly', { takes: optional(takes), ...INSIDE }),
    most: MOST_ASSEMBLIES,
  }),
  ({ id, at, value }) => ({ ...filled(present(value)), id, at }),
);

const boards: Reader<readonly BoardRule[]> = each(
  named({ what: 'boards', read: formulaOf('text'), most: MOST_BOARDS }),
  ({ id, at, value }) => ({ id, section: value, at }),
);

const fit: Reader<readonly FitRule[]> = each(
  named({
    what: 'fit',
    read: grouped('a fit', {
      say: needed(textOf),
      value: needed(formulaOf('anything')),
      least: optional(formulaOf('anything')),
      most: optional(formulaOf('anything')),
      when: optional(formulaOf('flag')),
      must: optional(flagOf),
      otherwise: needed(templateOf),
      source: needed(textOf),
    }),
    most: MOST_FITS,
  }),
  ({ id, at, value: { must, ...rest } }) => ({ ...present(rest), must: must ?? false, id, at }),
);

const holds: Reader<readonly HoldRule[]> = each(
  named({
    what: 'holds',
    read: grouped('a hold', {
      role: needed(oneOf(['seat', 'slats', 'shelf', 'screws', 'stand'])),
      say: needed(textOf),
      parts: optional(listed(selectorOf, MOST_FITS)),
      on: optional(listed(selectorOf, MOST_FITS)),
      joint: optional(pathOf),
      carries: optional(oneOf(['people', 'pots', 'push'])),
    }),
    most: MOST_FITS,
  }),
  ({ id, at, value: { parts, on, ...rest } }) => ({
    ...present(rest),
    parts: parts ?? [],
    on: on ?? [],
    id,
    at,
  }),
);

const recipeWords = grouped('a recipe', {
  recipe: needed(textOf),
  id: needed(idOf('hyphens')),
  title: needed(textOf),
  about: needed(textOf),
  ask: needed(questionGroups),
  boards: needed(boards),
  assemblies: optional(assemblies),
  fit: optional(fit),
  holds: optional(holds),
  steps: needed(steps),
  ...INSIDE,
});

/** Reads the whole file, once it is known to be in the format that is read here. */
export function recipeFrom(entry: Entry, log: Log): Recipe | undefined {
  const map = asMap(entry, log, 'a recipe');
  if (map === undefined || !isThisFormat(map, log)) return undefined;
  const read = recipeWords(map, log);
  if (read === undefined) return undefined;
  const { id, title, about } = read;
  return {
    format: 1,
    id,
    title,
    about,
    groups: read.ask,
    boards: read.boards,
    assemblies: read.assemblies ?? [],
    whole: { ...filled(present(read)), id: 'whole', at: map.at },
    fit: read.fit ?? [],
    holds: read.holds ?? [],
    steps: read.steps,
  };
}

function isThisFormat({ pairs, at }: MapEntry, log: Log): boolean {
  const pair = pairs.find(({ key }) => key === 'recipe');
  if (pair === undefined) {
    log.say({ is: 'no-format' }, at);
    return false;
  }
  const { value } = pair;
  if (value.kind === 'scalar' && value.text === FORMAT) return true;
  log.say({ is: 'other-format', found: value.kind === 'scalar' ? value.text : '' }, value.at);
  return false;
}
