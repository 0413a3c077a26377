import { textWidth } from '../../../text/width.js';
import { cut, padEnd } from '../../../text/wrap.js';
import type { PlanPage } from './pages.js';

/**
 * The pages in as few rows as hold them all, the one that is seen in brackets: ` 1 Drawing [2 About] 3 Fit `.
 * Every tab stands in the same place whichever is seen.
 */
export function tabRows(
  pages: readonly PlanPage[],
  seen: number,
  columns: number,
): readonly string[] {
  const rows: { text: string; number: number }[][] = [];
  let used = columns;
  pages.forEach((page, number) => {
    const text = tabText(page);
    const width = 1 + textWidth(text);
    if (used + width + 1 > columns) {
      rows.push([]);
      used = 0;
    }
    rows.at(-1)?.push({ text, number });
    used += width;
  });
  return rows.map(row => cut(joined(row, seen), columns));
}

function tabText({ key, name }: PlanPage): string {
  return key === '' ? name : `${key} ${name}`;
}

function joined(row: readonly { text: string; number: number }[], seen: number): string {
  const tabs = row.map(({ text, number }, at) => {
    const before = number === seen ? '[' : at > 0 && number === seen + 1 ? ']' : ' ';
    return `${before}${text}`;
  });
  return tabs.join('') + (row.at(-1)?.number === seen ? ']' : '');
}

/** The title of a page with a rule behind it, and at the end where one is in it. */
export function titleLine(
  title: string,
  position: string,
  style: { columns: number; rule: string },
): string {
  const { columns, rule } = style;
  const end = position === '' ? '' : ` ${position}`;
  const room = Math.max(0, columns - textWidth(end));
  const start = cut(`${title} `, room);
  return padEnd(start + rule.repeat(Math.max(0, room - textWidth(start))) + end, columns);
}
