import { inches } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import { atMost } from '../measure/tolerance.js';

/** Common practice: anything from a foot up goes back on the rack, the rest in the stove. */
export const WORTH_KEEPING: Mm = inches(12);

/** Whether an offcut is long enough to keep: 12 in is, 11-15/16 in is waste. */
export function isWorthKeeping(offcut: Mm): boolean {
  return atMost(WORTH_KEEPING, offcut);
}
