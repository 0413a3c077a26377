/**
 * For each letter of a value, where it stands in the source that it was read from. Quotes, doubled
 * quotes, backslashes and folded lines make the two differ: in `'it''s'` the s is letter 3 of the value
 * and 5 of the source.
 */
export function sourceOffsets(value: string, source: string): number[] {
  const offsets: number[] = [];
  let next = source.startsWith('"') || source.startsWith("'") ? 1 : 0;
  const quote = next === 1 ? source[0] : undefined;
  for (const letter of value.split('')) {
    next = skipFolds(letter, source, next);
    offsets.push(Math.min(next, source.length));
    next += width(quote, source, next);
  }
  return offsets;
}

/** A folded line end is one space, or none, in the value and a line break with an indent in the source. */
function skipFolds(letter: string, source: string, start: number): number {
  if (source[start] === letter) return start;
  let next = start;
  if (!/\s/.test(letter)) {
    while (next < source.length && /\s/.test(source[next] ?? '')) next += 1;
  }
  return next;
}

function width(quote: string | undefined, source: string, start: number): number {
  if (quote === "'" && source.startsWith("''", start)) return 2;
  if (quote === '"' && source[start] === '\\') return escapeWidth(source, start);
  return source[start] === '\n' ? lineEndWidth(source, start) : 1;
}

function escapeWidth(source: string, start: number): number {
  const widths: Readonly<Record<string, number>> = { x: 4, u: 6, U: 10 };
  return widths[source[start + 1] ?? ''] ?? 2;
}

function lineEndWidth(source: string, start: number): number {
  const [folded = '\n'] = /^\n[ \t]*/.exec(source.slice(start, start + 200)) ?? [];
  return folded.length;
}
