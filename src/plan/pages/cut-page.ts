import { formatFigure } from '../../measure/figure-text.js';
import { formatLength, formatLengthExact } from '../../measure/format-length.js';
import type { Block, Page } from '../../text/page.js';
import { count } from '../../text/plural.js';
import type { Plan } from '../plan.js';
import { sawBlocks, tapeBlocks } from './saw-blocks.js';

/** The cut list, the settings of the stop in order, and the notches. */
export function cutPage(plan: Plan): Page {
  return {
    id: 'cut',
    title: 'Cut list',
    blocks: [
      { kind: 'table', table: cutTable(plan) },
      { kind: 'heading', text: 'At the saw: one setting of the stop for each line' },
      { kind: 'table', table: sawTable(plan) },
      ...sawBlocks(plan),
      ...notchBlocks(plan),
      ...tapeBlocks(plan),
    ],
  };
}

/** Rows of the cut list, also for a spreadsheet. */
export function cutTable(plan: Plan) {
  const notches = new Map(plan.notches.map(row => [row.id, row.name]));
  return {
    id: 'cut-list',
    columns: [
      { title: 'Mark' },
      { title: 'Count', align: 'right' as const },
      { title: 'Length', align: 'right' as const },
      { title: 'Board' },
      { title: 'Real size' },
      { title: 'Piece', grow: true },
    ],
    rows: plan.cutList.map(row => [
      row.mark,
      String(row.count),
      formatFigure(row.length, plan.display),
      row.section,
      `${formatLength(row.thickness.value, plan.display)} x ${formatLength(row.width.value, plan.display)}`,
      [
        row.name,
        ...new Set(row.notches.map(id => lower(notches.get(id)))),
        handWords(row.otherHand),
      ]
        .filter(words => words !== '')
        .join('; '),
    ]),
  };
}

function lower(name = ''): string {
  return name.slice(0, 1).toLowerCase() + name.slice(1);
}

function handWords(otherHand: string | undefined): string {
  return otherHand === undefined ? '' : `mirror image of ${otherHand}`;
}

function sawTable(plan: Plan) {
  return {
    id: 'saw-order',
    columns: [
      { title: 'Board' },
      { title: 'Stop at', align: 'right' as const },
      { title: 'Pieces', align: 'right' as const },
      { title: 'Marks', grow: true },
    ],
    rows: plan.sawOrder.map(setting => [
      setting.section,
      formatFigure(setting.length, plan.display),
      String(setting.count),
      setting.marks
        .map(({ mark, count: times, name }) => `${mark}: ${count(times, name.toLowerCase())}`)
        .join(', '),
    ]),
  };
}

/** How deep, how far along, and where each notch is. */
export function notchBlocks(plan: Plan): readonly Block[] {
  if (plan.notches.length === 0) return [];
  const length = (value: number) => formatLengthExact(value, plan.display);
  return [
    { kind: 'heading', text: 'Notches: measured on the piece, from its nearer end' },
    {
      kind: 'table',
      table: {
        id: 'notches',
        columns: [
          { title: 'Mark' },
          { title: 'Each', align: 'right' },
          { title: 'From end', align: 'right' },
          { title: 'Along', align: 'right' },
          { title: 'Deep', align: 'right' },
          { title: 'Leaves', align: 'right' },
          { title: 'What for', grow: true },
        ],
        rows: plan.notches.map(row => [
          row.mark,
          String(row.each),
          row.fromEnd.value === 0 ? 'at it' : length(row.fromEnd.value),
          length(row.along.value),
          length(row.depth.value),
          length(row.left.value),
          `${row.name}, into the ${row.into}`,
        ]),
      },
    },
  ];
}
