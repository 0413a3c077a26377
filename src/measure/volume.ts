import { formatAbout } from './format-number.js';
import { feet, inches } from './inch.js';
import type { CubicMm, Display, Milliliters } from './quantities.js';

/**
 * The US gallon is 231 cubic inches, and a fluid ounce 1/128 of it (NIST Handbook 44, Appendix C).
 */
const CUBIC_INCHES_PER_GALLON = 231;
const FLUID_OUNCES_PER_GALLON = 128;
const CUBIC_MM_PER_ML = 1000;
const CUBIC_MM_PER_LITER = 1_000_000;

/** US gallons as ml: one is 3785.411784. */
export function gallons(n: number): Milliliters {
  return (n * CUBIC_INCHES_PER_GALLON * inches(1) ** 3) / CUBIC_MM_PER_ML;
}

/** Ml as US gallons. */
export function toGallons(volume: Milliliters): number {
  return volume / gallons(1);
}

/** US fluid ounces as ml: eight are 236.6. */
export function fluidOunces(n: number): Milliliters {
  return gallons(n / FLUID_OUNCES_PER_GALLON);
}

/** Cubic feet as mm3: one is 28316846.592. */
export function cubicFeet(n: number): CubicMm {
  return n * feet(1) ** 3;
}

/** Mm3 as cubic feet. */
export function toCubicFeet(space: CubicMm): number {
  return space / cubicFeet(1);
}

/**
 * A liquid to buy or brush: "8 fl oz", "1.5 gal" from half a gallon on; "240 ml", "1.5 l" from a
 * liter on.
 */
export function formatVolume(volume: Milliliters, display: Display): string {
  if (display.system === 'metric') {
    return volume < 999.5 ? `${formatAbout(volume)} ml` : `${formatAbout(volume / 1000)} l`;
  }
  const trade = toGallons(volume);
  return trade < 0.5
    ? `${formatAbout(trade * FLUID_OUNCES_PER_GALLON)} fl oz`
    : `${formatAbout(trade)} gal`;
}

/** The room inside a planter, or of soil: "2.5 cu ft" or "71 l". */
export function formatSpace(space: CubicMm, display: Display): string {
  if (display.system === 'metric') return `${formatAbout(space / CUBIC_MM_PER_LITER)} l`;
  return `${formatAbout(toCubicFeet(space))} cu ft`;
}
