import type { Display, Mm } from '../measure/quantities.js';
import { snap } from '../measure/round.js';
import { sameLength } from '../measure/tolerance.js';
import type { Measured } from '../model/measured.js';
import type { Model } from '../model/part.js';
import type { Batch, Kept } from './cut-list.js';
import type { KeptBoards } from './kept-boards.js';
import type { Plan } from './plan.js';
import {
  type CutSoFar,
  cutStepsOf,
  goodPieces,
  marksInOrder,
  type RackChange,
} from './work-so-far.js';

/** Pieces that are sawn and marked: nothing that is measured later makes them longer or shorter. */
export type CutPieces = {
  /** The mark that is written on them. */
  readonly mark: string;
  readonly length: Mm;
  /** Ids of the parts that they are. */
  readonly pieces: readonly string[];
};

/** What the bench knows better than the plan. */
export type AtBench = {
  readonly measured: Measured;
  readonly cut: readonly CutPieces[];
  /** The boards of the plan are there: pieces stay on theirs. Otherwise all is bought anew. */
  readonly isBought: boolean;
  /** The boards that the build began with; builds begun by older programs may have none. */
  readonly boards?: KeptBoards | undefined;
};

export type Cutting = CutSoFar & { readonly rackChanges: readonly RackChange[] };

/** What is cut of a plan, as it was marked: what a later plan has to leave as it is. */
export function cutPieces(plan: Plan, work: Cutting): readonly CutPieces[] {
  return cutStepsOf(plan).flatMap(cutting => {
    const good = marksInOrder(cutting, work).slice(0, goodPieces(cutting, work));
    return [...new Set(good)].flatMap((mark): readonly CutPieces[] => {
      const own = cutting.step.bright.filter((_, at) => cutting.rows[at]?.mark === mark);
      const count = good.filter(it => it === mark).length;
      return [{ mark, length: cutting.length, pieces: own.slice(0, count) }];
    });
  });
}

/**
 * Which pieces of a model keep what is written on them: those whose length or mark would be another one
 * now stay as they are cut; all others keep the mark of the plan before anything was measured.
 */
export function keptFrom(
  before: readonly Batch[],
  model: Model,
  { cut }: AtBench,
  { grid }: Display,
): Kept {
  const marks = new Map(before.flatMap(({ mark, parts }) => parts.map(({ id }) => [id, mark])));
  const written = new Map(
    cut.flatMap(({ mark, length, pieces }) => pieces.map(id => [id, { mark, length }] as const)),
  );
  const asCut = new Map(
    model.parts.flatMap(({ id, length }) => {
      const own = written.get(id);
      if (own === undefined) return [];
      const isAsPlanned = sameLength(snap(length, grid), own.length) && marks.get(id) === own.mark;
      return isAsPlanned ? [] : [[id, own] as const];
    }),
  );
  return { marks, asCut };
}
