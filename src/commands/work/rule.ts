import type { Figure } from '../../measure/figure.js';
import type { Parsed } from '../../measure/parsed.js';
import type { Display } from '../../measure/quantities.js';

/** What kind of thing an option holds; lengths, weights and temperatures are read as people write them. */
export type OptionKind =
  | 'length'
  | 'weight'
  | 'number'
  | 'count'
  | 'temperature'
  | 'word'
  | 'words'
  /** Given or not, without a value. */
  | 'flag';

export type WorkOption = {
  readonly name: string;
  readonly kind: OptionKind;
  readonly say: string;
  readonly example: string;
  /** Left out, this is used; without it the option has to be given. */
  readonly usual?: string;
  /** Limits in mm, kg, °C or plain numbers. */
  readonly least?: number;
  readonly most?: number;
  /** For `word`: what it may be. */
  readonly choices?: readonly string[];
};

/** Where the text of a named file comes from; the commands themselves touch no disk. */
export type ReadText = (file: string) => Parsed<string>;

/** Options as read: lengths in mm, weights in kg, temperatures in °C. */
export type Given = {
  readonly number: (name: string) => number;
  readonly word: (name: string) => string;
  /** Every value of an option that may be given several times. */
  readonly words: (name: string) => readonly string[];
  readonly has: (name: string) => boolean;
  /** The text of a file that an option names. */
  readonly textOf: ReadText;
  readonly display: Display;
};

/** A figure with the name it has in words and in JSON (`gap` becomes `gap_mm`). */
export type Answered = { readonly name: string; readonly say: string; readonly figure: Figure };

export type WorkResult =
  | {
      readonly ok: true;
      readonly figures: readonly Answered[];
      /** More for the JSON form, such as lists of marks in mm. */
      readonly more: Readonly<Record<string, unknown>>;
      /** The plain answer to a yes-or-no question, above the figures. */
      readonly verdict?: string;
      /** Sentences under the figures: verdicts, cautions, what was not checked. */
      readonly notes: readonly string[];
      /** Drawn between the figures and the notes. */
      readonly lines?: readonly string[];
      /** In place of figures, notes and more in the JSON form. */
      readonly json?: Readonly<Record<string, unknown>>;
      /** The same as a table, where the rule allows it. */
      readonly csv?: string;
    }
  | { readonly ok: false; readonly problems: readonly string[] };

/** One question that somebody asks standing at the saw. */
export type WorkRule = {
  readonly name: string;
  readonly say: string;
  readonly example: string;
  readonly options: readonly WorkOption[];
  /** Also answers `--as csv`. */
  readonly csv?: boolean;
  readonly work: (given: Given) => WorkResult;
};
