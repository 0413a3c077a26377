import type { Mm } from './quantities.js';

/**
 * An inch is exactly 25.4 mm, that is 127/5: international yard and pound agreement, 1959; NIST SP
 * 811, Appendix B. Taken as a ratio of whole numbers, so that halves, quarters and so on down to
 * 1/64 come out as the nearest number there is: 3.5 x 25.4 is 88.89999999999999 in binary.
 */
const MM = 127;
const PER_INCHES = 5;
const INCHES_PER_FOOT = 12;

/** Inches as mm: `inches(3.5)` is 88.9. */
export function inches(n: number): Mm {
  return (n * MM) / PER_INCHES;
}

/** Feet as mm: `feet(8)` is 2438.4. */
export function feet(n: number): Mm {
  return inches(n * INCHES_PER_FOOT);
}

/** Mm as inches: `toInches(88.9)` is 3.5. */
export function toInches(length: Mm): number {
  return (length * PER_INCHES) / MM;
}

/** Mm as feet: `toFeet(2438.4)` is 8. */
export function toFeet(length: Mm): number {
  return toInches(length) / INCHES_PER_FOOT;
}
