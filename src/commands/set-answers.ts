import type { Display } from '../measure/quantities.js';
import { nearestWord } from '../measure/suggest.js';
import {
  answerScope,
  askedQuestions,
  parseAnswer,
  questionsOf,
  usualAnswers,
} from '../recipe/questions.js';
import type { Recipe } from '../recipe/recipe.js';
import type { Answers } from '../recipe/values.js';

export type SetAnswers =
  | { readonly ok: true; readonly answers: Answers }
  | { readonly ok: false; readonly problems: readonly string[] };

/**
 * Usual answers with those of `--set name=value` in their place. Everything that is wrong is told at
 * once: unknown names, values that can't be read or are out of range, questions that are not asked.
 */
export function setAnswers(recipe: Recipe, sets: readonly string[], display: Display): SetAnswers {
  const problems: string[] = [];
  let answers = usualAnswers(recipe);
  const given: string[] = [];
  for (const set of sets) {
    const [name = '', value] = splitAtFirst(set);
    const question = questionsOf(recipe).find(it => it.id === name);
    if (value === undefined) {
      problems.push(`--set ${set}: write it as name=value, for example --set seat_length=6ft.`);
      continue;
    }
    if (!question) {
      problems.push(unknownWords(name, recipe));
      continue;
    }
    const read = parseAnswer(question, value, { display, scope: answerScope(recipe, answers) });
    if (read.ok) {
      answers = { ...answers, [name]: read.value };
      given.push(name);
    } else problems.push(`${name}=${value}: ${read.problem} ${read.hint}`.trim());
  }
  const asked = new Set(askedQuestions(recipe, answers).map(question => question.id));
  for (const name of given.filter(it => !asked.has(it))) {
    problems.push(
      `${name}: with the other answers this is not asked, so it changes nothing. Leave it out.`,
    );
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, answers };
}

function splitAtFirst(text: string): readonly [string, string | undefined] {
  const at = text.indexOf('=');
  return at < 0 ? [text, undefined] : [text.slice(0, at).trim(), text.slice(at + 1).trim()];
}

function unknownWords(name: string, recipe: Recipe): string {
  const names = questionsOf(recipe).map(question => question.id);
  const near = nearestWord(name, names);
  const help = near === undefined ? `Questions: ${names.join(', ')}.` : `Did you mean ${near}?`;
  return `--set ${name}: ${recipe.id} asks nothing called that. ${help}`;
}
