import { TOTAL_NAMES } from '../answers/answer-values.js';
import { checkFormula, type Names } from '../check-dimensions.js';
import { formulaNames } from '../formula-names.js';
import type { ValueKind } from '../kind-name.js';
import { questionsOf } from '../questions.js';
import type { Assembly, NamedSize, Question, Recipe, StackRule } from '../recipe.js';

const LENGTH: ValueKind = { kind: 'number', power: 1 };
const PLAIN: ValueKind = { kind: 'number', power: 0 };
const TEXT: ValueKind = { kind: 'text' };

type Entry = readonly [string, ValueKind | undefined];

/** The names that the answers to these questions give. */
export function answerNames(questions: readonly Question[]): Names {
  return new Map(questions.flatMap(namesOfAnswer));
}

function namesOfAnswer({ id, kind, options, fields }: Question): readonly Entry[] {
  switch (kind) {
    case 'length':
      return [[id, LENGTH]];
    case 'count':
    case 'hours':
      return [[id, PLAIN]];
    case 'choice':
      return [[id, { kind: 'text', options: options.map(option => option.id) }]];
    case 'text':
      return [[id, TEXT]];
    case 'yes':
      return [[id, { kind: 'flag' }]];
    case 'items':
      return [
        [`${id}.count`, PLAIN],
        ...fields.flatMap(field =>
          TOTAL_NAMES.map((how): Entry => [`${id}.${field}.${how}`, LENGTH]),
        ),
      ];
    case 'clock':
    case 'date':
      return [];
    case 'offers':
    case 'boards':
    case 'days':
      return [[`${id}.count`, PLAIN]];
  }
}

/**
 * The names that formulas of an assembly may use: the answers, the kinds of board, the sizes and layouts
 * of the whole piece, what the assembly takes, its own sizes and layouts.
 */
export function assemblyNames(recipe: Recipe, assembly: Assembly): Names {
  const whole = wholeNames(recipe);
  if (assembly === recipe.whole) return whole;
  const names = new Map(whole);
  for (const { id, kind } of assembly.takes) names.set(id, kind === 'length' ? LENGTH : PLAIN);
  addLayouts(assembly, names);
  return withSizes(assembly.sizes, names);
}

function wholeNames(recipe: Recipe): Names {
  const names = new Map(answerNames(questionsOf(recipe)));
  for (const { id } of recipe.boards) {
    names.set(`${id}.width`, LENGTH).set(`${id}.thickness`, LENGTH);
  }
  addLayouts(recipe.whole, names);
  return withSizes(recipe.whole.sizes, names);
}

function addLayouts({ layouts }: Assembly, names: Map<string, ValueKind | undefined>): void {
  for (const { id } of layouts) names.set(`${id}.count`, PLAIN).set(`${id}.gap`, LENGTH);
}

/** Sizes may stand in any order, so their kinds are found by following their names. */
function withSizes(sizes: readonly NamedSize[], outer: Names): Names {
  const names = new Map(outer);
  const waiting = new Map(sizes.map(size => [size.id, size]));
  const find = (size: NamedSize): void => {
    waiting.delete(size.id);
    // Known to be there before it is worked out, so that a circle ends instead of going round.
    names.set(size.id, undefined);
    for (const name of namesIn(size)) {
      const other = waiting.get(name);
      if (other !== undefined) find(other);
    }
    names.set(size.id, checkFormula(size.formula, names).kind);
  };
  for (const size of sizes) if (waiting.has(size.id)) find(size);
  return names;
}

function namesIn({ formula }: NamedSize): readonly string[] {
  return formulaNames(formula.node).map(({ name }) => name);
}

/** What the formulas of a stack see besides, for each thing of the list that it walks. */
export function stackNames(names: Names, { each }: StackRule, recipe: Recipe): Names {
  const question = questionsOf(recipe).find(({ id }) => id === each);
  const all = new Map(names).set('item.number', PLAIN);
  for (const field of question?.fields ?? []) {
    all.set(`item.${field}`, LENGTH).set(`item.before.${field}`, LENGTH);
  }
  return all;
}

/** What the formulas of a joint see besides: the place where two boards touch. */
export function jointNames(names: Names): Names {
  return new Map(names).set('patch.long', LENGTH).set('patch.short', LENGTH);
}
