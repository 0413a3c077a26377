import type { Question } from '../../../recipe/recipe.js';
import { textWidth } from '../../../text/width.js';
import { padEnd, wrap } from '../../../text/wrap.js';
import type { Context } from '../../screen.js';
import { optionsOf } from './state.js';

/** From here on there is room beside the question for a picture. */
const WIDE = { columns: 100, rows: 24 };

export function hasPicture({ size }: Context): boolean {
  return size.columns >= WIDE.columns && size.rows >= WIDE.rows;
}

/** Columns of the question itself; with a picture it has the left part. */
export function textColumns(at: Context): number {
  const { columns } = at.size;
  return hasPicture(at) ? Math.floor(columns * 0.55) : columns;
}

/** What the answers give is told in no fewer rows: sizes and boards, and the first warning. */
const LEAST_EFFECT = 4;

/** Rows for what the answers give, at the bottom; fewer where all options of a question are seen by it. */
export function effectRows(at: Context, question?: Question): number {
  const usual = usualEffectRows(at.size.rows);
  if (question === undefined) return usual;
  const lacking = optionsOf(question).length - rowsAbove(usual, question, at);
  return Math.max(LEAST_EFFECT, usual - Math.max(0, lacking));
}

function usualEffectRows(rows: number): number {
  if (rows < 16) return LEAST_EFFECT;
  return rows < 20 ? 6 : 8;
}

/** The options, one line each, with what speaks for them. */
export function optionLines(question: Question): readonly string[] {
  const options = optionsOf(question);
  const longest = Math.max(...options.map(({ say }) => textWidth(say)));
  return options.map(({ say, why }, i) => {
    const number = i < 9 ? String(i + 1) : ' ';
    return `${number}  ${padEnd(say, longest)}  ${why}`.trimEnd();
  });
}

/** Columns that the list puts before a line. */
const MARK = 2;

/** Rows below the options for the whole text of the marked one, where some line is cut. */
export function reasonRows(question: Question, at: Context): number {
  const room = textColumns(at) - MARK;
  return optionLines(question).some(line => textWidth(line) > room) ? 3 : 0;
}

/** Rows for the options: what is left by a blank row, the words, another blank and the position. */
export function optionRows(question: Question, at: Context): number {
  return Math.max(3, rowsAbove(effectRows(at, question), question, at));
}

function rowsAbove(effect: number, question: Question, at: Context): number {
  const columns = textColumns(at);
  const words = wrap(question.say, columns).length + wrap(question.why, columns).length;
  return at.size.rows - effect - words - 3 - reasonRows(question, at);
}

/** Rows for the answers to look over: what a blank row, the heading and the position leave. */
export function reviewRows(at: Context): number {
  return Math.max(3, at.size.rows - effectRows(at) - 3);
}
