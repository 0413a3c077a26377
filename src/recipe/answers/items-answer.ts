import { formatLengthExact } from '../../measure/format-length.js';
import { parseLength } from '../../measure/length.js';
import { type Parsed, parsed, quoted, unreadable } from '../../measure/parsed.js';
import type { Display } from '../../measure/quantities.js';
import type { Item } from '../values.js';
import { NONE, splitList } from './split-list.js';

const MOST = 40;

/**
 * Things with their lengths in the order of `fields`: `11-1/2 in x 10-3/4 in, 9in x 10in` for pots with
 * height and diameter.
 */
export function parseItems(
  text: string,
  fields: readonly string[],
  assume: Display['system'],
): Parsed<readonly Item[]> {
  const items: Item[] = [];
  for (const piece of splitList(text)) {
    const item = parseItem(piece, fields, assume);
    if (!item.ok) return item;
    items.push(item.value);
  }
  if (items.length <= MOST) return parsed(items);
  return unreadable(`These are ${items.length} things, more than ${MOST}.`, 'Leave some out.');
}

function parseItem(
  text: string,
  fields: readonly string[],
  assume: Display['system'],
): Parsed<Item> {
  const sizes = text.split(/\s*[x×]\s*/i);
  if (sizes.length !== fields.length) {
    const hint = `Write ${fields.join(' x ')} of each, such as ${example(fields, assume)}.`;
    const has = sizes.length === 1 ? 'one size' : `${sizes.length} sizes`;
    return unreadable(`${quoted(text)} has ${has}, not ${fields.length}.`, hint);
  }
  const item: Record<string, number> = {};
  for (const [place, field] of fields.entries()) {
    const size = parseLength(sizes[place] ?? '', assume);
    if (!size.ok) return size;
    if (size.value === 0) {
      return unreadable(`In ${quoted(text)} the ${field} is zero.`, 'Measure it and write it.');
    }
    item[field] = size.value;
  }
  return parsed(item);
}

function example(fields: readonly string[], assume: Display['system']): string {
  const sizes = assume === 'inch' ? ['11-1/2 in', '10-3/4 in'] : ['290 mm', '270 mm'];
  return fields.map((_, place) => sizes[place % 2]).join(' x ');
}

/** The same list as it is typed. */
export function itemsText(items: readonly Item[], fields: readonly string[], display: Display) {
  if (items.length === 0) return NONE;
  const written = items.map(item =>
    fields.map(field => formatLengthExact(item[field] ?? 0, display)).join(' x '),
  );
  return written.join(', ');
}
