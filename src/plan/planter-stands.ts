import { capital } from '../measure/capital.js';
import type { Model, Part } from '../model/part.js';
import type { StackWish } from '../model/stack.js';
import type { Recipe, StackRule } from '../recipe/recipe.js';
import type { Answers, Item } from '../recipe/values.js';
import { type PotOnBlocks, potsOnBlocks } from './pot-rows.js';

/** One box of the piece that pots stand in, by the boards that make it. */
export type PlanterBox = {
  readonly name: string;
  /** Steps that set its blocks in place. */
  readonly steps: readonly string[];
  readonly parts: readonly Part[];
  readonly pots: readonly PotOnBlocks[];
};

/** Every place of an assembly that stacks blocks under the things of a list: its planters. */
export function planterBoxes(
  recipe: Recipe,
  answers: Answers,
  { model, stacks }: { readonly model: Model; readonly stacks: readonly StackWish[] },
): readonly PlanterBox[] {
  return recipe.assemblies.flatMap(({ id, stacks: rules }) => {
    const [rule] = rules;
    if (rule === undefined) return [];
    const uses = recipe.whole.places.filter(use => use.assembly === id);
    return uses.flatMap(use =>
      use.stands.flatMap(stand => {
        const parts = model.parts.filter(part => part.id.startsWith(`${use.id}/${stand.id}.`));
        const name = inWords(use.id);
        const steps = stepsThatSet(`${use.id}.${rule.id}`, recipe);
        const pots = potsIn(parts, rule, { answers, stacks });
        return parts.length === 0 ? [] : [{ name, steps, parts, pots }];
      }),
    );
  });
}

function potsIn(
  parts: readonly Part[],
  rule: StackRule,
  { answers, stacks }: { readonly answers: Answers; readonly stacks: readonly StackWish[] },
): readonly PotOnBlocks[] {
  const blocks = parts.filter(({ path }) => path.endsWith(`.${rule.id}`));
  const wish = stacks.find(it => it.rule === rule.id && blocksOf(it) === blocks.length);
  return wish === undefined ? [] : potsOnBlocks(itemsOf(answers, rule), wish, blocks);
}

function blocksOf({ things }: StackWish): number {
  return things.reduce((sum, thing) => sum + thing.blocks, 0);
}

function itemsOf(answers: Answers, { each }: StackRule): readonly Item[] {
  const list = answers[each];
  return list?.kind === 'items' ? list.value : [];
}

function stepsThatSet(path: string, { steps }: Recipe): readonly string[] {
  return steps.filter(({ sets }) => sets.some(it => it.path === path)).map(({ id }) => id);
}

/** `planter_box` is "Planter box". */
function inWords(id: string): string {
  return capital(id.replaceAll('_', ' '));
}
