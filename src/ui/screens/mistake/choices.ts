import { formatLength } from '../../../measure/format-length.js';
import type { CutRow, Step } from '../../../plan/plan.js';
import { type CutStep, cutStepsOf, goodPieces, marksInOrder } from '../../../plan/work-so-far.js';
import type { Build } from '../../screen.js';
import { stepAtHand } from '../step/shown-step.js';
import type { Bench } from './state.js';

/** A piece that may be the one: of which step and mark, and whether it was counted already. */
export type PieceChoice = {
  readonly kind: 'piece';
  readonly cutting: CutStep;
  readonly row: CutRow;
  readonly isCounted: boolean;
};

/** What one may tell about. */
export type Choice =
  | PieceChoice
  | { readonly kind: 'bad-board' }
  | { readonly kind: 'rule-pages' }
  | { readonly kind: 'board' };

/** The pieces, and behind them what is not about a cut piece. */
export function choicesOf(bench: Bench): readonly Choice[] {
  const { atHand, others } = pieceGroups(bench);
  const anyBoards = bench.build.plan.purchases.length > 0;
  const bad: readonly Choice[] = anyBoards ? [{ kind: 'bad-board' }] : [];
  const came: readonly Choice[] = anyBoards ? [{ kind: 'board' }] : [];
  return [...atHand, ...others, ...bad, { kind: 'rule-pages' }, ...came];
}

type PieceGroups = Readonly<Record<'atHand' | 'others', readonly PieceChoice[]>>;

/** The piece under the saw first, then what the step at hand works on; all else that was cut by mark as in the cut list. */
export function pieceGroups({ build, at }: Bench): PieceGroups {
  const here = stepAtHand(build, at);
  const steps = cutStepsOf(build.plan);
  const current = steps.find(({ step }) => step.id === here?.id);
  const others = steps.filter(it => it !== current);
  const own = current === undefined ? [] : countedOf(current, build);
  const cut = [
    ...own,
    ...byMark(
      others.flatMap(it => countedOf(it, build)),
      build,
    ),
  ];
  const first = cut.filter(choice => isAt(choice, current, here));
  return {
    atHand: [...(current === undefined ? [] : underTheSaw(current, build)), ...first],
    others: cut.filter(choice => !first.includes(choice)),
  };
}

function byMark(choices: readonly PieceChoice[], { plan }: Build): readonly PieceChoice[] {
  const place = ({ row }: PieceChoice) => plan.cutList.findIndex(({ mark }) => mark === row.mark);
  return choices.toSorted((a, b) => place(a) - place(b));
}

function isAt(
  { cutting, row }: PieceChoice,
  current: CutStep | undefined,
  here: Step | undefined,
): boolean {
  return cutting === current || (here?.bright.some(id => row.pieces.includes(id)) ?? false);
}

function underTheSaw(cutting: CutStep, build: Build): readonly PieceChoice[] {
  const open = marksInOrder(cutting, build.progress).slice(goodPieces(cutting, build.progress));
  return rowsOf(open, cutting).map(row => ({ kind: 'piece', cutting, row, isCounted: false }));
}

function countedOf(cutting: CutStep, build: Build): readonly PieceChoice[] {
  const good = marksInOrder(cutting, build.progress).slice(0, goodPieces(cutting, build.progress));
  return rowsOf(good, cutting).map(row => ({ kind: 'piece', cutting, row, isCounted: true }));
}

function rowsOf(marks: readonly string[], { rows }: CutStep): readonly CutRow[] {
  return [...new Set(marks)].flatMap(mark => rows.find(row => row.mark === mark) ?? []);
}

/** A choice as a line of the list. */
export function choiceWords(choice: Choice, { plan, progress }: Build): string {
  if (choice.kind === 'rule-pages') return 'No piece is lost: a screw, a notch, glue or sealer';
  if (choice.kind === 'bad-board') return 'A board is bad: split, knots, twisted, not cut yet';
  if (choice.kind === 'board') return 'A board came to the rack: bought or found';
  const { cutting, row, isCounted } = choice;
  const length = formatLength(row.length.value, plan.display);
  const good = marksInOrder(cutting, progress).slice(0, goodPieces(cutting, progress));
  const same = good.filter(mark => mark === row.mark).length;
  const counted = same === 1 ? 'the one counted' : `one of the ${same} counted`;
  const which = isCounted ? counted : 'the one just cut, not counted yet';
  return `${row.mark}  ${row.name}, ${length}: ${which}`;
}
