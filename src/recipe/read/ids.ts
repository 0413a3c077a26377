import { OPERATOR_WORDS } from '../parse-formula.js';
import type { Place } from '../place.js';
import type { Log } from './log.js';
import { asMap, type Named, type Reader } from './reader.js';

const NAME = /^[a-z][a-z0-9_]*$/;
const HYPHENS = /^[a-z0-9][a-z0-9_-]*$/;
const LONGEST = 60;

/** Words that mean something else in a formula; `floor` does so only before a parenthesis. */
const RESERVED: readonly string[] = [
  ...OPERATOR_WORDS,
  ...['ft', 'in', 'm', 'cm', 'mm', 'yes', 'no', 'true', 'false'],
  ...['item', 'patch', 'whole'],
];

export type IdStyle = 'name' | 'hyphens';

/**
 * An id that formulas and files can hold: small letters, digits and underscores, beginning with a
 * letter. With style `hyphens` it is never used in a formula, and 2x4 or cut-frame will do.
 */
export function idText(id: string, at: Place, { log, style }: { log: Log; style: IdStyle }) {
  const fits = id.length <= LONGEST && (style === 'name' ? NAME : HYPHENS).test(id);
  if (!fits) return log.say({ is: 'bad-id', id, hyphens: style === 'hyphens' }, at);
  if (style === 'name' && RESERVED.includes(id)) return log.say({ is: 'reserved-id', id }, at);
  return id;
}

type NamedWords<T> = {
  readonly what: string;
  readonly read: Reader<T>;
  readonly most: number;
  readonly style?: IdStyle;
};

/** Reads `name: entry` pairs in their order, each with the place of its name. */
export function named<T>({ what, read, most, style }: NamedWords<T>): Reader<readonly Named<T>[]> {
  return (entry, log) => {
    if (entry.kind === 'scalar' && entry.text === '') return [];
    const map = asMap(entry, log, what);
    if (map === undefined) return undefined;
    if (map.pairs.length > most) {
      return log.say({ is: 'too-many', what, count: map.pairs.length, most }, map.at);
    }
    const all: Named<T>[] = [];
    for (const { key, at, value } of map.pairs) {
      const id = idText(key, at, { log, style: style ?? 'name' });
      const read_ = read(value, log);
      if (id !== undefined && read_ !== undefined) all.push({ id, at, value: read_ });
    }
    return all.length === map.pairs.length ? all : undefined;
  };
}
