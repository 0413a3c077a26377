import { nearestWord } from '../measure/suggest.js';
import type { Call, Formula, Node, Operator } from './formula.js';
import { formulaTokens, type PlaceOf, type Token } from './formula-tokens.js';
import type { Place } from './place.js';
import type { FormulaProblem, Problem } from './problem.js';

/** A longer formula is hard to check by eye: name a part of it under `let`. */
export const LONGEST_FORMULA = 500;
const DEEPEST = 40;

const CALLS: Readonly<Record<Call, { readonly least: number; readonly most: number }>> = {
  min: { least: 1, most: 20 },
  max: { least: 1, most: 20 },
  floor: { least: 1, most: 1 },
  ceil: { least: 1, most: 1 },
  round: { least: 1, most: 1 },
  abs: { least: 1, most: 1 },
  if: { least: 3, most: 3 },
};

export const CALL_NAMES: readonly string[] = Object.keys(CALLS);
export const OPERATOR_WORDS: readonly string[] = ['and', 'or', 'not'];

/** From loosest to tightest; each row binds tighter than the one before. */
const ROWS: readonly (readonly Operator[])[] = [
  ['or'],
  ['and'],
  ['=', '!=', '<', '<=', '>', '>='],
  ['+', '-'],
  ['*', '/'],
];
const COMPARISONS = 2;

/**
 * Parses the text behind the `=` of a formula: `seat + 2 * planter`. Its letters stand wherever `placeOf`
 * says, on several lines for example. The first mistake is given with its own place.
 */
export function parseFormula(text: string, placeOf: PlaceOf): Formula | Problem {
  const at = placeOf(text.length - text.trimStart().length);
  if (text.length > LONGEST_FORMULA) {
    return {
      kind: { is: 'formula-too-long', length: text.length, most: LONGEST_FORMULA },
      at,
    };
  }
  if (text.trim() === '') return { kind: { is: 'formula-empty' }, at };
  const tokens = formulaTokens(text, placeOf);
  if (!Array.isArray(tokens)) return tokens;
  const node = new Parser(tokens, placeOf).whole();
  return isProblem(node) ? node : { text: text.trim(), node, at };
}

/** True for what went wrong, where a formula, a node or a value was hoped for. */
export function isProblem(found: object): found is Problem {
  return 'kind' in found && typeof found.kind === 'object';
}

/** Goes through the tokens once, from left to right. */
class Parser {
  private next = 0;
  private depth = 0;

  constructor(
    private readonly tokens: readonly Token[],
    private readonly placeOf: PlaceOf,
  ) {}

  whole(): Node | Problem {
    const node = this.row(0);
    if (isProblem(node) || this.token().kind === 'end') return node;
    return this.expected('a sign such as + or the end of the formula');
  }

  /** One row of operators, left to right: 10 - 2 - 3 is 5. */
  private row(level: number): Node | Problem {
    const operators = ROWS[level];
    if (operators === undefined) return this.prefixed();
    let left = this.row(level + 1);
    for (let count = 0; !isProblem(left); count += 1) {
      const token = this.token();
      const op = operators.find(operator => isWord(token, operator));
      if (op === undefined) return left;
      const at = this.placeOf(token.start);
      if (level === COMPARISONS && count > 0)
        return { kind: { is: 'formula-two-comparisons' }, at };
      this.next += 1;
      const right = this.row(level + 1);
      if (isProblem(right)) return right;
      left = { kind: 'binary', op, left, right, at };
    }
    return left;
  }

  private prefixed(): Node | Problem {
    for (const kind of ['minus', 'not'] as const) {
      if (!isWord(this.token(), kind === 'minus' ? '-' : 'not')) continue;
      this.next += 1;
      // `not a = b` denies the comparison; a minus belongs to what is right behind it.
      const of = this.deeper(() => (kind === 'not' ? this.row(COMPARISONS) : this.prefixed()));
      return isProblem(of) ? of : { kind, of };
    }
    return this.single();
  }

  private single(): Node | Problem {
    const token = this.token();
    if (token.kind === 'number' || token.kind === 'length') {
      this.next += 1;
      return { kind: token.kind, value: token.value };
    }
    if (token.kind === 'text') {
      this.next += 1;
      return { kind: 'text', value: token.value };
    }
    if (token.kind === 'name') return this.named(token.value);
    if (isWord(token, '(')) return this.deeper(() => this.bracketed());
    return this.expected('a name, a number or a length');
  }

  private bracketed(): Node | Problem {
    this.next += 1;
    const inside = this.row(0);
    if (isProblem(inside)) return inside;
    if (!isWord(this.token(), ')')) return this.expected('a closing parenthesis');
    this.next += 1;
    return inside;
  }

  private named(name: string): Node | Problem {
    const at = this.placeOf(this.token().start);
    if (OPERATOR_WORDS.includes(name)) return this.expected('a name, a number or a length');
    this.next += 1;
    if (isWord(this.token(), '(')) return this.deeper(() => this.called(name, at));
    if (name === 'yes' || name === 'true') return { kind: 'flag', value: true };
    if (name === 'no' || name === 'false') return { kind: 'flag', value: false };
    return { kind: 'name', name, at };
  }

  private called(name: string, at: Place): Node | Problem {
    if (!isCall(name)) {
      const near = nearestWord(name, CALL_NAMES);
      return { kind: { is: 'formula-unknown-call', name, near }, at };
    }
    const of = this.listed();
    if (!isNodes(of)) return of;
    const { least, most } = CALLS[name];
    if (of.length >= least && of.length <= most) return { kind: 'call', name, of, at };
    const wants = least === most ? String(least) : `${least} to ${most}`;
    return { kind: { is: 'formula-call-count', name, wants, given: of.length }, at };
  }

  /** What stands between the parentheses of a call, with commas between. */
  private listed(): readonly Node[] | Problem {
    const of: Node[] = [];
    this.next += 1;
    if (isWord(this.token(), ')')) {
      this.next += 1;
      return of;
    }
    for (;;) {
      const node = this.row(0);
      if (isProblem(node)) return node;
      of.push(node);
      const token = this.token();
      if (!isWord(token, ')') && !isWord(token, ',')) {
        return this.expected('a comma or a closing parenthesis');
      }
      this.next += 1;
      if (isWord(token, ')')) return of;
    }
  }

  private deeper(read: () => Node | Problem): Node | Problem {
    if (this.depth >= DEEPEST) return this.wrong({ is: 'formula-too-deep', most: DEEPEST });
    this.depth += 1;
    const node = read();
    this.depth -= 1;
    return node;
  }

  private token(): Token {
    return this.tokens[this.next] ?? { kind: 'end', start: 0 };
  }

  private expected(expected: string): Problem {
    return this.wrong({ is: 'formula-expected', expected, found: written(this.token()) });
  }

  private wrong(kind: FormulaProblem): Problem {
    return { kind, at: this.placeOf(this.token().start) };
  }
}

function isNodes(found: readonly Node[] | Problem): found is readonly Node[] {
  return Array.isArray(found);
}

function isCall(name: string): name is Call {
  return Object.hasOwn(CALLS, name);
}

function isWord(token: Token, word: string): boolean {
  return (token.kind === 'sign' || token.kind === 'name') && token.value === word;
}

function written(token: Token): string {
  if (token.kind === 'end') return 'the end of the formula';
  if (token.kind === 'length') return 'a length';
  return token.kind === 'text' ? `the text "${token.value}"` : `"${token.value}"`;
}
