import type { Display } from '../measure/quantities.js';
import { type SetOut, setOut } from '../model/setout.js';
import type { Assembly, NotchRule, Recipe } from '../recipe/recipe.js';
import type { Answers } from '../recipe/values.js';
import { type AtBench, keptFrom } from './as-cut.js';
import { type Batch, batches, cutList, type Kept } from './cut-list.js';
import { type Untimed, withTurns } from './cut-stops.js';
import type { KeptBoards } from './kept-boards.js';
import { type MeasureRow, measureRows } from './measures.js';
import { notchNames, notchRows } from './notch-rows.js';
import { keptTroubles } from './on-kept-boards.js';
import type { CutRow, NotchRow, Purchase } from './plan.js';
import { purchases } from './purchases.js';
import { refit } from './refit.js';
import type { Setting } from './setting.js';

/** What is sawn, from which boards, and what of it can be measured. */
export type Sawing = {
  readonly cutList: readonly CutRow[];
  readonly notches: readonly NotchRow[];
  readonly purchases: readonly Purchase[];
  readonly measures: readonly MeasureRow[];
  /** Boards that are not those that the build began with. */
  readonly troubles: readonly string[];
};

type Standing = Extract<SetOut, { readonly ok: true }>;

type Given = {
  readonly out: Standing;
  readonly setting: Setting;
  /** None as long as nothing was measured. */
  readonly bench: AtBench | undefined;
};

/** The cut list, its notches and its boards; pieces that are cut and boards that are there stay. */
export function sawing(recipe: Recipe, answers: Answers, { out, setting, bench }: Given): Sawing {
  const kept = bench?.boards;
  const before = isMeasured(bench)
    ? beforeMeasuring(recipe, answers, { setting, kept })
    : undefined;
  const asCut = before && bench && keptFrom(before.alike, out.model, bench, setting.display);
  const { rows, notches } = rowsOf(recipe, { out, kept: asCut, setting });
  const bought = before !== undefined && bench?.isBought === true ? before.bought() : undefined;
  const sawn = new Set(bench?.cut.flatMap(({ pieces }) => pieces) ?? []);
  const now = purchases(rows, setting, {
    bought: own => bought && refit(bought, own, sawn, setting),
    kept: before === undefined ? kept : [],
  });
  return {
    cutList: rows,
    notches,
    purchases: now,
    troubles: keptTroubles(bought?.purchases ?? now, kept),
    measures: measureRows({
      rules: recipe.steps,
      rows: before?.rows ?? rows,
      measured: bench?.measured ?? new Map(),
      planned: (before?.out ?? out).sizeAt,
    }),
  };
}

/** Something was measured, or pieces were cut when it was. */
function isMeasured(bench: AtBench | undefined): boolean {
  return bench !== undefined && (bench.measured.size > 0 || bench.cut.length > 0);
}

type Bought = Pick<Sawing, 'purchases' | 'cutList'>;

type Before = {
  readonly alike: readonly Batch[];
  readonly rows: readonly CutRow[];
  readonly out: Standing;
  /** The boards that were bought by that plan. */
  readonly bought: () => Bought;
};

type Begun = { readonly setting: Setting; readonly kept: KeptBoards | undefined };

type Known = {
  readonly display: Display;
  readonly kept: KeptBoards | undefined;
  readonly before: Before | undefined;
};

const known = new WeakMap<Recipe, WeakMap<Answers, Known>>();

/**
 * The piece by recipe and answers alone: its marks stay, and its boards are the ones that lie there. Worked out once
 * for a recipe and its answers: every length that is measured later asks for it.
 */
function beforeMeasuring(recipe: Recipe, answers: Answers, begun: Begun): Before | undefined {
  const { kept } = begun;
  const { display } = begun.setting;
  const ofRecipe = known.get(recipe) ?? new WeakMap<Answers, Known>();
  known.set(recipe, ofRecipe);
  const found = ofRecipe.get(answers);
  if (found?.display === display && found.kept === kept) return found.before;
  const before = plannedBefore(recipe, answers, begun);
  ofRecipe.set(answers, { display, kept, before });
  return before;
}

function plannedBefore(
  recipe: Recipe,
  answers: Answers,
  { setting, kept }: Begun,
): Before | undefined {
  const { display, dryness } = setting;
  const out = setOut(recipe, answers, { wet: dryness.wetSections, display });
  if (!out.ok) return undefined;
  const { alike, rows } = rowsOf(recipe, { out, kept: undefined, setting });
  let bought: Bought | undefined;
  return {
    alike,
    rows,
    out,
    bought: () => {
      bought ??= { purchases: purchases(rows, setting, { kept }), cutList: rows };
      return bought;
    },
  };
}

type RowsOf = Pick<Given, 'out' | 'setting'> & { readonly kept: Kept | undefined };

function rowsOf(recipe: Recipe, { out, kept, setting }: RowsOf) {
  const { display } = setting;
  const alike = batches(out.model, kept);
  const notches = notchRows(alike, notchNames(notchRules(recipe)), display);
  const rows = withNotches(cutList(alike, display), notches);
  const { model, scope } = out;
  const turned = withTurns({ cutList: rows, rules: recipe.steps, model, scope });
  return { alike, notches, rows: turned };
}

function notchRules(recipe: Recipe): readonly NotchRule[] {
  return [recipe.whole, ...recipe.assemblies].flatMap((assembly: Assembly) => assembly.notches);
}

function withNotches(rows: readonly Untimed[], notches: readonly NotchRow[]): readonly Untimed[] {
  return rows.map(row => ({
    ...row,
    notches: notches.filter(notch => notch.mark === row.mark).map(notch => notch.id),
  }));
}
