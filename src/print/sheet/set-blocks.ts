import type { Mm } from '../../measure/quantities.js';
import type { Block, Fact } from '../../text/page.js';
import type { Points } from './mark.js';
import { beside, bound, lower, type Piece } from './piece.js';
import { barPieces } from './set-bars.js';
import { tablePieces } from './set-table.js';
import { headingPieces, itemPieces, type Measure, wordPieces } from './set-words.js';
import { SIZE } from './type.js';

/** The blocks of a page, as they stand on the screen, set for paper. */
export function blockPieces(blocks: readonly Block[], measure: Measure): readonly Piece[] {
  return blocks.flatMap(block => withAir(onePieces(block, measure), block));
}

function withAir(pieces: readonly Piece[], { kind }: Block): readonly Piece[] {
  if (kind === 'heading') return pieces;
  return pieces.map((one, at) => (at === 0 ? lower(one, Math.max(one.above, 2.2)) : one));
}

function onePieces(block: Block, measure: Measure): readonly Piece[] {
  switch (block.kind) {
    case 'heading':
      return headingPieces(block.text, measure);
    case 'words':
      return wordPieces(block.text, measure);
    case 'list':
      return block.items.flatMap(item => itemPieces(item, 'dash', measure));
    case 'facts':
      return factPieces(block.facts, measure);
    case 'table':
      return tablePieces(block.table, measure);
    case 'bars':
      return barPieces(block.bars, measure);
  }
}

const WIDEST_NAME: Mm = 48;
const GAP: Mm = 4;

/** Names in bold at the left, what they are at the right. */
export function factPieces(
  facts: readonly Pick<Fact, 'name' | 'text'>[],
  measure: Measure,
  size: Points = SIZE.words,
): readonly Piece[] {
  const { rule, width } = measure;
  const names = facts.map(({ name }) => rule(name, size, true));
  const left = Math.min(WIDEST_NAME, width / 3, Math.max(0, ...names) + 0.1);
  const right = { rule, width: width - left - GAP };
  return facts.map(({ name, text }) => {
    const named = bound(wordPieces(name, { rule, width: left }, { size, bold: true }));
    return lower(beside(named, bound(wordPieces(text, right, { size })), left + GAP), 0.7);
  });
}
