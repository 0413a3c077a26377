import type { PlaceOf } from '../formula-tokens.js';
import type { Place } from '../place.js';

/** What stands in a project file, before anybody knows what it means: texts, lists and named things. */
export type Entry = ScalarEntry | ListEntry | MapEntry;

/** Every single value is a text here, numbers and yes or no too: its reader knows what it should be. */
export type ScalarEntry = {
  readonly kind: 'scalar';
  readonly text: string;
  readonly at: Place;
  /** Where a letter of the text stands in the file. */
  readonly placeOf: PlaceOf;
};

export type ListEntry = {
  readonly kind: 'list';
  readonly items: readonly Entry[];
  readonly at: Place;
};

export type MapEntry = {
  readonly kind: 'map';
  readonly pairs: readonly Pair[];
  readonly at: Place;
};

export type Pair = { readonly key: string; readonly at: Place; readonly value: Entry };

/** What an entry looks like, for "a list was wanted, this is ...". */
export function shapeOf(entry: Entry): string {
  if (entry.kind === 'list') return 'a list';
  if (entry.kind === 'map') return 'a group of words with values';
  return entry.text === '' ? 'nothing' : 'a single value';
}
