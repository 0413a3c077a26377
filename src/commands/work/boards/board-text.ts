import { parseMoney } from '../../../measure/money.js';
import { type Parsed, parsed, quoted, unreadable } from '../../../measure/parsed.js';
import type { Display } from '../../../measure/quantities.js';
import { stretchReadings } from '../../../measure/stretch.js';
import type { Defect, ForSale, InHand, Wanted } from './boards-ask.js';
import { sawLength, splitCount, splitName } from './counted-text.js';

/** `21in*4` or `seat=21in*4`: four pieces of 21 in. */
export function pieceFrom(text: string, system: Display['system']): Parsed<Wanted> {
  const named = splitName(text);
  if (!named.ok) return named;
  const counted = splitCount(named.value.rest);
  if (!counted.ok) return counted;
  const length = sawLength(counted.value.rest, system);
  if (!length.ok) return length;
  const { count = 1 } = counted.value;
  return parsed({ name: named.value.name, length: length.value, count });
}

/** `8ft@7.48*3`: three boards of 8 ft at 7.48 each; price and number may be left out. */
export function boardFrom(text: string, system: Display['system']): Parsed<ForSale> {
  const named = splitName(text);
  if (!named.ok) return named;
  const counted = splitCount(named.value.rest);
  if (!counted.ok) return counted;
  const [long = '', cost, ...more] = counted.value.rest.split('@');
  if (more.length > 0)
    return unreadable(`${quoted(text)} has two prices.`, 'Write one, such as 8ft@7.48.');
  const length = sawLength(long, system);
  if (!length.ok) return length;
  const price = cost === undefined ? undefined : parseMoney(cost);
  if (price?.ok === false) return price;
  return parsed({
    name: named.value.name,
    length: length.value,
    ...(price === undefined ? {} : { price: price.value }),
    ...(counted.value.count === undefined ? {} : { limit: counted.value.count }),
  });
}

/** `52in*2`, or `96in:10in-14in:60in-61in` with what cannot be used, measured from one end. */
export function handFrom(text: string, system: Display['system']): Parsed<InHand> {
  const named = splitName(text);
  if (!named.ok) return named;
  const counted = splitCount(named.value.rest);
  if (!counted.ok) return counted;
  const [long = '', ...bad] = counted.value.rest.split(':');
  const length = sawLength(long, system);
  if (!length.ok) return length;
  const defects: Defect[] = [];
  for (const part of bad) {
    const defect = defectFrom(part, system);
    if (!defect.ok) return defect;
    if (defect.value.from >= length.value)
      return unreadable(
        `The defect ${quoted(part)} lies beyond the end of the board.`,
        'Measure it from one end, such as 96in:10in-14in.',
      );
    defects.push(defect.value);
  }
  defects.sort((a, b) => a.from - b.from);
  const { count = 1 } = counted.value;
  return parsed({ name: named.value.name, length: length.value, defects, count });
}

/** Where a board cannot be used: `10-1/2in-14in`. */
function defectFrom(text: string, system: Display['system']): Parsed<Defect> {
  const [only, other] = stretchReadings(text, end => sawLength(end, system));
  if (only !== undefined && other === undefined) return parsed(only);
  return unreadable(
    only === undefined
      ? `${quoted(text)} does not say from where to where.`
      : `${quoted(text)} can be read in two ways.`,
    'Write both ends with their units, such as 96in:10in-14in.',
  );
}
