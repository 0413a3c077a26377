import { fillWeight } from '../materials/loads.js';
import { coneSpace } from '../materials/pot.js';
import { psf } from '../measure/floor-load.js';
import { askedQuestions } from '../recipe/questions.js';
import type { HoldRule, Recipe, Selector, StackRule } from '../recipe/recipe.js';
import type { Answers } from '../recipe/values.js';
import type { FloorKind, HoldInputs, HoldRole, PotLoad } from './hold-row.js';
import type { Setting } from './setting.js';

/** What the sums of "will it hold?" need besides the boards in space. */
export function holdInputs(recipe: Recipe, answers: Answers, setting: Setting): HoldInputs {
  return {
    display: setting.display,
    species: setting.species,
    wet: true,
    roles: recipe.holds.map(roleOf),
    pots: potLoad(recipe, answers),
    floor: floorOf(recipe, answers),
  };
}

function roleOf(rule: HoldRule): HoldRole {
  const { id, say, role } = rule;
  const parts = rule.parts.map(pathOf);
  const on = rule.on.map(pathOf);
  switch (role) {
    case 'seat':
    case 'slats':
    case 'shelf':
      return { kind: role, id, say, beams: parts, on };
    case 'screws': {
      const carries = rule.carries === 'push' ? 'push' : 'pots';
      return { kind: role, id, say, joint: rule.joint ?? '', carries };
    }
    case 'stand': {
      const carries = rule.carries === 'pots' ? 'pots' : 'people';
      return { kind: role, id, say, parts, carries, seat: on };
    }
  }
}

function pathOf({ path }: Selector): string {
  return path;
}

/** Asked for its limit, a floor is off the ground. */
function floorOf(recipe: Recipe, answers: Answers): FloorKind {
  const asked = askedQuestions(recipe, answers).some(question => question.id === 'floor_limit');
  const limit = answers.floor_limit;
  if (!asked) return { kind: 'ground' };
  return limit?.kind === 'count' ? { kind: 'raised', limit: psf(limit.value) } : { kind: 'raised' };
}

/** Pots of all boxes together, filled to the brim with potting mix: a little more than they hold. */
function potLoad(recipe: Recipe, answers: Answers): PotLoad {
  const space = stacksOf(recipe).reduce((sum, { stack, stands }) => {
    const list = answers[stack.each];
    if (list?.kind !== 'items') return sum;
    const each = list.value.reduce(
      (all, { height = 0, diameter = 0 }) => all + coneSpace(diameter, diameter, height),
      0,
    );
    return sum + each * stands;
  }, 0);
  const { planned, heavy } = fillWeight(space, 'potting-mix');
  return { planted: planned, soaked: heavy };
}

function stacksOf({ whole, assemblies }: Recipe): readonly { stack: StackRule; stands: number }[] {
  const used = (id: string) =>
    whole.places
      .filter(use => use.assembly === id)
      .reduce((sum, use) => sum + use.stands.length, 0);
  return [
    ...whole.stacks.map(stack => ({ stack, stands: 1 })),
    ...assemblies.flatMap(({ id, stacks }) => stacks.map(stack => ({ stack, stands: used(id) }))),
  ];
}
