import { formatBoardLength, formatLength } from '../../measure/format-length.js';
import { formatMoney } from '../../measure/money.js';
import { boughtCount } from '../../plan/buy-lines.js';
import type { Plan, Purchase } from '../../plan/plan.js';
import { stillToBuy } from '../../plan/rack-told.js';
import { woodWords } from '../../plan/wood-words.js';
import type { Column } from '../../text/table.js';
import type { Piece } from '../sheet/piece.js';
import { tablePieces } from '../sheet/set-table.js';
import { headingPieces, itemPieces, titlePieces, wordPieces } from '../sheet/set-words.js';
import type { Pack } from './pack.js';
import { benchOf, stepIsDone } from './so-far.js';

/** What to bring home, with a box to tick for each line: nothing but what is read in the aisle. */
export function shoppingPieces(pack: Pack): readonly Piece[] {
  const { plan, measure } = pack;
  const bought = isBought(pack);
  const priced = plan.purchases.some(purchase => purchase.priced);
  const bench = benchOf(pack);
  const besides = bench === undefined ? [] : stillToBuy(bench);
  return [
    ...titlePieces('For the store', measure),
    ...headingPieces('Boards', measure),
    ...woodPieces(pack),
    ...tablePieces(boardTable(plan, priced, bought), measure),
    ...wordPieces(totalWords(plan, priced), measure, { bold: true, above: 2.5 }),
    ...extraPieces(besides, measure),
    ...headingPieces('Screws, glue, sealer', measure),
    ...tablePieces(hardwareTable(plan, bought), measure),
    ...headingPieces('Before you pay for a board', measure),
    ...[...BEFORE_PAYING, ...realSizes(plan)].flatMap(item =>
      itemPieces(item, bought ? 'ticked' : 'box', measure),
    ),
  ];
}

function woodPieces({ plan, measure }: Pack): readonly Piece[] {
  const wood = woodWords(plan);
  return wood === '' ? [] : wordPieces(`Wood: ${wood}.`, measure);
}

/** Everything is there once the steps of buying are done. */
function isBought(pack: Pack): boolean {
  const buying = pack.plan.steps.filter(({ phase }) => phase === 'buy');
  return buying.length > 0 && buying.every(step => stepIsDone(step, pack));
}

/** What slips and measured lengths ask for, until it is entered as a board that came. */
function extraPieces(buy: readonly string[], measure: Pack['measure']): readonly Piece[] {
  if (buy.length === 0) return [];
  return [
    ...headingPieces('Still to buy besides', measure),
    ...buy.flatMap(item => itemPieces(item, 'box', measure)),
  ];
}

const MONEY: readonly Column[] = [
  { title: 'Each', align: 'right' },
  { title: 'Together', align: 'right' },
];

/** A price that nobody has typed yet is left open, to be written in by hand. */
const TO_WRITE_IN = '________';

function boardTable(plan: Plan, priced: boolean, bought: boolean) {
  return {
    columns: [
      { title: 'Count', align: 'right' as const },
      { title: 'Board' },
      { title: 'Length', align: 'right' as const },
      ...(priced ? MONEY : [{ title: 'Price each', align: 'right' as const }]),
      { title: 'Really', grow: true },
    ],
    rows: plan.purchases.flatMap(purchase => boardRows(purchase, plan, priced)),
    ticks: plan.purchases.flatMap(({ buy }) => buy.map(() => bought)),
    size: 12,
    strong: 0,
  };
}

function boardRows(purchase: Purchase, { display }: Plan, priced: boolean) {
  const { thickness, width, ripped, section } = purchase;
  const name = ripped === undefined ? section : `${ripped.from} to rip`;
  const size = (value: number) => formatLength(value, display);
  const real = `${size(thickness.value)} x ${size(width.value)}`;
  return purchase.buy.map(line => {
    const each = purchase.priced ? formatMoney(line.each.value) : TO_WRITE_IN;
    const all = purchase.priced ? formatMoney(line.each.value * line.count) : TO_WRITE_IN;
    return [
      String(line.count),
      name,
      formatBoardLength(line.length.value, display),
      ...(priced ? [each, all] : [each]),
      ripped === undefined ? real : '',
    ];
  });
}

function totalWords({ purchases, cost }: Plan, priced: boolean): string {
  const boards = purchases.reduce((sum, purchase) => sum + boughtCount(purchase), 0);
  if (!priced)
    return `${boards} boards in all. The least length of board, since no prices were given.`;
  const rest = purchases.filter(purchase => !purchase.priced).map(({ section }) => section);
  const missing = rest.length > 0 ? ` Without a price: ${rest.join(', ')}.` : '';
  return `${boards} boards in all, ${formatMoney(cost.value)}.${missing}`;
}

function hardwareTable({ hardware }: Plan, bought: boolean) {
  return {
    columns: [
      { title: 'Buy', grow: true },
      { title: 'What', grow: true },
      { title: 'Note', grow: true },
    ],
    rows: hardware.map(row => [row.buy, row.what, row.note]),
    ticks: hardware.map(() => bought),
    strong: 0,
  };
}

/** Common practice for picking softwood boards. */
const BEFORE_PAYING = [
  'Sight along both edges and a face: no twist, bow within what a clamp pulls straight.',
  'Knots tight, none at the ends; no split, no rot, no insect holes.',
  'Measure the length: each at least as long as its label.',
];

function realSizes({ purchases, display }: Plan): readonly string[] {
  const first = purchases.find(({ ripped }) => ripped === undefined);
  if (first === undefined) return [];
  const size = (value: number) => formatLength(value, display);
  return [
    `Measure one board of each kind: the plan takes a ${first.section} as ${size(first.thickness.value)} x ${size(first.width.value)}. Write down what differs.`,
  ];
}
