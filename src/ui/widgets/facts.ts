import { hanging } from '../../text/page-lines.js';
import { toAscii } from '../../text/safe-text.js';
import { textWidth } from '../../text/width.js';
import { padEnd } from '../../text/wrap.js';

export type NamedText = { readonly name: string; readonly text: string };

/** Names in a column of their own, texts wrapped beside them. */
export function factLines(facts: readonly NamedText[], columns: number): readonly string[] {
  const widest = Math.max(0, ...facts.map(({ name }) => textWidth(name)));
  return facts.flatMap(({ name, text }) => hanging(`${padEnd(name, widest)}  `, text, columns));
}

/** Text in plain ASCII where that is asked for; before it is laid out, since widths change. */
export function plainer(ascii: boolean): (text: string) => string {
  return ascii ? toAscii : text => text;
}
