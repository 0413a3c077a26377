import type { Ask, Context, Key, Outcome, ShelfLine } from '../../screen.js';
import { LIST_TOP, type ListState, moveList } from '../../widgets/list.js';
import type { MenuItem } from '../../widgets/menu.js';
import { buildLine } from './build-line.js';

export type HomeState =
  | { readonly level: 'front' | 'recipes' }
  | { readonly level: 'builds'; readonly list: ListState };

/** Builds that stand in the menu themselves; with the rest of it, number keys reach every line. */
const IN_MENU = 5;

/** The builder's own, the one saved last in front. */
export function ownBuilds({ shelf }: Context): readonly ShelfLine[] {
  return shelf.filter(({ example }) => !example);
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
  const more = own.length > IN_MENU ? [{ id: 'builds', label: `All ${own.length} builds` }] : [];
  return [
    ...builds,
    ...more,
    { id: 'start', label: own.length === 0 ? 'Start a piece of your own' : 'Start another piece' },
    { id: 'example', label: 'Look at the example: a bench, half-way through its second evening' },
    { id: 'quit', label: 'Quit' },
  ];
}

export function press(state: HomeState, key: Key, at: Context): Outcome<HomeState> {
  if (key.name === 'chosen') return chosen(state, key.id, at);
  if (key.name === 'character' && key.text === '?')
    return asking(state, { kind: 'go', to: 'keys' });
  if (key.name === 'character' && key.text === 'q') return asking(state, { kind: 'quit' });
  if (key.name === 'escape' || key.name === 'left') return show({ level: 'front' });
  return state.level === 'builds' ? inBuilds(state, key, at) : show(state);
}

function inBuilds(
  state: Extract<HomeState, { level: 'builds' }>,
  key: Key,
  at: Context,
): Outcome<HomeState> {
  const own = ownBuilds(at);
  const marked = own[state.list.row];
  if (key.name === 'enter' && marked !== undefined) {
    return asking(state, { kind: 'open-build', id: marked.id });
  }
  const list = moveList(state.list, key, { count: own.length, height: buildRows(at) });
  return show(list === undefined ? state : { level: 'builds', list });
}

/** Rows of the list of all builds: the view has a heading, a blank row and the position besides. */
export function buildRows({ size }: Context): number {
  return Math.max(1, size.rows - 4);
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
