import { textWidth } from '../../../text/width.js';
import { cut, padEnd } from '../../../text/wrap.js';
import type { PlanPage } from './pages.js';

/**
 * The pages in a line, the one that is seen in brackets: ` 1 Drawing [2 About] 3 Fit `. Where that is
 * too wide, the others are their numbers alone.
 */
export function tabLine(pages: readonly PlanPage[], seen: number, columns: number): string {
  const full = joined(
    pages.map((page, at) => tabText(page, at === seen)),
    seen,
  );
  if (textWidth(full) <= columns) return full;
  const short = joined(
    pages.map((page, at) => (at === seen ? tabText(page, true) : page.key || MORE)),
    seen,
  );
  return cut(short, columns);
}

/** Stands for a page that has no number. */
const MORE = '+';

function tabText({ key, name }: PlanPage, isSeen: boolean): string {
  if (key === '') return isSeen ? name : MORE;
  return `${key} ${name}`;
}

function joined(names: readonly string[], seen: number): string {
  return (
    names.reduce((line, name, at) => {
      const before = at === seen ? '[' : at === seen + 1 ? ']' : ' ';
      return `${line}${before}${name}`;
    }, '') + (seen === names.length - 1 ? ']' : '')
  );
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
