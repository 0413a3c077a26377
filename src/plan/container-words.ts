import type { Containers } from '../materials/containers.js';
import { listWords } from '../text/list.js';

/** Bottles or cans as one reads them in a list: `1 x quart`. */
export function containerWords(containers: readonly Containers[]): string {
  if (containers.length === 0) return 'none';
  return listWords(containers.map(({ count, size }) => `${count} x ${size.name}`));
}
