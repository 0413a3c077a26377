import { squareFeet, squareInches, squareMeters } from './area.js';
import { readDecimal } from './decimal.js';
import { type Parsed, parsed, quoted, unreadable } from './parsed.js';
import type { Display, SquareMm } from './quantities.js';

const NUMBER = /^(\d[\d.,]*)\s*(.*)$/;

const UNITS: readonly (readonly [RegExp, SquareMm])[] = [
  [/^(?:sq\.? ?ft|sq\.? ?feet|ft2|sqft|sf|square feet)$/, squareFeet(1)],
  [/^(?:sq\.? ?in|in2|sqin|square inches)$/, squareInches(1)],
  [/^(?:m2|m²|sq\.? ?m|sqm|square meters)$/u, squareMeters(1)],
  [/^(?:cm2|cm²|sq\.? ?cm|square centimeters)$/u, squareMeters(1e-4)],
];

/**
 * An area as people write it, in mm2: `800 sq ft`, `75 m2`, `155 sq in`. A number without a unit is
 * square feet or square meters by `assume`. Refused: minus, numbers with two readings, anything else.
 */
export function parseArea(text: string, assume: Display['system']): Parsed<SquareMm> {
  const example = assume === 'inch' ? '800 sq ft' : '75 m2';
  const [, digits = '', word = ''] = NUMBER.exec(text.trim().toLowerCase()) ?? [];
  const unit = word === '' ? (assume === 'inch' ? 'sq ft' : 'm2') : word;
  const [, scale] = UNITS.find(([spelling]) => spelling.test(unit)) ?? [];
  const read = readDecimal(digits);
  if (scale === undefined || read.kind === 'none')
    return unreadable(`${quoted(text)} is not an area.`, `Write it such as ${example}.`);
  if (read.kind === 'two-readings')
    return unreadable(`${quoted(text)} can be read in two ways.`, `Write ${read.asThousands}.`);
  return parsed(Number(read.digits) * scale);
}
