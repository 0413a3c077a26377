import { nearestWord } from '../measure/suggest.js';
import type { Formula, Node } from './formula.js';
import { formulaText } from './formula-text.js';
import { kindName, type ValueKind } from './kind-name.js';
import type { Place } from './place.js';
import type { FormulaProblem, Problem, ProblemKind } from './problem.js';
import { placeOf } from './work.js';

/** The kind of each name that a formula may use; undefined where the name's own formula is broken. */
export type Names = ReadonlyMap<string, ValueKind | undefined>;

export type CheckedFormula = {
  /** Undefined when it cannot be told, because something in it is wrong. */
  readonly kind: ValueKind | undefined;
  readonly problems: readonly Problem[];
};

/**
 * What kind of value a formula gives, and everything that is wrong in it, branches that are not taken
 * included: `if(a, 2 in, 3)` is a length or a plain number, which is refused. No value is needed.
 */
export function checkFormula(formula: Formula, names: Names): CheckedFormula {
  const check = new KindCheck(names, formula.at);
  const kind = check.of(formula.node);
  return { kind, problems: check.problems };
}

type NumberKind = Extract<ValueKind, { kind: 'number' }>;
const FLAG: ValueKind = { kind: 'flag' };
const PLAIN: ValueKind = { kind: 'number', power: 0 };

class KindCheck {
  readonly problems: Problem[] = [];

  constructor(
    private readonly names: Names,
    private readonly at: Place,
  ) {}

  of(node: Node): ValueKind | undefined {
    switch (node.kind) {
      case 'number':
        return node.value === 0 ? { kind: 'number', power: 0, zero: true } : PLAIN;
      case 'length':
        return { kind: 'number', power: 1 };
      case 'text':
        return { kind: 'text', options: [node.value] };
      case 'flag':
        return FLAG;
      case 'name':
        return this.named(node.name, node.at);
      case 'minus':
        return this.number(node.of, 'the minus');
      case 'not':
        this.flag(node.of, 'not');
        return FLAG;
      case 'binary':
        return this.binary(node);
      case 'call':
        return node.name === 'if' ? this.choice(node) : this.call(node);
    }
  }

  private named(name: string, at: Place): ValueKind | undefined {
    if (this.names.has(name)) return this.names.get(name);
    return this.say({ is: 'unknown-name', name, near: nearestWord(name, this.names.keys()) }, at);
  }

  private binary(node: Extract<Node, { kind: 'binary' }>): ValueKind | undefined {
    const { op, left, right, at } = node;
    if (op === 'and' || op === 'or') {
      this.flag(left, op);
      this.flag(right, op);
      return FLAG;
    }
    if (op === '*' || op === '/' || op === '+' || op === '-') {
      const a = this.number(left, op);
      const b = this.number(right, op);
      if (op === '/') this.refuseZero(right, b);
      if (a === undefined || b === undefined) return undefined;
      if (op === '*') return { kind: 'number', power: a.power + b.power };
      if (op === '/') return { kind: 'number', power: a.power - b.power };
      return this.shared([a, b], op === '+' ? 'added' : 'subtracted', at);
    }
    const a = this.of(left);
    const b = this.of(right);
    if (a !== undefined && b !== undefined) this.compare(node, a, b);
    return FLAG;
  }

  private refuseZero(node: Node, kind: NumberKind | undefined): void {
    if (kind?.zero !== true) return;
    this.say({ is: 'divides-by-zero', what: formulaText(node) }, placeOf(node, this.at));
  }

  private compare({ op, at }: Extract<Node, { kind: 'binary' }>, a: ValueKind, b: ValueKind): void {
    if (op !== '=' && op !== '!=' && a.kind !== 'number') {
      const facts = {
        what: `each side of ${op}`,
        wanted: 'a number or a length',
        got: kindName(a),
      };
      this.say({ is: 'wrong-kind', ...facts }, at);
    } else if (this.shared([a, b], 'compared', at)?.kind === 'text') {
      this.compareOptions(a, b, at);
    }
  }

  /** `slat = "thik"` can never hold when slat is thick or thin. */
  private compareOptions(a: ValueKind, b: ValueKind, at: Place): void {
    if (a.kind !== 'text' || b.kind !== 'text' || !a.options || !b.options) return;
    const [options, given] = a.options.length > b.options.length ? [a, b] : [b, a];
    const known = options.options ?? [];
    for (const name of given.options ?? []) {
      if (known.includes(name)) continue;
      this.say(
        { is: 'unknown-target', target: 'option', name, near: nearestWord(name, known) },
        at,
      );
    }
  }

  private choice({ of, at }: Extract<Node, { kind: 'call' }>): ValueKind | undefined {
    const [condition, then, otherwise] = of;
    if (condition !== undefined) this.flag(condition, 'if');
    const a = then === undefined ? undefined : this.of(then);
    const b = otherwise === undefined ? undefined : this.of(otherwise);
    if (a === undefined || b === undefined) return undefined;
    return this.shared([a, b], 'the two answers of one if', at);
  }

  private call({ name, of, at }: Extract<Node, { kind: 'call' }>): ValueKind | undefined {
    const kinds = of.map(node => this.number(node, name));
    const known = kinds.filter(kind => kind !== undefined);
    if (known.length < kinds.length) return undefined;
    if (name === 'min' || name === 'max' || name === 'abs') {
      return this.shared(known, 'compared', at);
    }
    const odd = known.find(({ power }) => power !== 0);
    if (odd !== undefined) {
      const facts = { what: name, wanted: 'a plain number', got: kindName(odd) };
      return this.say({ is: 'wrong-kind', ...facts }, at);
    }
    return PLAIN;
  }

  /** The kind that all of them share; a plain 0 goes with any length or area. */
  private shared(kinds: readonly ValueKind[], doing: string, at: Place): ValueKind | undefined {
    let [shared] = kinds;
    for (const kind of kinds.slice(1)) {
      if (shared === undefined) return undefined;
      const both = together(shared, kind);
      if (both === undefined) {
        const facts = { doing, left: kindName(shared), right: kindName(kind) };
        return this.say({ is: 'kinds-differ', ...facts }, at);
      }
      shared = both;
    }
    return shared;
  }

  private number(node: Node, what: string): NumberKind | undefined {
    const kind = this.of(node);
    if (kind === undefined || kind.kind === 'number') return kind;
    const facts = { what, wanted: 'a number or a length', got: kindName(kind) };
    return this.say({ is: 'wrong-kind', ...facts }, placeOf(node, this.at));
  }

  private flag(node: Node, what: string): void {
    const kind = this.of(node);
    if (kind === undefined || kind.kind === 'flag') return;
    const facts: FormulaProblem = {
      is: 'wrong-kind',
      what,
      wanted: 'a yes or no',
      got: kindName(kind),
    };
    this.say(facts, placeOf(node, this.at));
  }

  private say(kind: ProblemKind, at: Place): undefined {
    this.problems.push({ kind, at });
  }
}

function together(a: ValueKind, b: ValueKind): ValueKind | undefined {
  if (a.kind === 'number' && b.kind === 'number') {
    if (a.power === b.power) return { kind: 'number', power: a.power };
    if (a.zero === true) return b;
    return b.zero === true ? a : undefined;
  }
  if (a.kind === 'text' && b.kind === 'text') {
    if (a.options === undefined || b.options === undefined) return { kind: 'text' };
    return { kind: 'text', options: [...new Set([...a.options, ...b.options])] };
  }
  return a.kind === b.kind ? a : undefined;
}
