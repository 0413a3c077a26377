import type { Mm } from '../../../measure/quantities.js';
import type { CutPieces } from '../../../plan/as-cut.js';
import { makePlan } from '../../../plan/make-plan.js';
import { onDay } from '../../../plan/on-day.js';
import { changesNothing, planChanges } from '../../../plan/plan-changes.js';
import { refusalWords } from '../../../plan/refusal-words.js';
import { atBench } from '../../../workbook/at-bench.js';
import { benchOf } from '../../bench-of.js';
import { onToldDay } from '../../build.js';
import type { Build } from '../../screen.js';
import type { Answer } from './state.js';

/** What comes of lengths: whether the piece can stand with them, and what they change. */
type Outlook = { readonly stands: boolean; readonly blocks: Answer['blocks'] };

/** The plan with these lengths on the day that was told, beside the one that counts now. */
export function outlook(
  build: Build,
  measured: ReadonlyMap<string, Mm>,
  cut: readonly CutPieces[],
): Outlook {
  const { recipe, workbook, plan, progress } = build;
  const bench = atBench(workbook, { found: { ...progress.found, measured, cutBefore: cut } });
  const made = makePlan(recipe, workbook.answers, workbook.display, bench);
  if (!made.ok) {
    const title = 'With this the piece cannot stand as it is drawn';
    return { stands: false, blocks: [{ title, lines: refusalWords(made.problems, plan) }] };
  }
  const after = onToldDay(made.plan, progress, { onDay });
  const changes = planChanges({ ...benchOf(build), before: plan, after, cut });
  if (changesNothing(changes)) {
    return { stands: true, blocks: [{ title: 'Nothing else changes by it.', lines: [] }] };
  }
  const blocks = [
    { title: 'What changes, of what is not made yet', lines: changes.toCome },
    { title: 'What is made stays as it is', lines: changes.stays },
    { title: 'Look at', lines: changes.heed },
  ];
  return { stands: true, blocks: blocks.filter(({ lines }) => lines.length > 0) };
}
