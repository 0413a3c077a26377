import type { Source } from '../measure/figure.js';
import { JOINING_PUBLICATIONS } from './publications-joining.js';
import { SHOP_PUBLICATIONS } from './publications-shop.js';
import { STRENGTH_PUBLICATIONS } from './publications-strength.js';
import { WOOD_PUBLICATIONS } from './publications-wood.js';
import { WORK_PUBLICATIONS } from './publications-work.js';

/** Every publication that a trade number here is taken from. */
export const PUBLICATIONS = {
  ...WOOD_PUBLICATIONS,
  ...JOINING_PUBLICATIONS,
  ...SHOP_PUBLICATIONS,
  ...STRENGTH_PUBLICATIONS,
  ...WORK_PUBLICATIONS,
};

export type PublicationId = keyof typeof PUBLICATIONS;

/** Source of a number that was read in the publication or a copy of it. */
export function seen(id: PublicationId, place: string): Source {
  return { publication: PUBLICATIONS[id].name, place, standing: 'checked' };
}

/** Source of a number remembered from the publication and not looked up. */
export function recalled(id: PublicationId, place: string): Source {
  return { publication: PUBLICATIONS[id].name, place, standing: 'memory' };
}

/** Source of a number worked out here from a published rule or table; `place` says how. */
export function workedOut(id: PublicationId, place: string): Source {
  return { publication: PUBLICATIONS[id].name, place, standing: 'computed' };
}

/** Source of a number that the trade uses without anybody publishing it; `place` says what for. */
export function practice(place: string): Source {
  return { publication: 'common practice', place, standing: 'practice' };
}
