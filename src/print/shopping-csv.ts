import { formatBoardLength } from '../measure/format-length.js';
import { formatMoney } from '../measure/money.js';
import type { Plan } from '../plan/plan.js';
import { csvText } from '../text/table.js';

const TITLES = ['What', 'Count', 'Length', 'Buy', 'Each', 'Together', 'Note'];

/** All that has to be bought as CSV (RFC 4180): boards first, then screws, glue and sealer. */
export function shoppingCsv(plan: Plan): string {
  const boards = plan.purchases.flatMap(purchase =>
    purchase.buy.map(({ count, length, each }) => [
      purchase.ripped === undefined ? purchase.section : `${purchase.ripped.from} to rip`,
      String(count),
      formatBoardLength(length.value, plan.display),
      '',
      purchase.priced ? formatMoney(each.value) : '',
      purchase.priced ? formatMoney(each.value * count) : '',
      '',
    ]),
  );
  const others = plan.hardware.map(row => [row.what, '', '', row.buy, '', '', row.note]);
  return csvText(TITLES, [...boards, ...others]);
}
