import type { Kilograms, Mm } from '../measure/quantities.js';
import { atMost } from '../measure/tolerance.js';
import { practice } from './sources.js';

/** A piece that stands on feet, seen along the line it would tip over. */
export type Tipping = {
  /** What it weighs, and how far its middle is inside the outer edge of the feet. */
  readonly weight: Kilograms;
  readonly arm: Mm;
  /** A load, and how far outside that edge it sits; zero or less when it sits within the feet. */
  readonly load: Kilograms;
  readonly overhang: Mm;
};

export type TippingResult = {
  /** Share of the piece's own steadiness that the load uses up; over 1 it tips. */
  readonly share: number;
  /** What would just lift the other side; infinite within the feet. */
  readonly mostLoad: Kilograms;
};

export const TIPPING_SOURCE = practice('levers about the outer edge of the feet');

/** It is called steady only up to this share: people lean, sit down hard and shift. */
export const STEADY_SHARE = 1 / 1.5;

export const STEADY_SOURCE = practice('one and a half times as steady as the sum asks');

/**
 * Weight inside the feet against weight outside: levers about the outer edge of the feet. Pushing,
 * climbing, wind and uneven ground are not in it.
 * @example tipping({ weight: pounds(60), arm: inches(9), load: pounds(250), overhang: inches(2) })
 * // share 0.93: 500 against 540 lb in
 */
export function tipping({ weight, arm, load, overhang }: Tipping): TippingResult {
  if (atMost(overhang, 0)) return { share: 0, mostLoad: Number.POSITIVE_INFINITY };
  if (arm <= 0) return { share: Number.POSITIVE_INFINITY, mostLoad: 0 };
  return { share: (load * overhang) / (weight * arm), mostLoad: (weight * arm) / overhang };
}
