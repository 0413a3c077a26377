import { SIXTEENTHS } from '../../measure/displays.js';
import { lessThan } from '../../measure/tolerance.js';
import { lengthsSaid, numbersSaid, rangeOf } from '../answers/range.js';
import { readUsual } from '../answers/read-usual.js';
import { lengthOf, numberOf, type Scope, textOf } from '../evaluate.js';
import type { Problem } from '../problem.js';
import { answerScope, questionsOf } from '../questions.js';
import type { Question, Recipe } from '../recipe.js';

/** Ranges upside down, and usual answers that their own question would refuse. */
export function checkRanges(recipe: Recipe): readonly Problem[] {
  const scope = answerScope(recipe, {});
  return questionsOf(recipe).flatMap(question => {
    const { kind } = question;
    const ranged = kind === 'length' || kind === 'count' || kind === 'hours';
    return ranged ? checkRange(question, scope) : checkUsual(question, scope);
  });
}

function checkRange(question: Question, scope: Scope): readonly Problem[] {
  const { kind, usual, from: fromFormula } = question;
  const { from, to } = rangeOf(question, scope);
  if (usual === undefined || from === undefined || to === undefined) return [];
  const said = kind === 'length' ? lengthsSaid(SIXTEENTHS).limit : numbersSaid('').limit;
  if (lessThan(to, from)) {
    const at = fromFormula === undefined ? question.at : fromFormula.at;
    return [{ kind: { is: 'range-upside-down', from: said(from), to: said(to) }, at }];
  }
  const value = kind === 'length' ? lengthOf(usual, scope) : numberOf(usual, scope);
  if (typeof value === 'object') return [];
  if (kind === 'count' && !Number.isInteger(value)) {
    const problem = `${value} is not a whole number.`;
    return [{ kind: { is: 'usual-unreadable', problem, hint: '' }, at: usual.at }];
  }
  if (!lessThan(value, from) && !lessThan(to, value)) return [];
  const facts = { usual: said(value), from: said(from), to: said(to) };
  return [{ kind: { is: 'usual-outside', ...facts }, at: usual.at }];
}

function checkUsual(question: Question, scope: Scope): readonly Problem[] {
  const { usual } = question;
  if (usual === undefined) return [];
  const text = textOf(usual, scope);
  if (typeof text === 'object') return [];
  const read = readUsual(question, text);
  if (read === undefined || read.ok) return [];
  const { problem, hint } = read;
  return [{ kind: { is: 'usual-unreadable', problem, hint }, at: usual.at }];
}
