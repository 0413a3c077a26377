import { formatLength } from '../../measure/format-length.js';
import { spacingPage } from '../../plan/pages/work-pages.js';
import type { Piece } from '../sheet/piece.js';
import { blockPieces } from '../sheet/set-blocks.js';
import { tablePieces } from '../sheet/set-table.js';
import { headingPieces, titlePieces, wordPieces } from '../sheet/set-words.js';
import type { Pack } from './pack.js';

/** A line to write a length on. */
const TO_WRITE_IN = '__________';

/** Where each piece of a row stands, what is square by which diagonals, and what was measured. */
export function marksPieces(pack: Pack): readonly Piece[] {
  const { title, blocks } = spacingPage(pack.plan);
  return [
    ...titlePieces(title, pack.measure),
    ...blockPieces(blocks, pack.measure),
    ...measuredPieces(pack),
  ];
}

/** What was measured beside what was planned; where nothing is yet, lines to write it on. */
function measuredPieces({ plan, measure }: Pack): readonly Piece[] {
  const { measures, display } = plan;
  if (measures.length === 0) return [];
  const length = (value: number) => formatLength(value, display);
  const columns = [
    { title: 'What', grow: true },
    { title: 'Planned', align: 'right' as const },
    { title: 'Measured', align: 'right' as const },
  ];
  const rows = measures.map(({ say, planned, measured }) => [
    say,
    length(planned.value),
    measured === undefined ? TO_WRITE_IN : length(measured.value),
  ]);
  const ticks = measures.map(({ measured }) => measured !== undefined);
  return [
    ...headingPieces('Measured on the real wood', measure),
    ...wordPieces(
      'What is measured beats what was planned: tell the workbook, and everything not yet cut follows.',
      measure,
    ),
    ...tablePieces({ columns, rows, ticks, strong: 2 }, measure),
  ];
}
