import {
  formatBoardLength,
  formatLength,
  formatLengthExact,
} from '../../../measure/format-length.js';
import { formatMoney } from '../../../measure/money.js';
import type { Display, Mm } from '../../../measure/quantities.js';
import {
  groupAlike,
  leftWords,
  offcutStretch,
  pieceStretches,
  runWords,
} from '../../../plan/board-bars.js';
import { barLines } from '../../../text/bar-lines.js';
import type { Stretch } from '../../../text/board-bar.js';
import type { BarRow } from '../../../text/page.js';
import type { CutUp } from './cut-up.js';

/** A terminal of 80 columns, with some room for one that wraps early. */
const COLUMNS = 78;

type Style = { readonly display: Display; readonly kerf: Mm; readonly priced: boolean };

/** Every board to scale with its cuts in order; boards that are cut alike stand together. */
export function boardLines(boards: readonly CutUp[], style: Style): readonly string[] {
  const groups = groupAlike(boards, isCutAlike);
  return barLines(
    groups.map(group => row(group, style)),
    COLUMNS,
  );
}

function isCutAlike(a: CutUp, b: CutUp): boolean {
  const names = ({ cuts }: CutUp) => cuts.map(({ name }) => name).join();
  return a.board === b.board && a.from === b.from && names(a) === names(b);
}

function row([board, ...others]: readonly [CutUp, ...CutUp[]], style: Style): BarRow {
  const { display, priced } = style;
  const last = others.at(-1) ?? board;
  const times = others.length > 0 ? `${others.length + 1} x ` : '';
  const each = others.length > 0 ? ' each' : '';
  const source = board.onHand ? ' on hand' : priced ? ` at ${formatMoney(board.price)}` : '';
  const named = board.board.name === '' ? '' : `${board.board.name}, `;
  const what = `${named}${times}${formatBoardLength(board.board.length, display)}${source}${stretchWords(board, display)}`;
  const cuts = runWords(marked(board), value => formatLengthExact(value, display));
  return {
    name: others.length > 0 ? `${board.number}-${last.number}` : String(board.number),
    text: `${what}: ${cuts}; ${leftWords(board, display)}${each}`,
    bar: { length: board.board.length, stretches: stretchesOf(board, style) },
  };
}

function marked({ cuts }: CutUp) {
  return cuts.map(({ name, length }) => ({ mark: name, length }));
}

/** Which part of a board with defects it is. */
function stretchWords({ board, from, to }: CutUp, display: Display): string {
  if (from === 0 && to === board.length) return '';
  return ` (${formatLength(from, display)} to ${formatLength(to, display)})`;
}

function stretchesOf(cut: CutUp, { display, kerf }: Style): readonly Stretch[] {
  const { board, start, to, offcut } = cut;
  const plain = { labels: [] };
  const defects = 'defects' in board ? board.defects : [];
  return [
    { kind: 'other', from: 0, to: board.length, ...plain },
    ...defects.map(defect => ({ kind: 'lost' as const, ...defect, ...plain })),
    ...offcutStretch(offcut, to),
    ...pieceStretches(marked(cut), { start, kerf, display }),
  ];
}
