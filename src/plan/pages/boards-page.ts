import { formatBoardLength, formatLength } from '../../measure/format-length.js';
import { formatMoney } from '../../measure/money.js';
import { snapDown } from '../../measure/round.js';
import { sameLength } from '../../measure/tolerance.js';
import { listWords } from '../../text/list.js';
import type { Block, Page, Table } from '../../text/page.js';
import { count } from '../../text/plural.js';
import { boardBars, groupAlike, runWords } from '../board-bars.js';
import { isWorthKeeping, WORTH_KEEPING } from '../offcuts.js';
import type { BoughtBoard, Plan, Purchase } from '../plan.js';
import { woodWords } from '../wood-words.js';

/** Boards to buy, what it costs, and how each board is cut. */
export function boardsPage(plan: Plan): Page {
  return {
    id: 'boards',
    title: 'Boards to buy',
    blocks: [
      ...woodBlocks(plan),
      { kind: 'table', table: withoutEmptyColumns(buyTable(plan)) },
      ...totalBlocks(plan),
      ...(plan.purchases.length === 0 ? [] : [ORDER]),
      ...plan.purchases.flatMap(purchase => sectionBlocks(purchase, plan)),
      ...slackBlocks(plan),
    ],
  };
}

/** A sawyer who marks along a board goes by its drawing. */
const ORDER: Block = {
  kind: 'words',
  text: 'On each board the pieces stand in the order of sawing, from its squared end.',
};

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
        boardName(purchase),
        String(line.count),
        formatBoardLength(line.length.value, plan.display),
        purchase.priced ? formatMoney(line.each.value) : '',
        purchase.priced ? formatMoney(line.each.value * line.count) : '',
      ]),
    ),
  };
}

function woodBlocks(plan: Plan): readonly Block[] {
  const wood = woodWords(plan);
  return wood === '' ? [] : [{ kind: 'words', text: `Wood: ${wood}.` }];
}

/** A column in which nothing stands says nothing, as prices do where nobody typed any. */
function withoutEmptyColumns({ id, columns, rows }: Table): Table {
  const told = columns.map((_, at) => rows.some(row => row[at] !== ''));
  const kept = <T>(cells: readonly T[]) => cells.filter((_, at) => told[at]);
  return { id, columns: kept(columns), rows: rows.map(kept) };
}

function boardName({ section, ripped }: Purchase): string {
  return ripped === undefined ? section : `${ripped.from} to rip`;
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
    { kind: 'list', items: purchase.ripped?.words ?? [] },
    { kind: 'bars', bars: boardBars(purchase, plan.display) },
    ...keptBlocks(purchase, plan),
    ...spareBlocks(purchase, plan),
  ];
}

/** Which boards bear no bad end, and what it costs not to worry. */
function spareBlocks({ section, spare, priced }: Purchase, { display }: Plan): readonly Block[] {
  if (spare === undefined) return [];
  const { tight, length, cost } = spare;
  const which =
    tight.length > 1 ? `Boards ${listWords(tight.map(String))} have` : `Board ${tight[0]} has`;
  const price = priced ? `, ${formatMoney(cost.value)} more` : '';
  return [
    {
      kind: 'words',
      text: `${which} next to no slack: measure before paying, and look at both ends. A spare would be 1 x ${formatBoardLength(length.value, display)} of ${section}${price}.`,
    },
  ];
}

/** The offcuts that go back on the rack; what is shorter than a foot is waste. */
function keptBlocks({ boards }: Purchase, { display }: Plan): readonly Block[] {
  const kept = boards.filter(({ offcut }) => isWorthKeeping(offcut));
  if (kept.length === 0) return [];
  const sorted = kept.toSorted((a, b) => b.offcut - a.offcut);
  const words = groupAlike(sorted, (a, b) => sameLength(a.offcut, b.offcut)).map(alike => {
    const numbers = alike.map(({ number }) => String(number)).join(', ');
    const times = alike.length > 1 ? `${alike.length} x ` : '';
    return `${times}${formatLength(snapDown(alike[0].offcut, display.grid), display)} (${numbers})`;
  });
  return [
    {
      kind: 'words',
      text: `Offcuts to keep, ${formatLength(WORTH_KEEPING, display)} or longer, with the number of the board: ${words.join(', ')}.`,
    },
  ];
}

/** What the last columns of the drawing mean, once for all sections. */
function slackBlocks({ purchases }: Plan): readonly Block[] {
  if (!purchases.some(({ boards }) => boards.some(({ slack }) => slack > 0))) return [];
  return [
    {
      kind: 'words',
      text: 'Slack: so much further in the first cut may fall, to dodge a knot, and every piece still comes out.',
    },
  ];
}

/** Runs of equal pieces together: `4 x C 18 in, 2 x E 11-1/2 in`. */
export function cutWords(
  board: Pick<BoughtBoard, 'cuts'>,
  length: (value: number) => string,
): string {
  return runWords(board.cuts, length);
}
