import { makeExample } from '../../src/commands/make-example.js';
import { SIXTEENTHS } from '../../src/measure/displays.js';
import { MEASURED } from '../../src/measure/figure.js';
import { figure } from '../../src/measure/figure-text.js';
import { inches } from '../../src/measure/inch.js';
import { makePlan } from '../../src/plan/make-plan.js';
import type { Plan } from '../../src/plan/plan.js';
import type { PaperAsk } from '../../src/print/print-paper.js';
import { progressOf } from '../../src/workbook/progress.js';
import { record } from '../../src/workbook/start-workbook.js';
import { PRINTED_MS } from './paper.js';
import { project, projectText } from './projects.js';

const BENCH = project('planter-bench');
const KEPT = { recipe: BENCH, text: projectText('planter-bench') };
/** What the builder wrote down at the dry fit. */
export const NOTE = 'The left panel is the one with the knot.';
const STARTED = makeExample(KEPT, SIXTEENTHS, PRINTED_MS);
const WORKBOOK = record(STARTED, {
  kind: 'note-written',
  atMs: PRINTED_MS,
  step: 'dry-fit',
  text: NOTE,
});
/** The example of a build under way. */
export const BUILD = { workbook: WORKBOOK, progress: progressOf(WORKBOOK.events) };

export function planned(): Plan {
  const made = makePlan(BENCH, WORKBOOK.answers, SIXTEENTHS);
  if (!made.ok) throw new Error('the example can be planned');
  return made.plan;
}

/** A board that came out thinner than its label, as a tape showed it. */
export function withMeasured(plan: Plan): Plan {
  const measures = plan.measures.map(row =>
    row.id === '2x4.width'
      ? { ...row, measured: figure(inches(3 + 7 / 16), 'mm', 'with the tape', MEASURED) }
      : row,
  );
  return { ...plan, measures };
}

/** That build with the thinner board, to be printed. */
export function buildInProgress(): Pick<PaperAsk, 'plan' | 'build'> {
  return { plan: withMeasured(planned()), build: BUILD };
}
