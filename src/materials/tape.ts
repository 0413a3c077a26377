import { feet, inches } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import { atMost } from '../measure/tolerance.js';
import { sourced } from './sourced.js';
import { practice, recalled, seen } from './sources.js';

/** What a metal tape may be wrong by, from zero to a length, in the United States. */
export const HB44_TAPE = sourced<readonly { readonly to: Mm; readonly error: Mm }[]>(
  [
    { to: feet(6), error: inches(1 / 32) },
    { to: feet(30), error: inches(1 / 16) },
    { to: feet(55), error: inches(1 / 8) },
    { to: feet(80), error: inches(3 / 16) },
    { to: feet(100), error: inches(1 / 4) },
  ],
  seen('hb44', 'section 5.52, by length from zero'),
);

export type TapeClass = 'I' | 'II' | 'III';

/** a + b L in mm, L in meters rounded up. */
export const EU_TAPE = sourced<Readonly<Record<TapeClass, { readonly a: Mm; readonly b: Mm }>>>(
  { I: { a: 0.1, b: 0.1 }, II: { a: 0.3, b: 0.2 }, III: { a: 0.6, b: 0.4 } },
  recalled('eu-tapes', 'classes I, II and III'),
);

const METER: Mm = 1000;

/** What a European tape of a class may be wrong by: class II at 5 m is 1.3 mm. */
export function euTapeError(tape: TapeClass, length: Mm): Mm {
  const { a, b } = EU_TAPE.value[tape];
  return a + b * Math.ceil(length / METER - 1e-9);
}

/** What a US tape may be wrong by, or undefined beyond 100 ft: 1/16 in at 10 ft. */
export function usTapeError(length: Mm): Mm | undefined {
  return HB44_TAPE.value.find(({ to }) => atMost(length, to))?.error;
}

/** Hooked and pushed readings of one board may differ by this before the tape is set aside. */
export const HOOK_MAY_DIFFER = sourced<Mm>(
  inches(1 / 32),
  practice(
    'hooked against pushed, more than 1/32 in apart: another tape, or start at the 1 in mark',
  ),
);

export type TapeCheck = { readonly differs: Mm; readonly good: boolean };

/**
 * The two-minute check: one board measured with the hook over its end, then pushed against a stop.
 * @example tapeCheck(inches(30), inches(30 + 1 / 16)) // 1/16 in: set it aside
 */
export function tapeCheck(hooked: Mm, pushed: Mm): TapeCheck {
  const differs = Math.abs(hooked - pushed);
  return { differs, good: atMost(differs, HOOK_MAY_DIFFER.value) };
}

export type StepOff = {
  /** All steps off the same way. */
  readonly worst: Mm;
  /** Steps off either way by chance. */
  readonly likely: Mm;
};

/**
 * What becomes of a small error at each step when marks are stepped off one from another. Measured
 * from one end, each mark keeps its one error.
 * @example stepOff(12, inches(1 / 32)) // 3/8 in at worst, 0.11 in likely
 */
export function stepOff(steps: number, error: Mm): StepOff {
  return { worst: steps * error, likely: Math.sqrt(steps) * error };
}
