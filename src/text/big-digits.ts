import { textWidth } from './width.js';

const ROWS = 5;

/** Strokes are two cells wide and one high, which is about square on a screen. */
const SHAPES: Readonly<Record<string, readonly string[]>> = {
  '0': [' ███ ', '██ ██', '██ ██', '██ ██', ' ███ '],
  '1': [' ██ ', '███ ', ' ██ ', ' ██ ', '████'],
  '2': ['████ ', '   ██', ' ███ ', '██   ', '█████'],
  '3': ['████ ', '   ██', ' ███ ', '   ██', '████ '],
  '4': ['██ ██', '██ ██', '█████', '   ██', '   ██'],
  '5': ['█████', '██   ', '████ ', '   ██', '████ '],
  '6': [' ███ ', '██   ', '████ ', '██ ██', ' ███ '],
  '7': ['█████', '   ██', '  ██ ', ' ██  ', ' ██  '],
  '8': [' ███ ', '██ ██', ' ███ ', '██ ██', ' ███ '],
  '9': [' ███ ', '██ ██', ' ████', '   ██', ' ███ '],
  '/': ['   ██', '  ██ ', '  ██ ', ' ██  ', '██   '],
  '-': ['   ', '   ', '███', '   ', '   '],
  '"': ['██ ██', '██ ██', '     ', '     ', '     '],
  "'": ['██', '██', '  ', '  ', '  '],
  '.': ['  ', '  ', '  ', '  ', '██'],
  ':': ['  ', '██', '  ', '██', '  '],
  m: ['        ', '███████ ', '██ ██ ██', '██ ██ ██', '██ ██ ██'],
  i: ['██', '  ', '██', '██', '██'],
  n: ['     ', '████ ', '██ ██', '██ ██', '██ ██'],
  ' ': ['  ', '  ', '  ', '  ', '  '],
};

/**
 * A measure in large figures to be read from across the bench: five rows of equal width, for
 * digits, `/ - " ' . :`, spaces, and the letters of "in" and "mm". Any other character stands small
 * on the bottom row. "46-1/2 in" takes 44 columns. For plain ASCII pass the rows through toAscii.
 */
export function bigDigits(text: string): string[] {
  const shapes = Array.from(text, shape);
  return Array.from({ length: ROWS }, (_, row) => shapes.map(rows => rows[row] ?? '').join(' '));
}

function shape(sign: string): readonly string[] {
  const large = SHAPES[sign];
  if (large !== undefined) return large;
  const blank = ' '.repeat(textWidth(sign));
  return [blank, blank, blank, blank, sign];
}
