import { formatFigure } from '../../measure/figure-text.js';
import type { Block } from '../../text/page.js';
import type { Plan } from '../plan.js';

/** What each part carries or presses with, beside its limit. */
export function holdTable({ holds, display }: Plan): Block {
  return {
    kind: 'table',
    table: {
      id: 'holds',
      columns: [
        { title: 'What', grow: true },
        { title: 'Is', align: 'right' },
        { title: 'Limit', grow: true },
        { title: 'Verdict', grow: true },
      ],
      rows: holds.map(row => [row.say, formatFigure(row.value, display), row.limit, row.verdict]),
    },
  };
}

/** What to change, where a sum does not come out. */
export function holdAdvice({ holds }: Plan): Block {
  const items = holds.filter(row => row.better !== '').map(row => `${row.say}: ${row.better}`);
  return { kind: 'list', items };
}

/** The sums behind the table, each with its source. */
export function holdSums({ holds }: Plan): readonly Block[] {
  return [
    { kind: 'heading', text: 'The sums' },
    { kind: 'list', items: holds.map(row => `${row.say}: ${row.sum} (${row.source}).`) },
  ];
}

/** What the sums leave out; what a piece of advice on the same page says already is not said again. */
export function notCounted({ holds, holdsNot }: Plan): readonly string[] {
  return holdsNot.filter(words => !holds.some(({ better }) => better.includes(words)));
}
