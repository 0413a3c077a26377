import { barLines } from './bar-lines.js';
import type { Block, Fact, Page } from './page.js';
import { tableLines } from './table.js';
import { textWidth } from './width.js';
import { padEnd, wrap } from './wrap.js';

/** A page as lines no wider than `columns`: title and rule, then its blocks with a blank line between. */
export function pageLines(page: Page, columns: number): readonly string[] {
  const title = [page.title, '═'.repeat(Math.min(columns, textWidth(page.title)))];
  return [...title, '', ...bodyLines(page.blocks, columns)];
}

/** The blocks alone, for a screen that shows the title itself. */
export function bodyLines(blocks: readonly Block[], columns: number): readonly string[] {
  const full = blocks.filter(block => !isEmpty(block));
  return full.flatMap((block, at) => {
    const lines = blockLines(block, columns);
    const tight = at === 0 || full[at - 1]?.kind === 'heading';
    return tight ? lines : ['', ...lines];
  });
}

function isEmpty(block: Block): boolean {
  if (block.kind === 'list') return block.items.length === 0;
  if (block.kind === 'facts') return block.facts.length === 0;
  if (block.kind === 'bars') return block.bars.length === 0;
  return block.kind === 'table' && block.table.rows.length === 0;
}

function blockLines(block: Block, columns: number): readonly string[] {
  switch (block.kind) {
    case 'heading':
      return wrap(block.text, columns);
    case 'words':
      return wrap(block.text, columns);
    case 'list':
      return block.items.flatMap(item => hanging('- ', item, columns));
    case 'facts':
      return factLines(block.facts, columns);
    case 'table':
      return tableLines(block.table.columns, block.table.rows, columns);
    case 'bars':
      return barLines(block.bars, columns);
  }
}

/** The first line behind a mark, the others under its text. */
export function hanging(mark: string, text: string, columns: number): readonly string[] {
  const indent = ' '.repeat(textWidth(mark));
  return wrap(text, Math.max(8, columns - textWidth(mark))).map(
    (line, at) => (at === 0 ? mark : indent) + line,
  );
}

const WIDEST_NAME = 24;

function factLines(facts: readonly Fact[], columns: number): readonly string[] {
  const name = Math.min(WIDEST_NAME, Math.max(...facts.map(fact => textWidth(fact.name))));
  return facts.flatMap(fact => hanging(`${padEnd(fact.name, name)}  `, fact.text, columns));
}
