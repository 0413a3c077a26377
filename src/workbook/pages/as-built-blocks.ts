import { formatFigure } from '../../measure/figure-text.js';
import { formatLength } from '../../measure/format-length.js';
import { formatMoney } from '../../measure/money.js';
import type { Plan } from '../../plan/plan.js';
import { listWords } from '../../text/list.js';
import type { Block, Fact } from '../../text/page.js';
import { count } from '../../text/plural.js';

/** Sizes and pieces as they are by the plan of now, which counts on what was measured. */
export function asBuilt(plan: Plan): readonly Block[] {
  const { overall, display, weight, cutList } = plan;
  const size = [overall.width, overall.depth, overall.height];
  return [
    {
      kind: 'facts',
      facts: [
        {
          name: 'Overall',
          text: `${size.map(it => formatFigure(it, display)).join(' x ')} (long, deep, high)`,
        },
        { name: 'Weight, empty', text: `${formatFigure(weight, display)} by the plan` },
      ],
    },
    {
      kind: 'table',
      table: {
        id: 'pieces',
        columns: [
          { title: 'Mark' },
          { title: 'Piece', grow: true },
          { title: 'Count', align: 'right' },
          { title: 'Board' },
          { title: 'Length', align: 'right' },
        ],
        rows: cutList.map(row => [
          row.mark,
          row.name,
          String(row.count),
          row.section,
          formatLength(row.length.value, display),
        ]),
      },
    },
  ];
}

/** Screws, glue and sealer, as they were bought. */
export function used({ screws, glue, sealer, answers }: Plan): readonly Fact[] {
  const metal = answers.find(({ id }) => id === 'metal')?.text ?? '';
  return [
    ...screws.map(({ joint, what, count: all, kind }) => ({
      name: joint,
      text: `${all} x ${what}${kind === 'screw' && metal !== '' ? `, ${metal}` : ''}`,
    })),
    ...(glue.area.value > 0 ? [{ name: 'Glue', text: `${glue.kind}, ${glue.buy}` }] : []),
    { name: 'Sealer', text: `${sealer.kind}, ${count(sealer.coats, 'coat')}, ${sealer.buy}` },
  ];
}

/** What was paid is the builder's to write down; the plan knows its own prices only. */
export function costWords({ purchases, cost }: Plan): string {
  const unpriced = purchases.filter(({ priced }) => !priced).map(({ section }) => section);
  if (unpriced.length === purchases.length) return 'no prices were given';
  const money = `${formatMoney(cost.value)} at the prices you gave`;
  return unpriced.length === 0 ? money : `${money}, without ${listWords(unpriced)}`;
}
