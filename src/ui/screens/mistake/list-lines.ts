import { MISTAKES } from '../../../materials/mistakes.js';
import { numberedLines } from '../../widgets/list-keys.js';
import { boardsThere, boardThereWords } from './bad-board.js';
import { choicesOf, choiceWords } from './choices.js';
import { type Bench, SLIPS, type Stage } from './state.js';

/** A stage with a list to choose from. */
export type ListStage = Extract<
  Stage,
  { readonly kind: 'piece' | 'what' | 'section' | 'bad-board' | 'rule-pages' }
>;

/** The lines of a list, with the number key of the first nine. */
export function listLines(stage: ListStage, bench: Bench): readonly string[] {
  return numberedLines(linesOf(stage, bench));
}

function linesOf(stage: ListStage, bench: Bench): readonly string[] {
  const { build } = bench;
  switch (stage.kind) {
    case 'piece':
      return choicesOf(bench).map(choice => choiceWords(choice, build));
    case 'what':
      return SLIPS.map(({ say }) => say);
    case 'section':
      return build.plan.purchases.map(({ section }) => section);
    case 'bad-board':
      return boardsThere(stage.section, build).map(there => boardThereWords(there, build));
    case 'rule-pages':
      return MISTAKES.map(({ title }) => title);
  }
}
