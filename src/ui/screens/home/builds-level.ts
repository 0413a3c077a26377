import { head } from '../../../text/wrap.js';
import type { Ask, Context, Key, KeyHint, Outcome, ShelfLine } from '../../screen.js';
import { type ListState, moveList } from '../../widgets/list.js';
import {
  CHANGE,
  isUntyped,
  type Suggested,
  suggest,
  suggestedText,
  typeOver,
} from '../../widgets/suggested.js';
import type { HomeState } from './state.js';

/** The level where all builds are: a list, and a new name while one is typed. */
export type BuildsLevel = {
  readonly level: 'builds';
  readonly list: ListState;
  readonly naming?: Suggested;
};

/** As long as a line of the shelf and a head line can show. */
const LONGEST_NAME = 60;

/** The builder's own, those that were put away at the end. */
export function allBuilds({ shelf }: Context): readonly ShelfLine[] {
  const own = shelf.filter(({ example }) => !example);
  return [...own.filter(({ putAway }) => !putAway), ...own.filter(({ putAway }) => putAway)];
}

/** Rows of the list of all builds: the view has a heading, a blank row and the position besides. */
export function buildRows({ size }: Context): number {
  return Math.max(1, size.rows - 4);
}

/** A key in the list of all builds, or in the new name of the marked one. */
export function pressBuilds(state: BuildsLevel, key: Key, at: Context): Outcome<HomeState> {
  const builds = allBuilds(at);
  const marked = builds[state.list.row];
  const { naming } = state;
  if (naming !== undefined) return pressName({ ...state, naming }, key, marked);
  if (marked !== undefined) {
    if (key.name === 'enter') return asking(state, { kind: 'open-build', id: marked.id });
    if (key.name === 'character') return pressLetter(state, key.text, marked);
  }
  const list = moveList(state.list, key, { count: builds.length, height: buildRows(at) });
  return { state: list === undefined ? state : { level: 'builds', list }, asks: [] };
}

function pressLetter(state: BuildsLevel, letter: string, marked: ShelfLine): Outcome<HomeState> {
  const { id, name, putAway } = marked;
  switch (letter) {
    case 'n':
      return { state: { ...state, naming: suggest(name) }, asks: [] };
    case 'c':
      return asking(state, { kind: 'build-alike', id });
    case 'a':
      return asking(state, { kind: 'relabel', id, name, putAway: !putAway });
    case 'f':
      return asking(state, { kind: 'carry', id });
    default:
      return { state, asks: [] };
  }
}

function pressName(
  { list, naming }: BuildsLevel & { readonly naming: Suggested },
  key: Key,
  marked: ShelfLine | undefined,
): Outcome<HomeState> {
  const state: BuildsLevel = { level: 'builds', list };
  if (key.name === 'escape' || marked === undefined) return { state, asks: [] };
  if (key.name !== 'enter') {
    return { state: { ...state, naming: typeOver(naming, key) ?? naming }, asks: [] };
  }
  const { id, putAway } = marked;
  return asking(state, { kind: 'relabel', id, name: nameIn(naming), putAway });
}

/** The name that a line holds, as long as a name may be. */
export function nameIn(line: Suggested): string {
  return head(suggestedText(line), LONGEST_NAME).trim();
}

/** Keys of this level: only those that do something to the marked build. */
export function buildsHints(state: BuildsLevel, at: Context): readonly KeyHint[] {
  if (state.naming !== undefined) {
    return [
      { key: 'enter', does: 'call it that' },
      ...(isUntyped(state.naming) ? [CHANGE] : []),
      { key: 'esc', does: 'keep the old name' },
    ];
  }
  const marked = allBuilds(at)[state.list.row];
  const own =
    marked === undefined
      ? []
      : [
          { key: 'enter', does: 'open' },
          { key: 'n', does: 'new name' },
          { key: 'c', does: 'build another like it' },
          { key: 'a', does: marked.putAway ? 'bring back' : 'put away' },
          { key: 'f', does: 'as one file' },
        ];
  return [
    { key: 'up/down', does: 'move' },
    ...own,
    { key: 'esc', does: 'back' },
    { key: '?', does: 'keys' },
  ];
}

function asking(state: HomeState, ask: Ask): Outcome<HomeState> {
  return { state, asks: [ask] };
}
