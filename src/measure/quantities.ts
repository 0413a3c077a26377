/**
 * What a plain number stands for. These are aliases, not brands: arithmetic stays ordinary, and the
 * name in a signature tells the unit. There is one unit inside for each kind.
 */
export type Mm = number;
export type SquareMm = number;
export type CubicMm = number;
export type Kilograms = number;
export type Grams = number;
export type Milliliters = number;
export type Celsius = number;
export type Minutes = number;
/** Money in whole cents of whatever currency the prices were typed in. */
export type Cents = number;

/** How lengths are written for a person, and the finest mark they will make on wood. */
export type Display = {
  readonly system: 'inch' | 'metric';
  /** Spacing of the marking grid in mm: 25.4/16, 25.4/32, 25.4/64, 1 or 0.5. */
  readonly grid: Mm;
};
