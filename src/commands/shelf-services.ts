import { join } from 'node:path';
import { carryName, carryOut } from '../files/carry.js';
import { saveProblemInShort } from '../files/save-problem.js';
import type { Opened, Shelf } from '../files/shelf.js';
import type { Display } from '../measure/quantities.js';
import { keptBoards } from '../plan/kept-boards.js';
import type { Recipe } from '../recipe/recipe.js';
import type { Alike, Carried, Loaded, NewBuild, Services } from '../ui/services.js';
import { progressOf } from '../workbook/progress.js';
import { startWorkbook } from '../workbook/start-workbook.js';
import type { Workbook } from '../workbook/workbook.js';
import { workbookId } from '../workbook/workbook-id.js';
import { aheadOf } from './ahead.js';
import { answersAlike } from './answers-alike.js';
import type { HelperServices } from './helper-services.js';
import { PLANNER, withRecipe } from './kept-build.js';

/** A recipe with the text that it was read from: a workbook keeps the text. */
export type KeptRecipe = { readonly recipe: Recipe; readonly text: string };

export type Means = {
  readonly shelf: Shelf;
  readonly recipes: () => readonly KeptRecipe[];
  readonly display: Display;
  readonly now: () => number;
  /** Where a build is written to that is to be taken to another machine. */
  readonly workingFolder: string;
  readonly helper: HelperServices;
};

/** Makes the build that shows how this works, as it stands at this moment. */
export type ExampleMaker = (kept: KeptRecipe, nowMs: number) => Workbook;

export type ShelfServices = Pick<
  Services,
  | 'list'
  | 'plan'
  | 'onDay'
  | 'load'
  | 'look'
  | 'takeOver'
  | 'close'
  | 'alike'
  | 'relabel'
  | 'carry'
  | 'create'
  | 'save'
  | 'example'
>;

/** What the screens ask of the disk, done on the shelf. */
export function shelfServices(means: Means, makeExample: ExampleMaker): ShelfServices {
  const { shelf, now } = means;
  return {
    list: shelf.list,
    ...PLANNER,
    load: id => loaded(shelf.load(id)),
    look: id => loaded(shelf.look(id)),
    takeOver: id => loaded(shelf.takeOver(id)),
    close: shelf.close,
    alike: id => alike(means, id),
    relabel: (id, label) => {
      const outcome = shelf.relabel(id, label);
      return outcome.ok ? { ok: true } : { ok: false, problem: outcome.words };
    },
    carry: id => carried(shelf.look(id), means),
    create: build => created(means, build),
    save: ({ workbook, plan, progress }) => {
      const outcome = shelf.save(workbook, aheadOf(plan.steps, progress));
      if (!outcome.ok) return { ok: false, problem: saveProblemInShort(outcome.problem) };
      means.helper.keep({ workbook, plan, progress });
      return { ok: true };
    },
    example: () => {
      const there = shelf.list().find(({ example }) => example);
      if (there !== undefined) return loaded(shelf.load(there.id));
      const [first] = means.recipes();
      if (first === undefined) return { ok: false, problem: 'There is no recipe to show.' };
      return putOnShelf(shelf, first, makeExample(first, now()));
    },
  };
}

function loaded(opened: ReturnType<Shelf['load']>): Loaded {
  if (opened.ok) return withRecipe(opened.workbook, opened.notice);
  return { ok: false, problem: opened.words, held: opened.why === 'held' };
}

function alike({ shelf, recipes }: Means, id: string): Alike {
  const looked = shelf.look(id);
  if (!looked.ok) return { ok: false, problem: looked.words };
  const { workbook } = looked;
  const kept = recipes().find(({ recipe }) => recipe.id === workbook.recipe);
  if (kept === undefined) return { ok: false, problem: noRecipe(workbook.recipe) };
  const answers = answersAlike(workbook, kept.recipe);
  return { ok: true, interview: { recipe: kept.recipe, answers, from: workbook.name } };
}

function carried(looked: Opened, { workingFolder, now }: Means): Carried {
  if (!looked.ok) return { ok: false, problem: looked.words };
  const { workbook } = looked;
  const kept = carryOut(workbook, join(workingFolder, carryName(workbook)), now());
  return kept.ok ? { ok: true, file: kept.file } : { ok: false, problem: kept.words };
}

function noRecipe(id: string): string {
  return `There is no recipe "${id}".`;
}

function created(
  { shelf, recipes, display, now, helper }: Means,
  { recipe, name, answers }: NewBuild,
): Loaded {
  const kept = recipes().find(one => one.recipe.id === recipe);
  if (kept === undefined) return { ok: false, problem: noRecipe(recipe) };
  const taken = new Set(shelf.list().map(({ id }) => id));
  const workbook = startWorkbook({
    id: workbookId(name, taken),
    name,
    recipe,
    recipeText: kept.text,
    display,
    answers,
    example: false,
    nowMs: now(),
  });
  const events = [...workbook.events, ...helper.came()];
  return putOnShelf(shelf, kept, { ...workbook, events });
}

/** From now on its boards have the numbers of this plan. */
function putOnShelf(shelf: Shelf, { recipe }: KeptRecipe, begun: Workbook): Loaded {
  const made = PLANNER.plan(recipe, begun.answers, begun.display);
  const steps = made.ok ? made.plan.steps : [];
  const workbook = made.ok ? { ...begun, boards: keptBoards(made.plan.purchases) } : begun;
  const outcome = shelf.create(workbook, aheadOf(steps, progressOf(workbook.events)));
  return outcome.ok ? { ok: true, workbook, recipe } : { ok: false, problem: outcome.words };
}
