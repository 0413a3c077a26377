import { cleanPiece } from './clean-text.js';
import type { Formula, Template } from './formula.js';
import type { PlaceOf } from './formula-tokens.js';
import { isProblem, parseFormula } from './parse-formula.js';
import type { Problem } from './problem.js';

/**
 * Parses a text with holes: `Cut {slats.count} slats` has a piece of text, a formula and a piece of
 * text. `{{` and `}}` stand for the braces themselves.
 */
export function parseTemplate(text: string, placeOf: PlaceOf): Template | Problem {
  const pieces: (string | Formula)[] = [];
  let words = '';
  let next = 0;
  while (next < text.length) {
    const two = text.slice(next, next + 2);
    if (two === '{{' || two === '}}') {
      words += two.charAt(0);
      next += 2;
    } else if (text[next] === '}') {
      return { kind: { is: 'brace-alone' }, at: placeOf(next) };
    } else if (text[next] === '{') {
      const end = text.indexOf('}', next);
      if (end < 0) return { kind: { is: 'hole-open' }, at: placeOf(next) };
      const start = next + 1;
      const formula = parseFormula(text.slice(start, end), offset => placeOf(start + offset));
      if (isProblem(formula)) return formula;
      pieces.push(cleanPiece(words), formula);
      words = '';
      next = end + 1;
    } else {
      words += text.charAt(next);
      next += 1;
    }
  }
  pieces.push(cleanPiece(words));
  return { pieces: pieces.filter(piece => piece !== ''), at: placeOf(0) };
}
