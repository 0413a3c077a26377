import type { Names } from '../check-dimensions.js';
import type { Formula, Template } from '../formula.js';
import type { ValueKind } from '../kind-name.js';
import { questionsOf } from '../questions.js';
import type { Assembly, FitRule, Question, Recipe, StepRule, Triple } from '../recipe.js';
import type { Instances } from './instances.js';
import { answerNames, assemblyNames, jointNames, stackNames } from './known-names.js';

/** A formula of the recipe with the names that it may use and the kind that it should give. */
export type Site = {
  readonly formula: Formula;
  readonly names: Names;
  readonly wanted: 'length' | 'number' | 'flag' | 'text' | 'anything';
};

type Wanted = Site['wanted'];

const QUESTION_KINDS: Readonly<Record<Question['kind'], Wanted>> = {
  length: 'length',
  count: 'number',
  hours: 'number',
  clock: 'text',
  date: 'text',
  days: 'text',
  yes: 'flag',
  choice: 'text',
  text: 'text',
  items: 'text',
  offers: 'text',
  boards: 'text',
};

/** Every formula of a recipe; `words` are texts that step texts may use besides. */
export function formulaSites(
  recipe: Recipe,
  made: Instances,
  words: readonly string[],
): readonly Site[] {
  const whole = assemblyNames(recipe, recipe.whole);
  const told = toldNames(whole, made, words);
  return [
    ...questionSites(questionsOf(recipe)),
    ...recipe.boards.map(({ section }) => site(section, whole, 'text')),
    ...[recipe.whole, ...recipe.assemblies].flatMap(assembly =>
      assemblySites(recipe, assembly, assemblyNames(recipe, assembly)),
    ),
    ...recipe.fit.flatMap(rule => fitSites(rule, told)),
    ...recipe.steps.flatMap(rule => stepSites(rule, told)),
  ];
}

/** A question sees the answers given before it. */
function questionSites(questions: readonly Question[]): readonly Site[] {
  return questions.flatMap((question, place) => {
    const names = answerNames(questions.slice(0, place));
    const wanted = QUESTION_KINDS[question.kind];
    return [
      ...optional(question.usual, names, wanted),
      ...optional(question.from, names, wanted),
      ...optional(question.to, names, wanted),
      ...optional(question.when, names, 'flag'),
    ];
  });
}

function assemblySites(recipe: Recipe, assembly: Assembly, names: Names): readonly Site[] {
  const triple = (corner: Triple, seen = names) => corner.map(at => site(at, seen, 'length'));
  const length = (formula: Formula, seen = names) => site(formula, seen, 'length');
  return [
    ...assembly.sizes.map(({ formula }) => site(formula, names, 'anything')),
    ...assembly.parts.flatMap(part => [
      length(part.length),
      ...triple(part.corner),
      ...repeatSites(part.repeat, names),
      ...optional(part.when, names, 'flag'),
    ]),
    ...assembly.layouts.flatMap(({ from, over, want, least, most }) =>
      [from, over, want, least, most].map(formula => length(formula)),
    ),
    ...assembly.stacks.flatMap(stack => {
      const seen = stackNames(names, stack, recipe);
      return [
        length(stack.length, seen),
        length(stack.height, seen),
        ...triple(stack.corner, seen),
        ...repeatSites(stack.repeat, seen),
      ];
    }),
    ...assembly.places.flatMap(use => [
      ...use.sizes.map(({ take, formula }) =>
        site(formula, names, takeKind(recipe, use.assembly, take)),
      ),
      ...use.stands.flatMap(({ corner }) => triple(corner)),
      ...optional(use.when, names, 'flag'),
    ]),
    ...assembly.joints.map(({ each }) => site(each, jointNames(names), 'number')),
  ];
}

type Repeated = Assembly['parts'][number]['repeat'];

function repeatSites(repeat: Repeated, names: Names): readonly Site[] {
  if (repeat === undefined || repeat.kind === 'layout') return [];
  return [
    site(repeat.count, names, 'number'),
    ...repeat.step.map(step => site(step, names, 'length')),
  ];
}

function takeKind(recipe: Recipe, assembly: string, take: string): Wanted {
  const used = recipe.assemblies.find(({ id }) => id === assembly);
  const found = used?.takes.find(({ id }) => id === take);
  if (found === undefined) return 'anything';
  return found.kind === 'length' ? 'length' : 'number';
}

function fitSites({ value, least, most, when, otherwise }: FitRule, names: Names) {
  return [
    site(value, names, 'anything'),
    ...optional(least, names, 'anything'),
    ...optional(most, names, 'anything'),
    ...optional(when, names, 'flag'),
    ...holes([otherwise], names),
  ];
}

function stepSites(step: StepRule, names: Names): readonly Site[] {
  const { title, say, plain, look, why } = step;
  return [
    ...holes([title, ...say, ...plain, ...look, ...(why === undefined ? [] : [why])], names),
    ...optional(step.tally, names, 'number'),
    ...optional(step.minutes, names, 'number'),
    ...optional(step.when, names, 'flag'),
    ...step.timers.flatMap(({ lasts }) =>
      typeof lasts === 'string' ? [] : [site(lasts, names, 'number')],
    ),
  ];
}

function holes(templates: readonly Template[], names: Names): readonly Site[] {
  return templates.flatMap(({ pieces }) =>
    pieces.filter(piece => typeof piece !== 'string').map(piece => site(piece, names, 'anything')),
  );
}

/** What steps and fits see besides: what came of the parts and the fasteners, and the outside. */
function toldNames(whole: Names, made: Instances, words: readonly string[]): Names {
  const text: ValueKind = { kind: 'text' };
  const count: ValueKind = { kind: 'number', power: 0 };
  const length: ValueKind = { kind: 'number', power: 1 };
  const names = new Map(whole);
  for (const word of words) names.set(word, text);
  for (const { path } of made.parts)
    names.set(`${path}.count`, count).set(`${path}.length`, length);
  for (const side of ['width', 'depth', 'height']) names.set(`overall.${side}`, length);
  for (const { rule } of made.joints) {
    for (const what of ['screw', 'brad', 'drills']) names.set(`${what}.${rule.id}`, text);
  }
  return names;
}

function site(formula: Formula, names: Names, wanted: Wanted): Site {
  return { formula, names, wanted };
}

function optional(formula: Formula | undefined, names: Names, wanted: Wanted): readonly Site[] {
  return formula === undefined ? [] : [site(formula, names, wanted)];
}
