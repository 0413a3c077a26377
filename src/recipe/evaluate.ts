import type { Formula } from './formula.js';
import { kindName } from './kind-name.js';
import { isProblem } from './parse-formula.js';
import type { Problem } from './problem.js';
import type { Scope } from './scope.js';
import type { Value } from './values.js';
import { Work } from './work.js';

export { explain } from './explain.js';
export type { Scope } from './scope.js';

export type Evaluated =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problem: Problem };

/**
 * Works a formula out: `seat + 2 * planter` with a seat of 48 in and planters of 18 in is 84 in
 * (2133.6 mm, power 1). Powers are checked, `if`, `and` and `or` look only at what they need, and a
 * division by zero or an unknown name is a problem with its place.
 */
export function evaluate(formula: Formula, scope: Scope): Evaluated {
  const value = new Work(scope, formula.at).of(formula.node);
  return isProblem(value) ? { ok: false, problem: value } : { ok: true, value };
}

/** The formula's length in mm; anything but a length or a plain 0 is a problem. */
export function lengthOf(formula: Formula, scope: Scope): number | Problem {
  const found = evaluate(formula, scope);
  if (!found.ok) return found.problem;
  const { value } = found;
  const fits = value.kind === 'number' && (value.power === 1 || isPlainZero(value));
  return fits ? value.value : unfit(formula, 'a length', value);
}

/** The formula's plain number, a count for example; a length is a problem. */
export function numberOf(formula: Formula, scope: Scope): number | Problem {
  const found = evaluate(formula, scope);
  if (!found.ok) return found.problem;
  const { value } = found;
  if (value.kind === 'number' && value.power === 0) return value.value;
  return unfit(formula, 'a plain number', value);
}

/** The formula's yes or no. */
export function flagOf(formula: Formula, scope: Scope): boolean | Problem {
  const found = evaluate(formula, scope);
  if (!found.ok) return found.problem;
  return found.value.kind === 'flag'
    ? found.value.value
    : unfit(formula, 'a yes or no', found.value);
}

/** The formula's text, the name of a section for example. */
export function textOf(formula: Formula, scope: Scope): string | Problem {
  const found = evaluate(formula, scope);
  if (!found.ok) return found.problem;
  return found.value.kind === 'text' ? found.value.value : unfit(formula, 'a text', found.value);
}

function isPlainZero(value: Value): boolean {
  return value.kind === 'number' && value.power === 0 && value.value === 0;
}

function unfit(formula: Formula, wanted: string, value: Value): Problem {
  const kind = { is: 'wrong-kind', what: 'this place', wanted, got: kindName(value) } as const;
  return { kind, at: formula.at };
}
