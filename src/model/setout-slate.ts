import type { Mm } from '../measure/quantities.js';
import { lessThan, sameLength } from '../measure/tolerance.js';
import { flagOf, lengthOf, numberOf, type Scope } from '../recipe/evaluate.js';
import type { Formula } from '../recipe/formula.js';
import { isProblem } from '../recipe/parse-formula.js';
import type { Place } from '../recipe/place.js';
import type { Problem } from '../recipe/problem.js';
import type { Triple } from '../recipe/recipe.js';
import type { Point } from './part.js';

/** More boards than any piece that a person builds by hand; a slip in a count asks for millions. */
export const MOST_PARTS = 2000;

/**
 * Where problems are chalked up while a piece is set out, each once, so that an author hears of all of
 * them together. Every reading gives undefined where it could not be had.
 */
export class Slate {
  private readonly found = new Map<string, Problem>();

  note(problem: Problem): undefined {
    this.found.set(JSON.stringify(problem), problem);
  }

  /** In the order of the file. */
  get problems(): readonly Problem[] {
    return [...this.found.values()].sort(
      (a, b) => a.at.line - b.at.line || a.at.column - b.at.column,
    );
  }

  /** What was found, or undefined with its problem noted. */
  take<T extends object | number | boolean>(found: T | Problem): T | undefined {
    return typeof found === 'object' && isProblem(found) ? this.note(found) : found;
  }

  length(formula: Formula, scope: Scope): Mm | undefined {
    return this.take(lengthOf(formula, scope));
  }

  /** The length of a board, which has to have some. */
  boardLength(formula: Formula, scope: Scope, part: string): Mm | undefined {
    const length = this.length(formula, scope);
    if (length === undefined || lessThan(0, length)) return length;
    return this.note({ kind: { is: 'no-length', part, length }, at: formula.at });
  }

  /** A whole number, 0 or more. */
  count(formula: Formula, scope: Scope, what: string): number | undefined {
    const count = this.take(numberOf(formula, scope));
    if (count === undefined) return undefined;
    const whole = Math.round(count);
    if (whole >= 0 && sameLength(whole, count)) return whole;
    return this.note({ kind: { is: 'bad-count', what, count }, at: formula.at });
  }

  /** Whether a condition holds; there is none where nothing is written. */
  holds(formula: Formula | undefined, scope: Scope): boolean {
    return formula === undefined || this.take(flagOf(formula, scope)) === true;
  }

  point([first, second, third]: Triple, scope: Scope): Point | undefined {
    const x = this.length(first, scope);
    const y = this.length(second, scope);
    const z = this.length(third, scope);
    return x === undefined || y === undefined || z === undefined ? undefined : { x, y, z };
  }

  /** False when so many boards together are more than anybody builds. */
  hasRoomFor(count: number, at: Place): boolean {
    if (count <= MOST_PARTS) return true;
    this.note({ kind: { is: 'too-many-parts', most: MOST_PARTS }, at });
    return false;
  }
}
