import type { Display } from '../measure/quantities.js';
import type { Formula, Node, Operator } from './formula.js';
import { formulaText, type Writer } from './formula-text.js';
import { isProblem } from './parse-formula.js';
import type { Place } from './place.js';
import type { Scope } from './scope.js';
import { valueText } from './value-text.js';
import { Work } from './work.js';

/**
 * A formula in words with the numbers put in: "seat + 2 x planter = 48 in + 2 x 18 in". Of an `if` only
 * the branch taken is told, with the condition behind it: "3, since seat_depth > reach (26 in > 24 in)". What
 * cannot be worked out stays a name.
 */
export function explain(formula: Formula, scope: Scope, display: Display): string {
  const reasons: Node[] = [];
  const work = new Work(scope, formula.at);
  const taken = takenBranches(formula.node, work, reasons);
  const words = inWords(taken, display);
  const numbers = inNumbers(taken, { scope, display, at: formula.at });
  const equation = words === numbers ? words : `${words} = ${numbers}`;
  if (reasons.length === 0) return equation;
  const why = reasons.map(reason => {
    const holds = inWords(reason, display);
    const shown = inNumbers(reason, { scope, display, at: formula.at });
    return holds === shown ? holds : `${holds} (${shown})`;
  });
  return `${equation}, since ${why.join(' and ')}`;
}

/** The same formula with each `if` replaced by the branch it takes; what decided goes to `reasons`. */
function takenBranches(node: Node, work: Work, reasons: Node[]): Node {
  switch (node.kind) {
    case 'call': {
      const [condition, then, otherwise] = node.of;
      if (node.name === 'if' && condition !== undefined && then !== undefined) {
        const holds = work.of(condition);
        if (isProblem(holds) || holds.kind !== 'flag' || otherwise === undefined) return node;
        reasons.push(holds.value ? condition : { kind: 'not', of: condition });
        return takenBranches(holds.value ? then : otherwise, work, reasons);
      }
      return { ...node, of: node.of.map(of => takenBranches(of, work, reasons)) };
    }
    case 'minus':
    case 'not':
      return { ...node, of: takenBranches(node.of, work, reasons) };
    case 'binary': {
      const left = takenBranches(node.left, work, reasons);
      return { ...node, left, right: takenBranches(node.right, work, reasons) };
    }
    default:
      return node;
  }
}

function inWords(node: Node, display: Display): string {
  return formulaText(
    node,
    writer(display, name => name),
  );
}

type Setting = { readonly scope: Scope; readonly display: Display; readonly at: Place };

function inNumbers(node: Node, { scope, display, at }: Setting): string {
  const work = new Work(scope, at);
  return formulaText(
    node,
    writer(display, name => {
      const value = work.of({ kind: 'name', name, at });
      return isProblem(value) || value.kind !== 'number' ? name : valueText(value, display);
    }),
  );
}

const SIGNS: ReadonlyMap<Operator, string> = new Map([
  ['*', 'x'],
  ['=', 'is'],
  ['!=', 'is not'],
]);

function writer(display: Display, named: (name: string) => string): Writer {
  return {
    leaf: node => {
      if (node.kind === 'name') return named(node.name);
      if (node.kind === 'length') return valueText({ ...node, kind: 'number', power: 1 }, display);
      if (node.kind === 'number') return valueText({ ...node, power: 0 }, display);
      return valueText(node, display);
    },
    sign: op => SIGNS.get(op) ?? op,
  };
}
