import { boardBar } from './board-bar.js';
import type { BarRow } from './page.js';
import { textWidth } from './width.js';
import { padEnd, wrap } from './wrap.js';

const GAP = 2;

/** Below this many columns a board says nothing: the words stand alone. */
const NARROWEST = 16;

/** Boards one under the other, each a line of words and the board itself, the longest as wide as there is room. */
export function barLines(bars: readonly BarRow[], columns: number): readonly string[] {
  const name = Math.max(0, ...bars.map(row => textWidth(row.name)));
  const indent = ' '.repeat(name + GAP);
  const room = columns - textWidth(indent);
  const longest = Math.max(...bars.map(({ bar }) => bar.length));
  return bars.flatMap(row => {
    const words = wrap(row.text, Math.max(1, room)).map((line, at) =>
      at === 0 ? padEnd(row.name, name) + ' '.repeat(GAP) + line : indent + line,
    );
    if (room < NARROWEST) return words;
    return [...words, indent + boardBar(row.bar, { longest, columns: room })];
  });
}
