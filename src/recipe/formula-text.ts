import { formatNumber } from '../measure/format-number.js';
import type { Node, Operator } from './formula.js';

/** How tightly each node binds; a looser one inside a tighter one needs parentheses. */
const BINDS: Readonly<Record<Operator, number>> = {
  or: 1,
  and: 2,
  '=': 4,
  '!=': 4,
  '<': 4,
  '<=': 4,
  '>': 4,
  '>=': 4,
  '+': 5,
  '-': 5,
  '*': 6,
  '/': 6,
};
const NOT = 3;
const MINUS = 7;
const SINGLE = 8;

/** How the leaves and the signs of a formula are written. */
export type Writer = {
  readonly leaf: (
    node: Extract<Node, { kind: 'number' | 'length' | 'text' | 'flag' | 'name' }>,
  ) => string;
  readonly sign: (op: Operator) => string;
};

const AS_TYPED: Writer = {
  leaf: node => {
    if (node.kind === 'name') return node.name;
    if (node.kind === 'text') return `"${node.value}"`;
    if (node.kind === 'flag') return node.value ? 'yes' : 'no';
    return node.kind === 'length' ? `${digits(node.value)} mm` : digits(node.value);
  },
  sign: op => op,
};

/**
 * A formula written out again, with the fewest parentheses and lengths in mm; it reads back as the same
 * formula: `a-(b+c)` is "a - (b + c)".
 */
export function formulaText(node: Node, writer: Writer = AS_TYPED): string {
  switch (node.kind) {
    case 'minus':
      return `-${within(node.of, MINUS, writer)}`;
    case 'not':
      return `not ${within(node.of, NOT + 1, writer)}`;
    case 'call':
      return `${node.name}(${node.of.map(of => formulaText(of, writer)).join(', ')})`;
    case 'binary':
      return binary(node, writer);
    default:
      return writer.leaf(node);
  }
}

function binary(node: Extract<Node, { kind: 'binary' }>, writer: Writer): string {
  const binds = BINDS[node.op];
  // A comparison does not stand beside another one without parentheses.
  const left = within(node.left, binds === NOT + 1 ? binds + 1 : binds, writer);
  return `${left} ${writer.sign(node.op)} ${within(node.right, binds + 1, writer)}`;
}

function within(node: Node, binds: number, writer: Writer): string {
  const written = formulaText(node, writer);
  return tightness(node) < binds ? `(${written})` : written;
}

function tightness(node: Node): number {
  if (node.kind === 'binary') return BINDS[node.op];
  if (node.kind === 'not') return NOT;
  return node.kind === 'minus' ? MINUS : SINGLE;
}

function digits(value: number): string {
  return formatNumber(value, 9);
}
