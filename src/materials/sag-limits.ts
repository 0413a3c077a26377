import { type Sourced, sourced } from './sourced.js';
import { practice, recalled, seen } from './sources.js';

/** A sag is told as the span divided by a number: 240 is one part in 240. */
export const SAG_LIMITS = {
  /** Seats and shelves: more feels soft. */
  seat: sourced(240, practice('bench seats and shelves, span / 240 to span / 360')),
  /** A little give under people, about span / 180 to span / 240. */
  springy: sourced(180, practice('picnic seats, span / 180 at the softest')),
  floorLive: sourced(360, seen('ibc-deflection', 'floor members, live load')),
  floorAll: sourced(240, seen('ibc-deflection', 'floor members, dead and live load')),
  greenhouse: sourced(120, seen('ibc-deflection', 'greenhouses')),
  others: sourced(240, seen('irc-deflection', 'all other structural members')),
  europeFinal: sourced(150, recalled('ec5', 'Table 7.2, in the end, span / 150 to span / 300')),
} as const satisfies Record<string, Sourced<number>>;
