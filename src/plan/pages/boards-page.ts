import { formatBoardLength, formatLength } from '../../measure/format-length.js';
import { formatMoney } from '../../measure/money.js';
import type { Block, Page } from '../../text/page.js';
import { count } from '../../text/plural.js';
import type { BoughtBoard, Plan, Purchase } from '../plan.js';

/** Boards to buy, what it costs, and how each board is cut. */
export function boardsPage(plan: Plan): Page {
  return {
    id: 'boards',
    title: 'Boards to buy',
    blocks: [
      { kind: 'table', table: buyTable(plan) },
      ...totalBlocks(plan),
      ...plan.purchases.flatMap(purchase => sectionBlocks(purchase, plan)),
    ],
  };
}

/** One line for each length of each section, also for a spreadsheet. */
export function buyTable(plan: Plan) {
  return {
    id: 'boards-to-buy',
    columns: [
      { title: 'Board' },
      { title: 'Count', align: 'right' as const },
      { title: 'Length', align: 'right' as const },
      { title: 'Each', align: 'right' as const },
      { title: 'Together', align: 'right' as const },
    ],
    rows: plan.purchases.flatMap(purchase =>
      purchase.buy.map(line => [
        purchase.section,
        String(line.count),
        formatBoardLength(line.length.value, plan.display),
        purchase.priced ? formatMoney(line.each.value) : '',
        purchase.priced ? formatMoney(line.each.value * line.count) : '',
      ]),
    ),
  };
}

function totalBlocks(plan: Plan): readonly Block[] {
  const priced = plan.purchases.filter(purchase => purchase.priced);
  if (priced.length === 0) {
    return [
      {
        kind: 'words',
        text: "No prices given: the list is the least length of board. Type the store's lengths and prices to get the least cost.",
      },
    ];
  }
  const rest = plan.purchases.length - priced.length;
  const missing = rest > 0 ? ` Without a price: ${count(rest, 'section')}.` : '';
  return [{ kind: 'words', text: `In all ${formatMoney(plan.cost.value)}.${missing}` }];
}

function sectionBlocks(purchase: Purchase, plan: Plan): readonly Block[] {
  const missing: readonly Block[] =
    purchase.missing.length > 0
      ? [{ kind: 'list', items: purchase.missing.map(it => `NO BOARD: ${it}`) }]
      : [];
  return [
    {
      kind: 'heading',
      text: `${purchase.section}, really ${formatLength(purchase.thickness.value, plan.display)} x ${formatLength(purchase.width.value, plan.display)}: ${purchase.proof.words}`,
    },
    ...missing,
    { kind: 'table', table: cuttingTable(purchase, plan) },
  ];
}

function cuttingTable(purchase: Purchase, plan: Plan) {
  const length = (value: number) => formatLength(value, plan.display);
  return {
    id: `cutting-${purchase.section}`,
    columns: [
      { title: 'No.', align: 'right' as const },
      { title: 'Length', align: 'right' as const },
      { title: 'Cut, in this order', grow: true },
      { title: 'Left', align: 'right' as const },
      { title: 'Slack', align: 'right' as const },
    ],
    rows: purchase.boards.map(board => [
      String(board.number),
      `${formatBoardLength(board.length, plan.display)}${board.onHand ? ' (have)' : ''}`,
      cutWords(board, length),
      length(board.offcut),
      length(board.slack),
    ]),
  };
}

/** Runs of equal pieces together: `4 x C 18 in, 2 x E 11-1/2 in`. */
export function cutWords(
  board: Pick<BoughtBoard, 'cuts'>,
  length: (value: number) => string,
): string {
  const runs: { mark: string; length: number; count: number }[] = [];
  for (const cut of board.cuts) {
    const last = runs.at(-1);
    if (last && last.mark === cut.mark) last.count += 1;
    else runs.push({ ...cut, count: 1 });
  }
  return runs.map(run => `${run.count} x ${run.mark} ${length(run.length)}`).join(', ');
}
