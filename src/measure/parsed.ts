/**
 * What reading a person's text gives: the value, or what is wrong in plain words (`problem`) and
 * what to write instead, with an example (`hint`). Both are whole sentences.
 */
export type Parsed<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: string; readonly hint: string };

/** A text that was read: `parsed(1181.1)`. */
export function parsed<T>(value: T): Parsed<T> {
  return { ok: true, value };
}

/** A text that could not be read: `unreadable('"5/0" divides by zero.', 'Write 5/8 in.')`. */
export function unreadable(problem: string, hint: string): Parsed<never> {
  return { ok: false, problem, hint };
}

const LONGEST_QUOTE = 32;

/**
 * What the person typed, in quotes, fit to stand in a problem: control characters are dropped and a
 * long text is cut with "...", so that a pasted page cannot flood or steer the terminal.
 */
export function quoted(text: string): string {
  const plain = text.replace(/\p{C}+/gu, ' ').trim();
  const letters = Array.from(plain);
  if (letters.length <= LONGEST_QUOTE) return `"${plain}"`;
  return `"${letters.slice(0, LONGEST_QUOTE).join('')}..."`;
}
