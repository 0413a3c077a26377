import { inches } from './inch.js';
import type { Display } from './quantities.js';

/** Inches on a tape marked in sixteenths: what a plan shows unless the user asks otherwise. */
export const SIXTEENTHS: Display = { system: 'inch', grid: inches(1 / 16) };
/** Inches to 1/32. */
export const THIRTY_SECONDS: Display = { system: 'inch', grid: inches(1 / 32) };
/** Inches to 1/64, for a steel rule and a knife. */
export const SIXTY_FOURTHS: Display = { system: 'inch', grid: inches(1 / 64) };
/** Whole millimeters. */
export const MILLIMETERS: Display = { system: 'metric', grid: 1 };
/** Half millimeters. */
export const HALF_MILLIMETERS: Display = { system: 'metric', grid: 0.5 };
