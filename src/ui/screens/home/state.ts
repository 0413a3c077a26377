import type { Ask, Context, Key, Outcome, ShelfLine } from '../../screen.js';
import { LIST_TOP } from '../../widgets/list.js';
import type { MenuItem } from '../../widgets/menu.js';
import { buildLine } from './build-line.js';
import { allBuilds, type BuildsLevel, pressBuilds } from './builds-level.js';

export type HomeState = { readonly level: 'front' | 'recipes' } | BuildsLevel;

/** Builds that stand in the menu themselves; with the rest of it, number keys reach every line. */
const IN_MENU = 5;

/** The builder's own that are under way, the one saved last in front. */
export function ownBuilds(at: Context): readonly ShelfLine[] {
  return allBuilds(at).filter(({ putAway }) => !putAway);
}

/** Nothing was ever opened, not even the example: the mark stands on it, as the words above it say. */
export function isNewHere({ shelf }: Context): boolean {
  return shelf.length === 0;
}

/** The menu of a level. Ids: `build/<id>`, `recipe/<id>`, and words of their own. */
export function menuItems(level: 'front' | 'recipes', at: Context): readonly MenuItem[] {
  if (level === 'recipes') {
    const recipes = at.recipes().map(({ id, title }) => ({ id: `recipe/${id}`, label: title }));
    return [...recipes, { id: 'back', label: 'Back' }];
  }
  const own = ownBuilds(at);
  const width = at.size.columns - 5;
  const builds = own
    .slice(0, IN_MENU)
    .map(line => ({ id: `build/${line.id}`, label: buildLine(line, width) }));
  const all = allBuilds(at).length;
  const words = 'a new name, another like it, put away, take along';
  const more = all === 0 ? [] : [{ id: 'builds', label: `All builds (${all}): ${words}` }];
  const example = {
    id: 'example',
    label: 'Look at the example: a bench, half-way through its second evening',
  };
  const start = {
    id: 'start',
    label: own.length === 0 ? 'Start a piece of your own' : 'Start another piece',
  };
  const rest = isNewHere(at) ? [example, start] : [start, ...more, example];
  return [...builds, ...rest, { id: 'quit', label: 'Quit' }];
}

export function press(state: HomeState, key: Key, at: Context): Outcome<HomeState> {
  if (key.name === 'chosen') return chosen(state, key.id, at);
  if (state.level === 'builds' && (state.naming !== undefined || !isLeaving(key))) {
    return pressBuilds(state, key, at);
  }
  if (key.name === 'character' && key.text === '?')
    return asking(state, { kind: 'go', to: 'keys' });
  if (key.name === 'character' && key.text === 'q') return asking(state, { kind: 'quit' });
  if (key.name === 'escape' || key.name === 'left') return show({ level: 'front' });
  return show(state);
}

/** Keys that mean the same on every level. */
function isLeaving(key: Key): boolean {
  if (key.name === 'character') return key.text === '?' || key.text === 'q';
  return key.name === 'escape' || key.name === 'left';
}

function chosen(state: HomeState, id: string, at: Context): Outcome<HomeState> {
  const [kind, ...rest] = id.split('/');
  const name = rest.join('/');
  switch (kind) {
    case 'build':
      return asking(state, { kind: 'open-build', id: name });
    case 'recipe':
      return asking({ level: 'front' }, { kind: 'begin-interview', recipe: name });
    case 'builds':
      return show({ level: 'builds', list: LIST_TOP });
    case 'start':
      return started(state, at);
    case 'example':
      return asking(state, { kind: 'open-example' });
    case 'quit':
      return asking(state, { kind: 'quit' });
    default:
      return show({ level: 'front' });
  }
}

/** Where there is one project only, there is nothing to choose. */
function started(state: HomeState, { recipes }: Context): Outcome<HomeState> {
  const [only, ...others] = recipes();
  if (only === undefined || others.length > 0) return show({ level: 'recipes' });
  return asking(state, { kind: 'begin-interview', recipe: only.id });
}

function show(state: HomeState): Outcome<HomeState> {
  return { state, asks: [] };
}

function asking(state: HomeState, ask: Ask): Outcome<HomeState> {
  return { state, asks: [ask] };
}
