import { answerValue } from './answers/answer-values.js';
import { usualAnswer } from './answers/usual-answer.js';
import { flagOf, type Scope } from './evaluate.js';
import type { Problem } from './problem.js';
import type { Question, Recipe } from './recipe.js';
import type { Answer, Answers, Value } from './values.js';

export { answerText } from './answers/answer-text.js';
export { type AnswerSetting, parseAnswer } from './answers/parse-answer.js';

/** All questions in the order they are asked. */
export function questionsOf(recipe: Recipe): readonly Question[] {
  return recipe.groups.flatMap(({ questions }) => questions);
}

/**
 * The answers as formulas see them. A question without an answer yet has its usual one, so that a range
 * or a condition that looks at it can be worked out.
 */
export function answerScope(recipe: Recipe, answers: Answers): Scope {
  return new AnswerScope(recipe, answers);
}

/** Every question with its usual answer; a list without one is empty. */
export function usualAnswers(recipe: Recipe): Answers {
  const scope = new AnswerScope(recipe, {});
  const questions = questionsOf(recipe);
  return Object.fromEntries(questions.map(({ id }) => [id, scope.answer(id)])) as Answers;
}

/**
 * The questions that these answers leave to be asked, in order. One whose `when` does not hold is left
 * out; its usual answer stands wherever a formula still names it.
 */
export function askedQuestions(recipe: Recipe, answers: Answers): readonly Question[] {
  const scope = answerScope(recipe, answers);
  return questionsOf(recipe).filter(({ when }) => {
    return when === undefined || flagOf(when, scope) !== false;
  });
}

class AnswerScope implements Scope {
  private readonly questions: ReadonlyMap<string, Question>;
  private readonly usual = new Map<string, Answer>();
  private readonly open = new Set<string>();

  constructor(
    recipe: Recipe,
    private readonly answers: Answers,
  ) {
    this.questions = new Map(questionsOf(recipe).map(question => [question.id, question]));
  }

  find(name: string): Value | Problem | undefined {
    const [id = ''] = name.split('.');
    const question = this.questions.get(id);
    if (question === undefined) return undefined;
    if (this.open.has(id))
      return { kind: { is: 'circular', names: [...this.open] }, at: question.at };
    const answer = this.answer(id);
    return answer === undefined ? undefined : answerValue(question, answer, name);
  }

  answer(id: string): Answer | undefined {
    if (Object.hasOwn(this.answers, id)) return this.answers[id];
    const known = this.usual.get(id);
    const question = this.questions.get(id);
    if (known !== undefined || question === undefined) return known;
    this.open.add(id);
    const usual = usualAnswer(question, this);
    this.open.delete(id);
    this.usual.set(id, usual);
    return usual;
  }
}
