import { wrap } from '../../text/wrap.js';
import type { Context, KeyHint } from '../screen.js';
import type { ListRoom } from './list.js';
import { type Row, Rows, withFoot } from './rows.js';
import { limitTop, type ScrollRoom, scrollWords } from './scroll.js';

/** Keys of a screen that asks and answers, and is left without anything written. */
export const LEAVE: KeyHint = { key: 'esc', does: 'leave as it was' };
export const KEYS: KeyHint = { key: '?', does: 'keys' };

/** Wider lines are hard to follow, however wide the window. */
const WIDEST = 76;

export function textColumns({ size }: Context): number {
  return Math.min(WIDEST, size.columns);
}

/** A list under a question: what the question, a blank row and the position leave of the window. */
export function roomUnder(question: readonly string[], count: number, at: Context): ListRoom {
  const asked = question.flatMap(text => wrap(text, textColumns(at))).length;
  return { count, height: Math.max(1, at.size.rows - asked - 2) };
}

export function strongRows(text: string, columns: number): readonly Row[] {
  return wrap(text, columns).map((line): Row => ({ text: line, tone: 'strong' }));
}

/** Rows that may scroll over a last row, which says what the big key does. */
export function roomOver(count: number, { size }: Context): ScrollRoom {
  return { count, height: Math.max(1, size.rows - 1) };
}

type AnswerProps = {
  readonly rows: readonly Row[];
  readonly top: number;
  readonly at: Context;
  /** What the keys do, before where one is. */
  readonly does: string;
};

/** An answer that may scroll, and under it what the big key does. */
export function AnswerRows({ rows, top, at, does }: AnswerProps) {
  const { columns, rows: height } = at.size;
  const room = roomOver(rows.length, at);
  const first = limitTop(top, room);
  const position = scrollWords(first, room);
  const foot: Row = { text: `${does}${position === '' ? '' : `   (${position})`}`, tone: 'now' };
  const body = rows.slice(first, first + room.height);
  return <Rows rows={withFoot(body, [foot], height)} width={columns} height={height} />;
}
