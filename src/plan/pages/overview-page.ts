import { formatMinutes } from '../../measure/duration.js';
import { formatFigure } from '../../measure/figure-text.js';
import { formatLength } from '../../measure/format-length.js';
import { formatMoney } from '../../measure/money.js';
import type { Block, Fact, Page } from '../../text/page.js';
import { count } from '../../text/plural.js';
import { boughtCount } from '../buy-lines.js';
import type { MeasureRow } from '../measures.js';
import type { FitCheck, Plan } from '../plan.js';
import { finer } from '../readings.js';
import { holdAdvice, holdSums, holdTable, notCounted } from './hold-blocks.js';
import { planterBlocks } from './planter-blocks.js';

/** What it will be: sizes, weight, how much wood and time, and whether it suits the place. */
export function overviewPage(plan: Plan): Page {
  return {
    id: 'overview',
    title: plan.title,
    blocks: [
      { kind: 'words', text: plan.about },
      { kind: 'facts', facts: overviewFacts(plan) },
      ...warningBlocks(plan),
    ],
  };
}

function overviewFacts(plan: Plan): readonly Fact[] {
  return [...wholeFacts(plan), ...measuredFacts(plan)];
}

/** Where the real wood was not as planned. */
export function measuredFacts(plan: Plan): readonly Fact[] {
  return plan.measures.flatMap(row => measuredFact(row, plan));
}

/** What the piece is, in figures. */
export function wholeFacts(plan: Plan): readonly Fact[] {
  const { overall, weight, display, time } = plan;
  const boards = plan.purchases.reduce((sum, it) => sum + boughtCount(it), 0);
  const pieces = plan.cutList.reduce((sum, row) => sum + row.count, 0);
  const size = [overall.width, overall.depth, overall.height]
    .map(it => formatFigure(it, display))
    .join(' x ');
  const priced = plan.purchases.some(it => it.priced);
  return [
    { name: 'Overall', text: `${size} (long, deep, high)`, because: overall.width.because },
    { name: 'Weight, empty', text: formatFigure(weight, display), because: weight.because },
    {
      name: 'Wood',
      text: `${count(pieces, 'piece')} from ${count(boards, 'board')} to buy${priced ? `, ${formatMoney(plan.cost.value)}` : ''}`,
    },
    {
      name: 'Hands-on time',
      text: `about ${formatFigure(time.hands, display)}, ${count(time.sessions.length, 'session')}`,
      because: time.hands.because,
    },
    { name: 'Longest wait', text: longestWait(plan) },
  ];
}

/** What the tape showed, where the plan counts on it. */
function measuredFact({ say, measured, planned }: MeasureRow, { display }: Plan): readonly Fact[] {
  if (measured === undefined) return [];
  const length = formatLength(measured.value, finer(display));
  const text = `${say}: ${length}, planned ${formatLength(planned.value, display)}`;
  return [{ name: 'Measured', text, because: measured.because }];
}

function longestWait({ time }: Plan): string {
  const [longest] = [...time.waits].sort((a, b) => b.minutes - a.minutes);
  return longest ? `${formatMinutes(longest.minutes)}: ${longest.name}` : 'none';
}

function warningBlocks(plan: Plan): readonly Block[] {
  if (plan.warnings.length === 0) return [];
  return [
    { kind: 'heading', text: 'Look at this first' },
    { kind: 'list', items: plan.warnings },
  ];
}

/** Does it suit the place? */
export function fitPage(plan: Plan): Page {
  return {
    id: 'fit',
    title: 'Does it suit the place?',
    blocks: [
      {
        kind: 'table',
        table: {
          id: 'fit',
          columns: [
            { title: 'What', grow: true },
            { title: 'Is', align: 'right' },
            { title: 'Limit' },
            { title: 'Verdict' },
          ],
          rows: plan.fit.map(check => [
            check.say,
            formatFigure(check.value, plan.display),
            check.limit,
            check.verdict,
          ]),
        },
      },
      { kind: 'list', items: plan.fit.flatMap(fitWords) },
      ...planterBlocks(plan),
      ...holdBlocks(plan),
      {
        kind: 'words',
        text: 'Checked: sizes and weight against the figures you gave. Not checked: what the floor, deck or roof below can carry. Ask its owner, the local code or a licensed engineer.',
      },
    ],
  };
}

function holdBlocks(plan: Plan): readonly Block[] {
  if (plan.holds.length === 0) return [];
  return [
    { kind: 'heading', text: 'Will it hold? Each by the sum that is told, and by no other' },
    holdTable(plan),
    holdAdvice(plan),
    ...holdSums(plan),
    { kind: 'heading', text: 'Not checked' },
    { kind: 'list', items: notCounted(plan) },
  ];
}

function fitWords(check: FitCheck): readonly string[] {
  return check.advice === '' ? [] : [`${check.say}: ${check.advice} (${check.source})`];
}
