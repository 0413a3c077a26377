import { rangeOf } from './answers/range.js';
import { formulaSites } from './checks/formula-sites.js';
import { instances } from './checks/instances.js';
import { formulaNames } from './formula-names.js';
import { answerScope, askedQuestions, questionsOf, usualAnswers } from './questions.js';
import type { Question, Recipe } from './recipe.js';
import type { Answer, Answers } from './values.js';

/** A choice with more options than this, such as a species, is left at its usual one. */
const FEW = 6;

/** One end, and the answers without which its question would not be asked. */
type End = {
  readonly id: string;
  readonly answer: Answer;
  /** Which end of a range it is: a range may move with the other answers. */
  readonly side?: 'from' | 'to';
  readonly also: Answers;
};

/**
 * Answers at the ends of what may be asked: every question alone at each end of its range or at each of
 * its few options, all others usual, and then all pairs of ends of questions that some formula names.
 * What is usual anyway is not tried twice, and no corner holds an answer to a question that its other
 * answers leave unasked. The usual ones come first.
 */
export function rangeCorners(recipe: Recipe): readonly Answers[] {
  const usual = usualAnswers(recipe);
  const named = namedQuestions(recipe);
  const ends = endsOf(recipe, usual);
  const shaping = ends.filter(({ id }) => named.has(id));
  const pairs = shaping.flatMap((first, place) =>
    shaping.slice(place + 1).map(second => [first, second]),
  );
  return [[], ...ends.map(end => [end]), ...pairs.filter(([a, b]) => a?.id !== b?.id)]
    .map(given => ({ given, answers: within(recipe, given, withEnds(usual, given)) }))
    .filter(({ given, answers }) => areAsked(recipe, given, answers))
    .map(({ answers }) => answers);
}

function withEnds(usual: Answers, given: readonly End[]): Answers {
  const also = given.map(end => end.also);
  const own = given.map(({ id, answer }) => ({ [id]: answer }));
  return Object.assign({}, usual, ...also, ...own);
}

/**
 * The answers with each number at its end, or inside its limits, as the other answers make them: nobody
 * could have given another one.
 */
function within(recipe: Recipe, given: readonly End[], answers: Answers): Answers {
  const so: Record<string, Answer> = { ...answers };
  for (const question of askedQuestions(recipe, answers)) {
    const answer = so[question.id];
    if (answer?.kind !== 'length' && answer?.kind !== 'count' && answer?.kind !== 'hours') continue;
    const { from, to } = rangeOf(question, answerScope(recipe, so));
    const side = given.find(({ id }) => id === question.id)?.side;
    const atEnd = side === undefined ? answer.value : ({ from, to }[side] ?? answer.value);
    const value = Math.min(Math.max(atEnd, from ?? atEnd), to ?? atEnd);
    so[question.id] = { ...answer, value };
  }
  return so;
}

function areAsked(recipe: Recipe, given: readonly Pick<End, 'id'>[], answers: Answers): boolean {
  const asked = new Set(askedQuestions(recipe, answers).map(({ id }) => id));
  return given.every(({ id }) => asked.has(id));
}

function endsOf(recipe: Recipe, usual: Answers): readonly End[] {
  const all = questionsOf(recipe).map(question => {
    const answers = answersAtEnds(question, recipe).filter(
      ({ answer }) => JSON.stringify(answer) !== JSON.stringify(usual[question.id]),
    );
    return { question, answers };
  });
  const switches = all.flatMap(({ question: { id, kind }, answers }) =>
    kind === 'choice' || kind === 'yes' ? answers.map(({ answer }) => ({ [id]: answer })) : [],
  );
  return all.flatMap(({ question: { id }, answers }) => {
    const isAsked = (also: Answers) => areAsked(recipe, [{ id }], { ...usual, ...also });
    const also = [{}, ...switches].find(isAsked) ?? {};
    return answers.map(end => ({ id, ...end, also }));
  });
}

/** Questions whose answer some formula looks at, so that it can shape the piece. */
function namedQuestions(recipe: Recipe): ReadonlySet<string> {
  const sites = formulaSites(recipe, instances(recipe), []);
  const names = sites.flatMap(({ formula }) => formulaNames(formula.node));
  return new Set(names.map(({ name }) => name.split('.')[0] ?? name));
}

function answersAtEnds(question: Question, recipe: Recipe): readonly Omit<End, 'id' | 'also'>[] {
  const { kind, options } = question;
  switch (kind) {
    case 'length':
    case 'count':
    case 'hours': {
      const { from, to } = rangeOf(question, answerScope(recipe, {}));
      return [
        ...(from === undefined ? [] : [{ answer: { kind, value: from }, side: 'from' as const }]),
        ...(to === undefined ? [] : [{ answer: { kind, value: to }, side: 'to' as const }]),
      ];
    }
    case 'choice':
      return options.length > FEW ? [] : options.map(({ id }) => ({ answer: { kind, value: id } }));
    case 'yes':
      return [true, false].map(value => ({ answer: { kind, value } }));
    case 'items':
      return [{ answer: { kind, value: [] } }];
    default:
      return [];
  }
}
