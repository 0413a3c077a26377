import { barLines } from './bar-lines.js';
import type { Block, Page } from './page.js';
import { markdownTable } from './table.js';

/** Columns of a drawing of boards, which no reader of Markdown wraps. */
const FENCED = 78;

/** A page as Markdown: the title as a heading of the second level. */
export function pageMarkdown(page: Page): string {
  return [`## ${page.title}`, ...page.blocks.map(blockMarkdown).filter(text => text !== '')].join(
    '\n\n',
  );
}

function blockMarkdown(block: Block): string {
  switch (block.kind) {
    case 'heading':
      return `### ${block.text}`;
    case 'words':
      return block.text;
    case 'list':
      return block.items.map(item => `- ${item}`).join('\n');
    case 'facts':
      return block.facts.map(fact => `- **${fact.name}:** ${fact.text}`).join('\n');
    case 'table':
      return markdownTable(block.table.columns, block.table.rows);
    case 'bars':
      return block.bars.length === 0
        ? ''
        : ['```text', ...barLines(block.bars, FENCED), '```'].join('\n');
  }
}
