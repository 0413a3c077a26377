import {
  type Amount,
  amount,
  calculate,
  compare,
  extreme,
  flag,
  length,
  plain,
  text,
  whole,
} from './arithmetic.js';
import type { Call, Node, Operator } from './formula.js';
import { formulaText } from './formula-text.js';
import { kindName } from './kind-name.js';
import { isProblem } from './parse-formula.js';
import type { Place } from './place.js';
import type { FormulaProblem, Problem } from './problem.js';
import type { Scope } from './scope.js';
import type { Value } from './values.js';

type Result = Value | Problem;

/** Works out one formula, node by node, in one scope. `at` is where the formula begins. */
export class Work {
  constructor(
    private readonly scope: Scope,
    private readonly at: Place,
  ) {}

  of(node: Node): Result {
    switch (node.kind) {
      case 'number':
        return plain(node.value);
      case 'length':
        return length(node.value);
      case 'text':
        return text(node.value);
      case 'flag':
        return flag(node.value);
      case 'name':
        return this.named(node.name, node.at);
      case 'minus':
        return this.minus(node.of);
      case 'not':
        return this.not(node.of);
      case 'binary':
        return this.binary(node);
      case 'call':
        return this.call(node.name, node.of, node);
    }
  }

  private named(name: string, at: Place): Result {
    return this.scope.find(name) ?? { kind: { is: 'unknown-name', name, near: undefined }, at };
  }

  private minus(of: Node): Result {
    const value = this.amount(of, 'the minus');
    return isProblem(value) ? value : this.told(amount(-value.value, value.power), of);
  }

  private not(of: Node): Result {
    const value = this.flag(of, 'not');
    return isProblem(value) ? value : flag(!value.value);
  }

  private binary(node: Extract<Node, { kind: 'binary' }>): Result {
    const { op, left, right } = node;
    if (op === 'and' || op === 'or') return this.both(op, left, right);
    if (isSign(op)) {
      const a = this.amount(left, op);
      if (isProblem(a)) return a;
      const b = this.amount(right, op);
      return isProblem(b) ? b : this.told(calculate(op, a, b), op === '/' ? right : node, node.at);
    }
    const a = this.of(left);
    if (isProblem(a)) return a;
    const b = this.of(right);
    return isProblem(b) ? b : this.told(compare(op, a, b), node, node.at);
  }

  private both(op: 'and' | 'or', left: Node, right: Node): Result {
    const first = this.flag(left, op);
    if (isProblem(first) || first.value === (op === 'or')) return first;
    return this.flag(right, op);
  }

  private call(name: Call, of: readonly Node[], node: Extract<Node, { kind: 'call' }>): Result {
    if (name === 'if') return this.choose(of);
    const amounts: Amount[] = [];
    for (const argument of of) {
      const value = this.amount(argument, name);
      if (isProblem(value)) return value;
      amounts.push(value);
    }
    if (name === 'min' || name === 'max') return this.told(extreme(name, amounts), node, node.at);
    const [first = { kind: 'number', value: 0, power: 0 }] = amounts;
    if (name === 'abs') return this.told(amount(Math.abs(first.value), first.power), node, node.at);
    return this.told(whole(name, first), node, node.at);
  }

  private choose([condition, then, otherwise]: readonly Node[]): Result {
    if (condition === undefined || then === undefined || otherwise === undefined) {
      throw new Error('if without its three parts left the parser');
    }
    const holds = this.flag(condition, 'if');
    if (isProblem(holds)) return holds;
    return this.of(holds.value ? then : otherwise);
  }

  private amount(node: Node, what: string): Amount | Problem {
    const value = this.of(node);
    if (isProblem(value) || value.kind === 'number') return value;
    return this.unfit(node, { what, wanted: 'a number or a length', got: kindName(value) });
  }

  private flag(node: Node, what: string): Extract<Value, { kind: 'flag' }> | Problem {
    const value = this.of(node);
    if (isProblem(value) || value.kind === 'flag') return value;
    return this.unfit(node, { what, wanted: 'a yes or no', got: kindName(value) });
  }

  private unfit(node: Node, facts: { what: string; wanted: string; got: string }): Problem {
    return { kind: { is: 'wrong-kind', ...facts }, at: placeOf(node, this.at) };
  }

  private told(found: Value | FormulaProblem, node: Node, at = placeOf(node, this.at)): Result {
    if (!('is' in found)) return found;
    const kind =
      'what' in found && found.what === '' ? { ...found, what: formulaText(node) } : found;
    return { kind, at };
  }
}

function isSign(op: Operator): op is '+' | '-' | '*' | '/' {
  return op === '+' || op === '-' || op === '*' || op === '/';
}

/** The first place that is known inside a node; literals do not carry one. */
export function placeOf(node: Node, otherwise: Place): Place {
  if (node.kind === 'name' || node.kind === 'call' || node.kind === 'binary') return node.at;
  if (node.kind === 'minus' || node.kind === 'not') return placeOf(node.of, otherwise);
  return otherwise;
}
