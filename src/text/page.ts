import type { BoardBar } from './board-bar.js';
import type { Column } from './table.js';

/**
 * A page described once, for the screen, for paper and for a pipe. The description holds finished
 * words and figures; how they are laid out is the writer's business.
 */
export type Page = {
  readonly id: string;
  readonly title: string;
  readonly blocks: readonly Block[];
};

export type Block =
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'words'; readonly text: string }
  | { readonly kind: 'list'; readonly items: readonly string[] }
  | { readonly kind: 'facts'; readonly facts: readonly Fact[] }
  | { readonly kind: 'table'; readonly table: Table }
  | { readonly kind: 'bars'; readonly bars: readonly BarRow[] };

export type Fact = {
  readonly name: string;
  readonly text: string;
  /** Where the figure is from: shown on demand. */
  readonly because?: string;
};

/** A board to scale under the words that belong to it; all boards of a block share one scale. */
export type BarRow = { readonly name: string; readonly text: string; readonly bar: BoardBar };

export type Table = {
  /** Name for a file or a caption. */
  readonly id: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly string[])[];
};
