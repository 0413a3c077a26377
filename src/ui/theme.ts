import { createContext, useContext } from 'react';

/**
 * How the program looks on this terminal. Accents are the terminal's own cyan and yellow on its own
 * background; a word, a mark or a place always says the same thing without them.
 */
export type Look = {
  /** Plain ASCII instead of line-drawing characters. */
  readonly ascii: boolean;
  /** Styles are shown at all: where they are not, marks stand in. */
  readonly styled: boolean;
};

export const ACCENT = { now: 'cyan', heed: 'yellow' } as const;

export type Marks = {
  readonly rule: string;
  readonly dot: string;
  readonly pointer: string;
  readonly more: string;
};

const LINES: Marks = { rule: '─', dot: '·', pointer: '>', more: '…' };
const ASCII: Marks = { rule: '-', dot: '-', pointer: '>', more: '...' };

/** Marks that every font has, or plain ASCII ones. */
export function marks(ascii: boolean): Marks {
  return ascii ? ASCII : LINES;
}

const LookContext = createContext<Look>({ ascii: false, styled: true });

export const LookProvider = LookContext.Provider;

export function useLook(): Look {
  return useContext(LookContext);
}
