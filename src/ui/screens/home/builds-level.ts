import type { Ask, Context, Key, KeyHint, Outcome, ShelfLine } from '../../screen.js';
import { type ListState, moveList } from '../../widgets/list.js';
import { cleanLine } from '../../widgets/text-line.js';
import type { HomeState } from './state.js';

/** The level where all builds are: a list, and a new name while one is typed. */
export type BuildsLevel = {
  readonly level: 'builds';
  readonly list: ListState;
  readonly naming?: string;
};

/** As long as a line of the shelf and a head line can show. */
export const LONGEST_NAME = 60;

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
  if (state.naming !== undefined) return pressName(state, key, marked);
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
      return { state: { ...state, naming: name }, asks: [] };
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
  { list, naming = '' }: BuildsLevel,
  key: Key,
  marked: ShelfLine | undefined,
): Outcome<HomeState> {
  const state: BuildsLevel = { level: 'builds', list };
  switch (key.name) {
    case 'typed': {
      const text = cleanLine(key.text).line.slice(0, LONGEST_NAME);
      return { state: { ...state, naming: text }, asks: [] };
    }
    case 'escape':
      return { state, asks: [] };
    case 'enter': {
      const name = naming.trim();
      if (marked === undefined || name === '') return { state: { ...state, naming }, asks: [] };
      const { id, putAway } = marked;
      return asking(state, { kind: 'relabel', id, name, putAway });
    }
    default:
      return { state: { ...state, naming }, asks: [] };
  }
}

/** Keys of this level: only those that do something to the marked build. */
export function buildsHints(state: BuildsLevel, at: Context): readonly KeyHint[] {
  if (state.naming !== undefined) {
    return [
      { key: 'enter', does: 'call it that' },
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
