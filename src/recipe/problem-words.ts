import type { Problem, ProblemKind } from './problem.js';
import { CHECK_WORDS } from './words/check-words.js';
import { FILE_WORDS } from './words/file-words.js';
import { FORMULA_WORDS } from './words/formula-words.js';
import { SET_OUT_WORDS } from './words/set-out-words.js';
import type { Wording, WordsFor } from './words/wording.js';

const WORDS: WordsFor<ProblemKind> = {
  ...FORMULA_WORDS,
  ...FILE_WORDS,
  ...CHECK_WORDS,
  ...SET_OUT_WORDS,
};

/** What is wrong and what to do about it, in whole sentences. */
export function problemWords({ kind }: Problem): Wording {
  // Each entry takes the facts of its own kind: the type of WORDS says so, an index cannot.
  const say = WORDS[kind.is] as (facts: ProblemKind) => Wording;
  return say(kind);
}

/**
 * A problem in one line, as editors jump to it:
 * `recipe.yaml:12:7: Nothing here is called "sead". Did you mean seat?`
 */
export function problemLine(problem: Problem, file: string): string {
  const { problem: wrong, hint } = problemWords(problem);
  const { line, column } = problem.at;
  return `${file}:${line}:${column}: ${hint === '' ? wrong : `${wrong} ${hint}`}`;
}
