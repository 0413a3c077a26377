/** Terminal sequences as a whole, so that no stray "[31m" is left: CSI, OSC, then single escapes. */
const SEQUENCES =
  /(?:\x1b\[|\x9b)[0-?]*[ -/]*[@-~]|(?:\x1b\]|\x9d)[^\x07\x1b\x9c]*(?:\x07|\x1b\\|\x9c)?|\x1b[PX^_][^\x1b]*(?:\x1b\\)?|\x1b[ -~]?/g;
/** Marks that turn the reading direction around, and other letters nobody can see. */
const UNSEEN = /[\u061c\u200b\u200e\u200f\u2028\u2029\u202a-\u202e\u2060\u2066-\u2069\ufeff]/g;

/**
 * A text from a file or a keyboard as one line that a terminal may print: escape sequences, control
 * characters and unseen marks are dropped, every run of spaces and line ends is one space.
 */
export function cleanText(text: string): string {
  return cleanPiece(text).trim();
}

/** The same for a piece of a text, whose first and last space still matter. */
export function cleanPiece(text: string): string {
  return text
    .replace(SEQUENCES, '')
    .replace(/\s+/g, ' ')
    .replace(/[\p{Cc}\p{Cs}]/gu, '')
    .replace(UNSEEN, '');
}
