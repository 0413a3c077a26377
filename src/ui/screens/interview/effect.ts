import { formatFigure } from '../../../measure/figure-text.js';
import type { Display } from '../../../measure/quantities.js';
import { boughtCount } from '../../../plan/buy-lines.js';
import { makePlan } from '../../../plan/make-plan.js';
import type { Plan } from '../../../plan/plan.js';
import { problemWords } from '../../../recipe/problem-words.js';
import type { Recipe } from '../../../recipe/recipe.js';
import type { Answers } from '../../../recipe/values.js';
import { count } from '../../../text/plural.js';

/** What the answers as they stand would give. */
export type Effect = {
  readonly plan: Plan | undefined;
  /** Why they give no plan. */
  readonly problems: readonly string[];
  /** False once something else was answered or is being typed. */
  readonly current: boolean;
};

/** Before anything was worked out. */
export const NO_EFFECT: Effect = { plan: undefined, problems: [], current: false };

export function effectOf(recipe: Recipe, answers: Answers, display: Display): Effect {
  const made = makePlan(recipe, answers, display);
  if (made.ok) return { plan: made.plan, problems: [], current: true };
  const problems = made.problems.map(problem => {
    const words = problemWords(problem);
    return `${words.problem} ${words.hint}`.trim();
  });
  return { plan: undefined, problems: [...new Set(problems)], current: true };
}

/** The piece in a few words: how large, how heavy, how many boards and pieces, what they cost. */
export function effectLines(plan: Plan): readonly string[] {
  const { overall, display, weight, cutList, purchases, cost } = plan;
  const said = (figure: Plan['weight']) => formatFigure(figure, display);
  const boards = purchases.reduce(
    (sum, it) => sum + boughtCount(it) + it.boards.filter(({ onHand }) => onHand).length,
    0,
  );
  const pieces = cutList.reduce((sum, row) => sum + row.count, 0);
  const priced = purchases.filter(purchase => purchase.priced).length;
  const size = `${said(overall.width)} wide, ${said(overall.depth)} deep, ${said(overall.height)} high; ${said(weight)} of wood`;
  const wood = `${count(boards, 'board')}, ${count(pieces, 'piece')}`;
  if (priced === 0) return [size, wood];
  const all = priced === purchases.length ? 'boards' : 'the boards that have a price';
  return [size, `${wood}; ${said(cost)} for ${all}`];
}
