import type { Block, Page } from './page.js';
import { markdownTable } from './table.js';

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
  }
}
