import type { Minutes } from '../measure/quantities.js';

const LEVEL_FOR_A_DAY = 85;
const DAY: Minutes = 480;
const HALVED_EVERY = 3;

/**
 * How long unprotected ears may take a level in one day: 8 h at 85 dB(A), halved for every 3 dB more
 * (NIOSH). It is a reason to protect them, not a time to use up.
 * @example noiseMinutes(100) // 15 min
 */
export function noiseMinutes(level: number): Minutes {
  return DAY / 2 ** ((level - LEVEL_FOR_A_DAY) / HALVED_EVERY);
}
