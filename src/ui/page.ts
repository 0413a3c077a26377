import { createElement, type ReactNode } from 'react';
import type { Ask, Context, Key, KeyHint, Screen, ScreenName, Widget } from './screen.js';

/** A screen that is open, with its state inside: screens of different states stand in one pile. */
export type Page = {
  readonly name: ScreenName;
  readonly title: (at: Context) => string;
  readonly hints: (at: Context) => readonly KeyHint[];
  readonly stepSeen: (at: Context) => string | undefined;
  readonly widget: (at: Context) => Widget | undefined;
  readonly confirms: (at: Context) => boolean;
  readonly underThumb: (at: Context) => string | undefined;
  readonly press: (key: Key, at: Context) => { readonly page: Page; readonly asks: readonly Ask[] };
  /** The page after work that was put off; nothing where there is none. */
  readonly settle: (at: Context) => Page | undefined;
  readonly view: (at: Context) => ReactNode;
};

/** A screen ready to be opened. */
export type Opener = (at: Context) => Page;

/** All the screens by name. */
export type Screens = Readonly<Record<ScreenName, Opener>>;

export function opener<State>(screen: Screen<State>): Opener {
  return at => pageOf(screen, screen.open(at));
}

function pageOf<State>(screen: Screen<State>, state: State): Page {
  return {
    name: screen.name,
    title: at => screen.title(state, at),
    hints: at => screen.hints(state, at),
    stepSeen: at => screen.stepSeen?.(state, at),
    widget: at => screen.widget?.(state, at),
    confirms: at => screen.confirms?.(state, at) ?? false,
    underThumb: at => screen.underThumb?.(state, at),
    press: (key, at) => {
      const outcome = screen.press(state, key, at);
      return { page: pageOf(screen, outcome.state), asks: outcome.asks };
    },
    settle: at => {
      const settled = screen.settle?.(state, at);
      return settled === undefined ? undefined : pageOf(screen, settled);
    },
    view: at => createElement(screen.view, { state, at }),
  };
}
