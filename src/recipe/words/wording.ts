/** What is wrong, and what to do about it: one or two whole sentences each; the hint may be empty. */
export type Wording = { readonly problem: string; readonly hint: string };

/** A way to say each kind of a union of kinds. */
export type WordsFor<Kind extends { readonly is: string }> = {
  readonly [K in Kind['is']]: (facts: Extract<Kind, { is: K }>) => Wording;
};

/** "Did you mean rail?", or nothing when no word is near. */
export function didYouMean(near: string | undefined): string {
  return near === undefined ? '' : `Did you mean ${near}?`;
}

const MOST_LISTED = 16;

/** "It can be x, y or z.", as far as there are few enough to help. */
export function choices(words: readonly string[]): string {
  const last = words.at(-1);
  if (last === undefined || words.length > MOST_LISTED) return '';
  if (words.length === 1) return `It can be ${last}.`;
  return `It can be ${words.slice(0, -1).join(', ')} or ${last}.`;
}

/** Sentences behind each other, leaving out those that are empty. */
export function sentences(...parts: readonly string[]): string {
  return parts.filter(part => part !== '').join(' ');
}
