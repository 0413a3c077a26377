import type { Mm } from '../measure/quantities.js';
import { gridSteps } from '../measure/round.js';
import { atMost, lessThan, sameLength } from '../measure/tolerance.js';
import type { Operator } from './formula.js';
import { kindName } from './kind-name.js';
import type { FormulaProblem } from './problem.js';
import type { Value } from './values.js';

/** A number with its power: 48 in is 1219.2 with power 1. */
export type Amount = Extract<Value, { kind: 'number' }>;

/** Beyond this nothing is built of wood: 1e15 mm3 is a cube of 100 m. */
const LARGEST = 1e15;

type Sign = Extract<Operator, '+' | '-' | '*' | '/'>;
type Comparison = Extract<Operator, '=' | '!=' | '<' | '<=' | '>' | '>='>;

export function plain(value: number): Value {
  return { kind: 'number', value, power: 0 };
}

export function length(value: Mm): Value {
  return { kind: 'number', value, power: 1 };
}

export function flag(value: boolean): Value {
  return { kind: 'flag', value };
}

export function text(value: string): Value {
  return { kind: 'text', value };
}

/**
 * The power that two amounts share, or undefined when they differ: a length and an area do. A plain 0
 * fits beside any power, since no length at all is 0 in every unit.
 */
export function sharedPower(a: Amount, b: Amount): number | undefined {
  if (a.power === b.power || isNothing(b)) return a.power;
  return isNothing(a) ? b.power : undefined;
}

function isNothing({ value, power }: Amount): boolean {
  return value === 0 && power === 0;
}

/** Adds, subtracts, multiplies or divides, powers included: 48 in / 16 in is the plain number 3. */
export function calculate(op: Sign, left: Amount, right: Amount): Value | FormulaProblem {
  if (op === '*') return amount(left.value * right.value, left.power + right.power);
  if (op === '/') {
    if (right.value === 0) return { is: 'divides-by-zero', what: '' };
    return amount(left.value / right.value, left.power - right.power);
  }
  const power = sharedPower(left, right);
  if (power === undefined) return differ(op === '+' ? 'added' : 'subtracted', left, right);
  return amount(op === '+' ? left.value + right.value : left.value - right.value, power);
}

/** Compares two values; lengths closer than a millionth of a mm are equal. */
export function compare(op: Comparison, left: Value, right: Value): Value | FormulaProblem {
  if (left.kind === 'number' && right.kind === 'number') {
    if (sharedPower(left, right) === undefined) return differ('compared', left, right);
    return flag(ordered(op, left.value, right.value));
  }
  if (left.kind !== right.kind) return differ('compared', left, right);
  if (op === '=') return flag(left.value === right.value);
  if (op === '!=') return flag(left.value !== right.value);
  return {
    is: 'wrong-kind',
    what: `each side of ${op}`,
    wanted: 'a number or a length',
    got: kindName(left),
  };
}

function ordered(op: Comparison, a: number, b: number): boolean {
  if (op === '=') return sameLength(a, b);
  if (op === '!=') return !sameLength(a, b);
  if (op === '<') return lessThan(a, b);
  if (op === '<=') return atMost(a, b);
  return op === '>' ? lessThan(b, a) : atMost(b, a);
}

/** The least or the most of amounts of one power. */
export function extreme(name: 'min' | 'max', amounts: readonly Amount[]): Value | FormulaProblem {
  let [chosen]: readonly (Amount | undefined)[] = amounts;
  if (chosen === undefined) return { is: 'formula-call-count', name, wants: '1 to 20', given: 0 };
  for (const next of amounts.slice(1)) {
    const power = sharedPower(chosen, next);
    if (power === undefined) return differ('compared', chosen, next);
    const better: boolean = name === 'min' ? next.value < chosen.value : next.value > chosen.value;
    chosen = { kind: 'number', value: better ? next.value : chosen.value, power };
  }
  return chosen;
}

const WAYS = { floor: 'down', ceil: 'up', round: 'nearest' } as const;

/** Makes a count whole; 6 in / 6 in is 1 even where binary arithmetic makes it a hair more. */
export function whole(name: keyof typeof WAYS, of: Amount): Value | FormulaProblem {
  if (of.power === 0) return plain(gridSteps(of.value, 1, WAYS[name]));
  return { is: 'wrong-kind', what: name, wanted: 'a plain number', got: kindName(of) };
}

export function amount(value: number, power: number): Value | FormulaProblem {
  if (!Number.isFinite(value) || Math.abs(value) > LARGEST) return { is: 'too-large', what: '' };
  return { kind: 'number', value: value === 0 ? 0 : value, power };
}

function differ(doing: string, left: Value, right: Value): FormulaProblem {
  return { is: 'kinds-differ', doing, left: kindName(left), right: kindName(right) };
}
