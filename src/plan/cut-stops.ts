import { sameLength } from '../measure/tolerance.js';
import type { Model } from '../model/part.js';
import type { Scope } from '../recipe/evaluate.js';
import type { StepRule } from '../recipe/recipe.js';
import { inSawOrder } from './cutting-order.js';
import type { BoughtBoard, CutRow } from './plan.js';
import { selectParts } from './select.js';
import { applies } from './step-values.js';

/** A row before it is known when it comes to the saw. */
export type Untimed = Omit<CutRow, 'turn'>;

/** What is cut, and by which steps. */
type ToSaw<R extends Untimed> = {
  readonly cutList: readonly R[];
  readonly rules: readonly StepRule[];
  readonly model: Model;
  readonly scope: Scope;
};

/** Pieces of one section and length that a step cuts at one setting of the stop. */
export type CutStop<R extends Untimed = CutRow> = {
  readonly rule: StepRule;
  readonly rows: readonly [Own<R>, ...Own<R>[]];
};

type Own<R extends Untimed> = { readonly row: R; readonly pieces: readonly string[] };

/** Every setting of the stop, in the order in which the steps of this recipe come to them. */
export function cutStops<R extends Untimed>({
  rules,
  model,
  cutList,
  scope,
}: ToSaw<R>): readonly CutStop<R>[] {
  return rules
    .filter(({ cuts, when }) => cuts.length > 0 && applies(when, scope))
    .flatMap(rule => {
      const wanted = new Set(selectParts(model, rule.cuts).map(({ id }) => id));
      return stopsOf(cutList, wanted).map(rows => ({ rule, rows }));
    });
}

function stopsOf<R extends Untimed>(
  rows: readonly R[],
  wanted: ReadonlySet<string>,
): readonly CutStop<R>['rows'][] {
  const stops: [Own<R>, ...Own<R>[]][] = [];
  for (const row of rows) {
    const pieces = row.pieces.filter(id => wanted.has(id));
    if (pieces.length === 0) continue;
    const same = stops.find(([it]) => atOneStop(it.row, row));
    if (same) same.push({ row, pieces });
    else stops.push([{ row, pieces }]);
  }
  return inSawOrder(stops, ([first]) => first.row);
}

function atOneStop(a: Untimed, b: Untimed): boolean {
  return a.section === b.section && sameLength(a.length.value, b.length.value);
}

/** The rows of the cut list with their turn at the saw, each where its first piece comes; what no step cuts is last. */
export function withTurns(about: ToSaw<Untimed>): readonly CutRow[] {
  const cut = cutStops(about).flatMap(({ rows }) => rows.map(({ row }) => row));
  const turns = [...new Set([...cut, ...about.cutList].map(({ mark }) => mark))];
  return about.cutList.map(row => ({ ...row, turn: turns.indexOf(row.mark) + 1 }));
}

/**
 * Boards of a section that have come to the saw once these stops are through: their ends are squared. A mark is cut
 * from the lowest number first that gives it, and a piece that two stops name is cut once.
 */
export function boardsBegun(boards: readonly BoughtBoard[], stops: readonly CutStop[]): number {
  const pieces = new Map<string, Set<string>>();
  for (const { row, pieces: own } of stops.flatMap(({ rows }) => rows)) {
    pieces.set(row.mark, new Set([...(pieces.get(row.mark) ?? []), ...own]));
  }
  const left = new Map([...pieces].map(([mark, ids]) => [mark, ids.size]));
  return boards.filter(({ cuts }) => {
    const given = cuts.filter(({ mark }) => {
      const count = left.get(mark) ?? 0;
      if (count > 0) left.set(mark, count - 1);
      return count > 0;
    });
    return given.length > 0;
  }).length;
}
