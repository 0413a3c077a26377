import { formatLength } from '../../../measure/format-length.js';
import { isOfRule, type MeasureRow } from '../../../plan/measures.js';
import type { Plan, Step } from '../../../plan/plan.js';
import { finer } from '../../../plan/readings.js';
import { squareSize } from '../../../plan/square-words.js';
import type { SquareRow } from '../../../plan/squares.js';
import type { CutStep } from '../../../plan/work-so-far.js';
import type { Phase } from '../../../recipe/recipe.js';
import { isDone } from '../../../workbook/next-step.js';
import type { Build } from '../../screen.js';
import { stepAtHand } from '../step/shown-step.js';
import { toMeasure } from '../step/to-measure.js';
import type { Bench } from './state.js';

/** What can be measured, and entered. */
export type Choice =
  | { readonly kind: 'first'; readonly cutting: CutStep }
  | { readonly kind: 'length'; readonly row: MeasureRow }
  | { readonly kind: 'diagonals'; readonly frame: SquareRow };

const BEFORE_FRAMES: readonly Phase[] = ['plan', 'buy', 'cut'];

/**
 * What belongs to the step at hand first, then the boards, then frames; once the boards are sawn the frames come before
 * them. A frame is there to be measured from the step on that closes it.
 */
export function choicesOf({ build, at }: Bench): readonly Choice[] {
  const { plan } = build;
  const step = stepAtHand(build, at);
  const { cutting, sizes: own, frames } = toMeasure(step, plan);
  const first: readonly Choice[] = cutting === undefined ? [] : [{ kind: 'first', cutting }];
  const sizes = plan.measures.filter(({ kind }) => kind === 'size');
  const boards = plan.measures.filter(({ kind }) => kind === 'board');
  const others = sizes.filter(row => !own.includes(row) && isThere(row, step, build));
  const isWood = step !== undefined && BEFORE_FRAMES.includes(step.phase);
  const under = boards.filter(({ id }) => id.startsWith(`${cutting?.section ?? ''}.`));
  return [
    ...first,
    ...own.map(asLength),
    ...frames.map((frame): Choice => ({ kind: 'diagonals', frame })),
    ...under.map(asLength),
    ...(isWood ? [] : others.map(asLength)),
    ...boards.filter(row => !under.includes(row)).map(asLength),
    ...(isWood ? others.map(asLength) : []),
  ];
}

/** Is anything of the piece put together yet that has this size, or was it measured all the same? */
function isThere(row: MeasureRow, here: Step | undefined, { plan, progress }: Build): boolean {
  if (here === undefined || row.measured !== undefined) return true;
  const at = plan.steps.indexOf(here);
  return plan.steps.some(
    (step, place) =>
      row.steps.some(rule => isOfRule(step.id, rule)) && (place <= at || isDone(step, progress)),
  );
}

/** Are there sizes that nothing has yet? */
export function areSizesToCome(bench: Bench): boolean {
  const told = choicesOf(bench).filter(({ kind }) => kind === 'length').length;
  return told < bench.build.plan.measures.length;
}

function asLength(row: MeasureRow): Choice {
  return { kind: 'length', row };
}

/** A choice as a line of the list: what, and what it is by the plan or as it was measured. */
export function choiceWords(choice: Choice, { plan }: Build): string {
  switch (choice.kind) {
    case 'first':
      return `First piece at this stop: ${formatLength(choice.cutting.length, plan.display)}`;
    case 'diagonals':
      return `Diagonals of the frame, ${squareSize(choice.frame, plan.display)}`;
    case 'length':
      return `${choice.row.say}: ${lengthWords(choice.row, plan)}`;
  }
}

function lengthWords({ planned, measured }: MeasureRow, { display }: Plan): string {
  const by = formatLength(planned.value, display);
  if (measured === undefined) return by;
  return `measured ${formatLength(measured.value, finer(display))}, planned ${by}`;
}
