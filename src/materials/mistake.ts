import type { Source } from '../measure/figure.js';

/** The plain word for how bad it is. */
export type MistakeVerdict = 'ruined' | 'wait' | 'fine after this';

/** "I made a mistake, now what": one page to read standing there. */
export type Mistake = {
  readonly id: string;
  readonly title: string;
  /** How bad it is, by how it came out; the first that is true counts. */
  readonly verdicts: readonly { readonly when: string; readonly verdict: MistakeVerdict }[];
  readonly look: readonly string[];
  readonly act: readonly string[];
  /** How it does not happen again. */
  readonly next: readonly string[];
  readonly source: Source;
};
