import {
  Composer,
  type CST,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  LineCounter,
  type ParsedNode,
  Parser,
  type Scalar,
  type YAMLError,
} from 'yaml';
import type { Place } from './place.js';
import type { Problem } from './problem.js';
import type { Entry, MapEntry, Pair, ScalarEntry } from './read/entry.js';
import { Log } from './read/log.js';
import { recipeFrom } from './read/recipe-words.js';
import { sourceOffsets } from './read/source-offsets.js';
import { yamlWords } from './read/yaml-words.js';
import type { Recipe } from './recipe.js';

const LARGEST = 256 * 1024;
const DEEPEST = 20;

export type ReadRecipe =
  | { readonly ok: true; readonly recipe: Recipe }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Reads the text of a project file, which may come from a stranger: at most 256 KB, no aliases, no tags,
 * nothing is run and nothing else is opened. Gives the recipe, or everything that is wrong with its
 * place. Formulas are parsed, names are not yet looked up: see check-recipe.ts.
 */
export function readRecipe(text: string): ReadRecipe {
  const log = new Log();
  const recipe = recipeIn(text, log);
  const problems = log.problems;
  if (problems.length > 0) return { ok: false, problems };
  if (recipe === undefined) throw new Error('a recipe was not read, and nothing says why');
  return { ok: true, recipe };
}

const TOP: Place = { line: 1, column: 1 };

function recipeIn(text: string, log: Log): Recipe | undefined {
  if (text.length > LARGEST) {
    return log.say({ is: 'file-too-large', bytes: text.length, most: LARGEST }, TOP);
  }
  const lines = new LineCounter();
  const tokens = [...new Parser(lines.addNewLine).parse(text)];
  // The composer calls itself for each level, so a deep file has to be stopped before.
  if (isTooDeep(tokens)) return log.say({ is: 'too-deep', most: DEEPEST }, TOP);
  const composer = new Composer({ schema: 'failsafe', prettyErrors: false, uniqueKeys: false });
  const [document, second] = [...composer.compose(tokens, true, text.length)];
  const sheet = new Sheet({ text, lines, log });
  if (document === undefined) throw new Error('the YAML reader gave no document');
  for (const error of document.errors) sheet.refuse(error);
  if (second !== undefined) {
    const hint = 'Keep one recipe in a file and remove the line ---.';
    const why = 'This file holds more than one document.';
    return log.say({ is: 'not-yaml', why, hint }, sheet.place(second.range[0]));
  }
  if (document.errors.length > 0) return undefined;
  const entry = sheet.entry(document.contents, TOP);
  return entry === undefined ? undefined : recipeFrom(entry, log);
}

/** Walks the tokens without calling itself. */
function isTooDeep(tokens: readonly CST.Token[]): boolean {
  const open: { token: CST.Token; depth: number }[] = tokens.map(token => ({ token, depth: 0 }));
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const { token, depth } = next;
    if (depth > DEEPEST) return true;
    if (token.type === 'document' && token.value !== undefined) {
      open.push({ token: token.value, depth });
    }
    if (!('items' in token)) continue;
    for (const { key, value } of token.items) {
      if (key !== undefined && key !== null) open.push({ token: key, depth: depth + 1 });
      if (value !== undefined) open.push({ token: value, depth: depth + 1 });
    }
  }
  return false;
}

type Reading = { readonly text: string; readonly lines: LineCounter; readonly log: Log };

/** Turns the nodes of the YAML reader into entries that know their places. */
class Sheet {
  constructor(private readonly reading: Reading) {}

  place(offset: number): Place {
    const { line, col } = this.reading.lines.linePos(offset);
    return { line: Math.max(line, 1), column: Math.max(col, 1) };
  }

  refuse(error: YAMLError): void {
    const words = yamlWords(error.code, error.message);
    this.reading.log.say({ is: 'not-yaml', ...words }, this.place(error.pos[0]));
  }

  entry(node: ParsedNode | null, otherwise: Place): Entry | undefined {
    const { log } = this.reading;
    if (node === null) return { kind: 'scalar', text: '', at: otherwise, placeOf: () => otherwise };
    const at = this.place(node.range[0]);
    if (isAlias(node)) return log.say({ is: 'yaml-alias' }, at);
    // These are noted, and what stands behind them is read all the same for its own mistakes.
    if (node.anchor !== undefined) log.say({ is: 'yaml-alias' }, at);
    if (node.tag !== undefined) log.say({ is: 'yaml-tag', tag: node.tag }, at);
    if (isScalar(node)) return this.scalar(node, at);
    if (isSeq(node)) {
      const items = node.items.map(item => this.entry(item, at));
      return { kind: 'list', items: items.filter(item => item !== undefined), at };
    }
    return isMap(node) ? this.map(node.items, at) : undefined;
  }

  private map(
    pairs: readonly { readonly key: ParsedNode; readonly value: ParsedNode | null }[],
    at: Place,
  ): MapEntry {
    const lines = new Map<string, number>();
    const read = pairs.map(({ key, value }) => this.pair(key, value, lines));
    return { kind: 'map', pairs: read.filter(pair => pair !== undefined), at };
  }

  private pair(
    key: ParsedNode,
    value: ParsedNode | null,
    lines: Map<string, number>,
  ): Pair | undefined {
    const { log } = this.reading;
    const at = this.place(key.range[0]);
    const word = this.entry(key, at);
    const entry = this.entry(value, at);
    if (word === undefined) return undefined;
    if (word.kind !== 'scalar') {
      return log.say({ is: 'wrong-shape', wanted: 'a word', got: 'a list or a group' }, at);
    }
    const firstLine = lines.get(word.text);
    if (firstLine !== undefined) {
      return log.say({ is: 'duplicate-word', word: word.text, firstLine }, at);
    }
    lines.set(word.text, at.line);
    return entry === undefined ? undefined : { key: word.text, at, value: entry };
  }

  private scalar(node: Scalar.Parsed, at: Place): ScalarEntry {
    const text = String(node.value);
    const [start, end] = node.range;
    let offsets: number[] | undefined;
    const placeOf = (letter: number) => {
      offsets ??= sourceOffsets(text, this.reading.text.slice(start, end));
      const last = offsets.at(-1);
      return this.place(start + (offsets[letter] ?? (last === undefined ? 0 : last + 1)));
    };
    return { kind: 'scalar', text, at, placeOf };
  }
}
