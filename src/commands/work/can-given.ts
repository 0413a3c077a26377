import type { ContainerSize } from '../../materials/containers.js';
import { formatArea } from '../../measure/area.js';
import { parseArea } from '../../measure/area-text.js';
import { parseMoney } from '../../measure/money.js';
import { type Parsed, parsed, quoted, unreadable } from '../../measure/parsed.js';
import type { SquareMm } from '../../measure/quantities.js';
import type { CanOffer } from '../../plan/cans.js';
import type { Given } from './rule.js';

/** More than a house: a slip of the keys. */
const MOST_AREA = 2e9;

/** All that is to be coated, or what is wrong with it. */
export function readArea({ word, display }: Given): Parsed<SquareMm> {
  const area = parseArea(word('area'), display.system);
  if (!area.ok || (area.value > 0 && area.value <= MOST_AREA)) return area;
  return unreadable(
    `${formatArea(area.value, display)} is out of range.`,
    `From more than nothing to ${formatArea(MOST_AREA, display)}.`,
  );
}

/** Cans on the shelf from `gallon=38.50` and the like; without any, all usual sizes and no prices. */
export function readPrices(
  texts: readonly string[],
  sizes: readonly ContainerSize[],
): Parsed<readonly CanOffer[]> {
  if (texts.length === 0) return parsed(sizes);
  const offers: CanOffer[] = [];
  for (const text of texts) {
    const [name = '', price = ''] = text.split('=');
    const size = sizes.find(it => plain(it.name) === plain(name));
    if (size === undefined)
      return unreadable(
        `--price: ${quoted(text)} names no can sold here.`,
        `Write ${sizes.map(it => `"${it.name}=38.50"`).join(', ')}.`,
      );
    const read = parseMoney(price);
    if (!read.ok) return unreadable(`--price ${name}: ${read.problem}`, read.hint);
    offers.push({ ...size, price: read.value });
  }
  return parsed(offers);
}

/** `2.5 l can` and `2.5l` are the same can. */
function plain(name: string): string {
  return name.toLowerCase().replace(/\s|can$/g, '');
}
