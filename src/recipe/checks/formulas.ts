import { checkFormula } from '../check-dimensions.js';
import { kindName, type ValueKind } from '../kind-name.js';
import type { Problem } from '../problem.js';
import { questionsOf } from '../questions.js';
import type { FitRule, Recipe } from '../recipe.js';
import type { Site } from './formula-sites.js';

/** Unknown names, lengths added to areas, and formulas that give another kind than their place wants. */
export function checkFormulas(recipe: Recipe, sites: readonly Site[]): readonly Problem[] {
  const asked = new Set(questionsOf(recipe).map(({ id }) => id));
  return sites.flatMap(site => {
    const { kind, problems } = checkFormula(site.formula, site.names);
    const later = problems.map(problem => laterQuestion(problem, asked));
    return [...later, ...fits(site, kind)];
  });
}

const WANTED: Readonly<Record<Exclude<Site['wanted'], 'anything'>, string>> = {
  length: 'a length',
  number: 'a plain number',
  flag: 'a yes or no',
  text: 'a text',
};

function fits({ formula, wanted }: Site, kind: ValueKind | undefined): readonly Problem[] {
  if (wanted === 'anything' || kind === undefined) return [];
  const name = kindName(kind);
  const isZero = kind.kind === 'number' && kind.zero === true;
  if (name === WANTED[wanted] || (isZero && wanted === 'length')) return [];
  const facts = { what: 'this place', wanted: WANTED[wanted], got: name };
  return [{ kind: { is: 'wrong-kind', ...facts }, at: formula.at }];
}

/** Only formulas of questions cannot see every answer, so there the name is known but comes later. */
function laterQuestion(problem: Problem, asked: ReadonlySet<string>): Problem {
  if (problem.kind.is !== 'unknown-name') return problem;
  const { name } = problem.kind;
  const [id = ''] = name.split('.');
  if (!asked.has(id) || id !== name) return problem;
  return { kind: { is: 'later-question', name }, at: problem.at };
}

/** The limits of a fit have to be of the same kind as its value. */
export function checkFits(fit: readonly FitRule[], sites: readonly Site[]): readonly Problem[] {
  const names = new Map(sites.map(site => [site.formula, site.names]));
  return fit.flatMap(({ value, least, most }) => {
    const known = names.get(value);
    const kind = known === undefined ? undefined : checkFormula(value, known).kind;
    return [least, most].flatMap((limit): readonly Problem[] => {
      if (limit === undefined || known === undefined || kind === undefined) return [];
      const other = checkFormula(limit, known).kind;
      if (other === undefined || kindName(other) === kindName(kind) || isZero(other)) return [];
      const facts = { doing: 'compared', left: kindName(kind), right: kindName(other) };
      return [{ kind: { is: 'kinds-differ', ...facts }, at: limit.at }];
    });
  });
}

function isZero(kind: ValueKind): boolean {
  return kind.kind === 'number' && kind.zero === true;
}
