import type { Key } from '../screen.js';
import { type Field, fieldOf, fieldText, typeInto } from './field.js';

/** A line with an answer suggested in it: the answer counts as long as nothing is typed. */
export type Suggested = { readonly field: Field; readonly suggested: string };

/** A line in which this is suggested. */
export function suggest(suggested: string): Suggested {
  return { field: fieldOf(''), suggested };
}

export function isUntyped({ field }: Suggested): boolean {
  return fieldText(field) === '';
}

/** What counts if enter is pressed now. */
export function suggestedText(line: Suggested): string {
  const typed = fieldText(line.field);
  return typed.trim() === '' ? line.suggested : typed;
}

/**
 * The line after a key, or nothing where the key is none of its own. What is typed takes the place of the
 * suggestion; right or end makes it one's own text, to be changed. A space alone is a clicker or a dusty thumb.
 */
export function typeOver(line: Suggested, key: Key): Suggested | undefined {
  if (isUntyped(line)) {
    if (key.name === 'right' || key.name === 'end') {
      return { ...line, field: fieldOf(line.suggested) };
    }
    if (key.name === 'space') return line;
  }
  const field = typeInto(line.field, key);
  return field === undefined ? undefined : { ...line, field };
}

/** The key that changes a suggestion, as long as there is one to change. */
export const CHANGE = { key: 'right', does: 'change it' } as const;
