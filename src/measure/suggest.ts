/**
 * The word most like a mistyped one, for "did you mean ...?", or undefined when none is near. Near
 * is two slips (a letter missing, extra, wrong, or two swapped), a third of the letters in a long
 * word, one slip in a word of three letters or fewer. `nearestWord('bord', ['board', 'rail'])` is
 * "board". Capitals do not count; of equally near words the first wins.
 */
export function nearestWord(word: string, words: Iterable<string>): string | undefined {
  const typed = word.toLowerCase();
  let nearest: string | undefined;
  let fewest = slipsAllowed(typed) + 1;
  for (const known of words) {
    const slips = slipsBetween(typed, known.toLowerCase());
    if (slips < fewest && slips < known.length) {
      nearest = known;
      fewest = slips;
    }
  }
  return nearest;
}

function slipsAllowed(word: string): number {
  if (word.length <= 3) return word.length > 1 ? 1 : 0;
  return Math.max(2, Math.floor(word.length / 3));
}

/** Edit distance with swapped neighbors counted once (optimal string alignment). */
function slipsBetween(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row += 1) {
    const now = [row];
    for (let column = 1; column <= b.length; column += 1) {
      const wrong = a[row - 1] === b[column - 1] ? 0 : 1;
      const swapped =
        row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
      now.push(
        Math.min(
          at(last, column) + 1,
          at(now, column - 1) + 1,
          at(last, column - 1) + wrong,
          swapped ? at(beforeLast, column - 2) + 1 : Number.POSITIVE_INFINITY,
        ),
      );
    }
    beforeLast = last;
    last = now;
  }
  return at(last, b.length);
}

function at(row: readonly number[], column: number): number {
  return row[column] ?? Number.POSITIVE_INFINITY;
}
