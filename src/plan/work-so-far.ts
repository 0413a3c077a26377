import type { Mm } from '../measure/quantities.js';
import { sameLength } from '../measure/tolerance.js';
import type { CutRow, Plan, Step } from './plan.js';

/** How far the cutting is: pieces counted by step id, and the ids of the steps that are ticked off. */
export type CutSoFar = {
  readonly tallies: ReadonlyMap<string, number>;
  readonly done: ReadonlySet<string>;
};

/** A piece that was cut and is lost for its place; the counts are those without it. */
export type SpoiledPiece = CutSoFar & {
  readonly kind: 'spoiled';
  readonly step: string;
  readonly section: string;
  readonly mark: string;
  /** Length of sound wood left of it; 0 for none. */
  readonly left: Mm;
};

/** Boards that came to the rack after the plan was made, and how far the cutting was then. */
export type AddedBoards = CutSoFar & {
  readonly kind: 'added';
  readonly section: string;
  readonly length: Mm;
  readonly count: number;
};

/** A board of the rack that turned out bad, and how far the cutting was then. */
export type SpoiledBoard = CutSoFar & {
  readonly kind: 'board-spoiled';
  readonly section: string;
  /** Its place on the rack of the section then, from 0, and what it was called there. */
  readonly place: number;
  readonly board: string;
  /** Where it is bad, from the end that is cut first. */
  readonly from: Mm;
  readonly to: Mm;
};

export type RackChange = SpoiledPiece | AddedBoards | SpoiledBoard;

/** What the bench has done to the boards of the plan. */
export type WorkSoFar = CutSoFar & { readonly rackChanges: readonly RackChange[] };

/** A step that cuts pieces at one setting of the stop, and the row of each piece in the order of cutting. */
export type CutStep = {
  readonly step: Step;
  readonly section: string;
  readonly length: Mm;
  readonly rows: readonly CutRow[];
};

/** The steps that cut boards: those of the cutting phase that count the pieces they bring. */
export function cutStepsOf({
  steps,
  cutList,
}: Pick<Plan, 'steps' | 'cutList'>): readonly CutStep[] {
  const rowOf = new Map(cutList.flatMap(row => row.pieces.map(id => [id, row] as const)));
  return steps.flatMap(step => {
    if (step.phase !== 'cut' || step.tally?.count !== step.bright.length) return [];
    const rows = step.bright.flatMap(id => rowOf.get(id) ?? []);
    const [first] = rows;
    if (first === undefined || rows.length !== step.bright.length) return [];
    return [{ step, section: first.section, length: first.length.value, rows }];
  });
}

/** Good pieces of a step: all of them once it is ticked off, never more than there are. */
export function goodPieces({ step, rows }: CutStep, { tallies, done }: CutSoFar): number {
  return done.has(step.id) ? rows.length : Math.min(rows.length, tallies.get(step.id) ?? 0);
}

/**
 * Marks of a step in the order in which its pieces are cut: as the step lists them, with a spoiled one
 * at the end, where its new one is cut. Pieces at one stop can take each other's mark before they are
 * notched, so only the names hang on it.
 */
export function marksInOrder(
  { step, rows }: CutStep,
  { rackChanges }: Pick<WorkSoFar, 'rackChanges'>,
): readonly string[] {
  const marks = rows.map(({ mark }) => mark);
  for (const change of rackChanges) {
    if (change.kind !== 'spoiled' || change.step !== step.id) continue;
    const at = marks.indexOf(change.mark);
    if (at >= 0) marks.push(...marks.splice(at, 1));
  }
  return marks;
}

/** Pieces of one mark that are still to be cut. */
export type Needed = {
  readonly mark: string;
  readonly name: string;
  readonly length: Mm;
  readonly count: number;
};

/** What is still to be cut of a section, longest first as in the cut list. */
export function stillNeeded(plan: Plan, section: string, work: WorkSoFar): readonly Needed[] {
  const cut = new Map<string, number>();
  for (const it of cutStepsOf(plan)) {
    for (const mark of marksInOrder(it, work).slice(0, goodPieces(it, work))) {
      cut.set(mark, (cut.get(mark) ?? 0) + 1);
    }
  }
  return plan.cutList.flatMap(row => {
    const count = row.count - (cut.get(row.mark) ?? 0);
    if (row.section !== section || count <= 0) return [];
    return [{ mark: row.mark, name: row.name, length: row.length.value, count }];
  });
}

/** Good pieces of that length that were cut from boards of the section. */
export function goodOfLength(steps: readonly CutStep[], cut: CutSoFar, it: Slot): number {
  return steps
    .filter(({ section, length }) => section === it.section && sameLength(length, it.length))
    .reduce((sum, step) => sum + goodPieces(step, cut), 0);
}

type Slot = { readonly section: string; readonly length: Mm };
