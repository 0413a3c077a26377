import { formatFeet, formatLengthExact } from '../../measure/format-length.js';
import { formatNumber } from '../../measure/format-number.js';
import { type Parsed, parsed, unreadable } from '../../measure/parsed.js';
import type { Display } from '../../measure/quantities.js';
import { lessThan } from '../../measure/tolerance.js';
import { lengthOf, numberOf, type Scope } from '../evaluate.js';
import type { Formula } from '../formula.js';
import type { Question } from '../recipe.js';

export type Range = { readonly from: number | undefined; readonly to: number | undefined };

/** The range of a question with its formulas worked out; an end that cannot be is no limit. */
export function rangeOf({ kind, from, to }: Question, scope: Scope): Range {
  const end = (formula: Formula | undefined) => {
    if (formula === undefined) return undefined;
    const value = kind === 'length' ? lengthOf(formula, scope) : numberOf(formula, scope);
    return typeof value === 'number' ? value : undefined;
  };
  return { from: end(from), to: end(to) };
}

/** How the numbers of a question are said: as they are, and as a limit. */
export type Said = {
  readonly value: (value: number) => string;
  readonly limit: (value: number) => string;
};

/** "7 ft (84 in)" for a limit that is whole feet. */
export function lengthsSaid(display: Display): Said {
  if (display.system === 'metric') {
    const value = (length: number) => formatLengthExact(length, display);
    return { value, limit: value };
  }
  const inches = (length: number) => formatLengthExact(length, display);
  const feet = (length: number) => {
    const whole = formatFeet(length);
    return whole.endsWith(' ft') ? whole : inches(length);
  };
  const both = (length: number) =>
    feet(length) === inches(length) ? inches(length) : `${feet(length)} (${inches(length)})`;
  return { value: feet, limit: length => (length === 0 ? '0 in' : both(length)) };
}

export function numbersSaid(unit: string): Said {
  const said = (value: number) => `${formatNumber(value, 2)}${unit}`;
  return { value: said, limit: said };
}

/**
 * The value when it lies in the range, both ends included. "20 ft is more than 7 ft (84 in)." is the
 * problem and "From 30 in to 84 in." the hint.
 */
export function inRange(value: number, { from, to }: Range, said: Said): Parsed<number> {
  if (to !== undefined && lessThan(to, value)) {
    return unreadable(
      `${said.value(value)} is more than ${said.limit(to)}.`,
      rangeText({ from, to }, said),
    );
  }
  if (from !== undefined && lessThan(value, from)) {
    return unreadable(
      `${said.value(value)} is less than ${said.limit(from)}.`,
      rangeText({ from, to }, said),
    );
  }
  return parsed(value);
}

function rangeText({ from, to }: Range, said: Said): string {
  const plain = (value: number) => said.limit(value).replace(/^.* \((.*)\)$/, '$1');
  if (from === undefined) return to === undefined ? '' : `At most ${plain(to)}.`;
  return to === undefined ? `At least ${plain(from)}.` : `From ${plain(from)} to ${plain(to)}.`;
}
