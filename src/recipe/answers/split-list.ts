/**
 * The things of a typed list, which stand behind commas, semicolons or line ends. A comma between two
 * digits belongs to a number: `1,5 m x 2 m, 9in x 10in` is two things.
 */
export function splitList(text: string): readonly string[] {
  const pieces = text.split(/[;\n]|,(?!\d)|(?<!\d),/).map(piece => piece.trim());
  return isNone(text) ? [] : pieces.filter(piece => piece !== '');
}

/** Is an empty list, or nothing, what was typed? */
export function isNone(text: string): boolean {
  return /^\s*(?:none|nothing|-)?\s*$/i.test(text);
}

/** How an empty list is written. */
export const NONE = 'none';
