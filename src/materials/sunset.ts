import type { Minutes } from '../measure/quantities.js';
import { sourced } from './sourced.js';
import { practice } from './sources.js';

/** Where nobody says how far north it is: halfway between the equator and the pole. */
export const USUAL_LATITUDE = sourced(
  45,
  practice('the middle of the temperate zone; look at the sky or an almanac of the place'),
);
/** Any place, on the mean of the year. */
export const MEAN_SUNSET = sourced<Minutes>(18 * 60, practice('12 h after sunrise at the equinox'));
/** Declination of the sun, from memory after Cooper, "The absorption of solar radiation in solar stills", 1969. */
const TILT = 23.45;
const EQUINOX_DAY = 284;
const DEGREE = Math.PI / 180;

/**
 * Sunset by the sun's own time, in minutes since midnight, at the usual latitude of the north. Summer time and the edges
 * of a time zone move the clock by an hour or so, mostly to later.
 * @param dayOfYear 1 for January 1
 * @example sunsetOn(172) // about 19:43 at midsummer
 */
export function sunsetOn(dayOfYear: number): Minutes {
  const declination = TILT * Math.sin(((EQUINOX_DAY + dayOfYear) / 365) * 2 * Math.PI);
  const cosine = -Math.tan(USUAL_LATITUDE.value * DEGREE) * Math.tan(declination * DEGREE);
  const hourAngle = Math.acos(Math.max(-1, Math.min(1, cosine))) / DEGREE;
  return Math.round(12 * 60 + hourAngle * 4);
}
