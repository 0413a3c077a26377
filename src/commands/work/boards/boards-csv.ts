import { SIXTY_FOURTHS } from '../../../measure/displays.js';
import { formatLength } from '../../../measure/format-length.js';
import { toInches } from '../../../measure/inch.js';
import { formatMoney } from '../../../measure/money.js';
import type { Display, Mm } from '../../../measure/quantities.js';
import { snap } from '../../../measure/round.js';
import { sameLength } from '../../../measure/tolerance.js';
import { csvText } from '../../../text/table.js';
import type { ForSale, InHand, Wanted } from './boards-ask.js';
import type { CutUp } from './cut-up.js';

const TITLES = ['kind', 'length', 'count', 'price', 'name', 'board', 'offcut', 'slack'];

/**
 * Every board with the pieces out of it under it, in the form that `--from` reads: taken back in, the same
 * boards are cut the same way at the same cost.
 */
export function boardsCsv(boards: readonly CutUp[], display: Display): string {
  const numbers = [...new Set(boards.map(({ number }) => number))];
  const rows = numbers.flatMap(number => {
    const own = boards.filter(board => board.number === number);
    const [first] = own;
    if (first === undefined) throw new Error(`no board ${number}`);
    const alone = own.length === 1;
    return [
      boardRow(first, alone, display),
      ...own.flatMap(({ cuts }) => runs(cuts)).map(run => pieceRow(run, number, display)),
    ];
  });
  return csvText(TITLES, rows);
}

function boardRow(cut: CutUp, alone: boolean, display: Display): readonly string[] {
  const { board, onHand, number, offcut, slack } = cut;
  return [
    onHand ? 'hand' : 'board',
    lengthCell(board, display),
    '1',
    'price' in board && board.price !== undefined ? formatMoney(board.price) : '',
    board.name,
    String(number),
    alone ? exactLength(offcut, display) : '',
    alone ? exactLength(slack, display) : '',
  ];
}

function lengthCell(board: ForSale | InHand, display: Display): string {
  const defects = 'defects' in board ? board.defects : [];
  const words = defects.map(
    ({ from, to }) => `${exactLength(from, display)}-${exactLength(to, display)}`,
  );
  return [exactLength(board.length, display), ...words].join(':');
}

type Run = { readonly piece: Wanted; readonly count: number };

function runs(cuts: readonly Wanted[]): readonly Run[] {
  return [...new Set(cuts)].map(piece => ({
    piece,
    count: cuts.filter(it => it === piece).length,
  }));
}

function pieceRow({ piece, count }: Run, number: number, display: Display): readonly string[] {
  const length = exactLength(piece.length, display);
  return ['piece', length, String(count), '', piece.name, String(number), '', ''];
}

const PLACES = 6;

/**
 * A length that reads back as the same length: `34-1/2 in`, `20.6693 in`, `876.3 mm`. Exactly three digits
 * behind the point would have two readings in mm, so they get a fourth.
 */
export function exactLength(length: Mm, display: Display): string {
  if (display.system === 'metric') {
    const text = String(Number(length.toFixed(PLACES)));
    return `${/\.\d{3}$/.test(text) ? `${text}0` : text} mm`;
  }
  if (sameLength(length, snap(length, SIXTY_FOURTHS.grid)))
    return formatLength(length, SIXTY_FOURTHS);
  return `${Number(toInches(length).toFixed(PLACES + 2))} in`;
}
