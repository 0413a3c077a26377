import type { Minutes } from './quantities.js';

/** A day, in minutes. */
export const DAY: Minutes = 24 * 60;
/** A minute, an hour and a day of the clock, in milliseconds. */
export const MINUTE_MS = 60_000;
export const HOUR_MS = 60 * MINUTE_MS;
export const DAY_MS = 24 * HOUR_MS;
