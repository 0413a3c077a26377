import { readDecimal } from './decimal.js';
import { formatAbout } from './format-number.js';
import { type Parsed, parsed, quoted, unreadable } from './parsed.js';
import type { Display, Grams, Kilograms } from './quantities.js';

/** Exact by definition: international yard and pound agreement, 1959; NIST SP 811, Appendix B. */
const KG_PER_POUND = 0.45359237;
const OUNCES_PER_POUND = 16;

/** Pounds as kg: `pounds(40)` is 18.1437. */
export function pounds(n: number): Kilograms {
  return n * KG_PER_POUND;
}

/** Kg as pounds: 11 kg is 24.25. */
export function toPounds(weight: Kilograms): number {
  return weight / KG_PER_POUND;
}

/** A weight to lift or carry: "24 lb" or "11 kg", one decimal below ten. */
export function formatWeight(weight: Kilograms, display: Display): string {
  if (display.system === 'metric') return `${formatAbout(weight)} kg`;
  return `${formatAbout(toPounds(weight))} lb`;
}

/** A small weight, as of glue: "0.8 oz" or "23 g". */
export function formatGrams(weight: Grams, display: Display): string {
  if (display.system === 'metric') return `${formatAbout(weight)} g`;
  return `${formatAbout(toPounds(weight / 1000) * OUNCES_PER_POUND)} oz`;
}

const WEIGHT_TEXT = /^(\d[\d.,]*)\s*(lbs?|lbf|pounds?|#|kgs?|kilos?|kilograms?|kilogrammes?)?\.?$/;

/**
 * A weight as people write it, in kg: `250 lb`, `110 kg`, `250#`. Without a unit it is pounds or kg
 * by `assume`. Refused: minus, numbers with two readings such as `1,200`, anything else.
 */
export function parseWeight(text: string, assume: Display['system']): Parsed<Kilograms> {
  const hint = `Write it such as ${assume === 'inch' ? '250 lb' : '110 kg'}.`;
  const found = WEIGHT_TEXT.exec(text.trim().toLowerCase());
  const [, digits = '', unit = assume === 'inch' ? 'lb' : 'kg'] = found ?? [];
  const read = readDecimal(digits);
  if (found === null || read.kind === 'none') {
    return unreadable(`${quoted(text)} is not a weight.`, hint);
  }
  if (read.kind === 'two-readings') {
    return unreadable(`${quoted(text)} can be read in two ways.`, `Write ${read.asThousands}.`);
  }
  const value = Number(read.digits);
  return parsed(unit.startsWith('k') ? value : pounds(value));
}
