import { squareInches } from './area.js';
import { poundsForce } from './force.js';
import { formatNumber } from './format-number.js';
import type { Display } from './quantities.js';

/** Stress and strength are in N/mm2 (MPa) inside. */
export type Megapascals = number;

/** Pounds-force on a square inch as N/mm2: `psi(1000)` is 6.895. */
export function psi(n: number): Megapascals {
  return (n * poundsForce(1)) / squareInches(1);
}

/** N/mm2 as pounds-force on a square inch: 6.895 is 1000. */
export function toPsi(stress: Megapascals): number {
  return stress / psi(1);
}

/** A stress in wood: "1103 psi", or "7.6 N/mm2"; two decimals below one. */
export function formatStress(stress: Megapascals, display: Display): string {
  if (display.system === 'inch') return `${formatNumber(toPsi(stress), 0)} psi`;
  return `${formatNumber(stress, stress < 1 ? 2 : 1)} N/mm2`;
}
