import { formatMinutes } from '../../measure/duration.js';
import type { Plan } from '../../plan/plan.js';
import type { Block, Fact, Page } from '../../text/page.js';
import { count } from '../../text/plural.js';
import { dayWords, timeWords } from '../clock-words.js';
import { daysAtBench } from '../days-at-bench.js';
import { hoursWords } from '../hours-words.js';
import { doneCount } from '../next-step.js';
import type { Progress, Workbook } from '../workbook.js';
import { asBuilt, costWords, used } from './as-built-blocks.js';
import { measuredRows } from './measured-rows.js';
import { helperRows, leftOpen, mistakeRows, noteRows, waitRows } from './record-rows.js';

/** A build as it is opened: what is saved, and what follows from it. */
export type Recorded = {
  readonly workbook: Workbook;
  readonly plan: Plan;
  readonly progress: Progress;
};

/**
 * What was built and how it went, for the builder's own shelf: sizes, hours, cost, mistakes and how
 * they were mended, screws and sealer, notes. `zone` is the time zone of the days; the machine's own
 * where none is given.
 */
export function buildRecordPage(recorded: Recorded, zone?: string): Page {
  return {
    id: 'record',
    title: `Build record: ${recorded.workbook.name}`,
    blocks: [
      { kind: 'facts', facts: howItWent(recorded, zone) },
      { kind: 'heading', text: 'As built' },
      ...asBuilt(recorded.plan),
      ...listed('Measured at the bench', measuredRows(recorded, zone)),
      { kind: 'heading', text: 'Used' },
      { kind: 'facts', facts: used(recorded.plan) },
      ...days(recorded, zone),
      ...listed('Glue and sealer, as they were timed', waitRows(recorded, zone)),
      ...listed('Mistakes, and how they were mended', mistakeRows(recorded, zone)),
      ...listed('The helper', helperRows(recorded, zone)),
      ...listed('Done with something left open', leftOpen(recorded)),
      ...listed('Notes', noteRows(recorded, zone)),
      ...listed('Answers at the start', recorded.plan.answers.map(answerLine)),
    ],
  };
}

function answerLine({ say, text }: Plan['answers'][number]): string {
  return `${say} ${text}`;
}

function listed(heading: string, items: readonly string[]): readonly Block[] {
  if (items.length === 0) return [];
  return [
    { kind: 'heading', text: heading },
    { kind: 'list', items },
  ];
}

function howItWent({ workbook, plan, progress }: Recorded, zone?: string): readonly Fact[] {
  const { steps } = plan;
  const done = doneCount(steps, progress);
  return [
    { name: 'Piece', text: plan.title },
    { name: 'Begun', text: dayWords(workbook.createdAtMs, zone) },
    {
      name: done === steps.length ? 'Finished' : 'Last worked on',
      text: progress.lastAtMs === undefined ? 'not yet' : dayWords(progress.lastAtMs, zone),
    },
    { name: 'Steps', text: `${done} of ${count(steps.length, 'step')} done` },
    {
      name: 'Hours',
      text: hoursWords(plan, progress),
    },
    { name: 'Boards', text: costWords(plan) },
  ];
}

function days({ workbook }: Recorded, zone?: string): readonly Block[] {
  const rows = daysAtBench(workbook.events, zone).map(({ day, fromMs, toMs, workedMs }) => [
    day,
    `${timeWords(fromMs, zone)} to ${timeWords(toMs, zone)}`,
    formatMinutes(Math.round(workedMs / 60_000)),
  ]);
  if (rows.length === 0) return [];
  return [
    { kind: 'heading', text: 'Days at the bench' },
    {
      kind: 'table',
      table: {
        id: 'days',
        columns: [{ title: 'Day' }, { title: 'From, to' }, { title: 'At work', align: 'right' }],
        rows,
      },
    },
  ];
}
