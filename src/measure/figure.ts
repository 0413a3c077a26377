/**
 * A number that can answer "where from?". Everything a plan shows is a figure: its value and unit,
 * the rule in words with the numbers put in, and the source of the rule.
 */
export type Standing =
  /** The number was seen in the named publication or a copy of it. */
  | 'checked'
  /** Remembered from the named publication, not looked up. */
  | 'memory'
  /** What people in the trade do; nobody published it as a rule. */
  | 'practice'
  /** Arithmetic on other figures or on the boards in space. */
  | 'computed'
  /** The user said so. */
  | 'answer';

export type Source = {
  readonly publication: string;
  /** Table, section or equation. */
  readonly place?: string;
  readonly standing: Standing;
};

export type Unit =
  | 'mm'
  | 'mm2'
  | 'mm3'
  | 'kg'
  | 'g'
  | 'kg/m2'
  | 'MPa'
  | 'ml'
  | 'C'
  | 'min'
  | 'cents'
  | 'count'
  | 'percent'
  | 'ratio';

export type Figure = {
  readonly value: number;
  readonly unit: Unit;
  /** The rule in words with the numbers put in, for example "48 in less two posts of 3-1/2 in". */
  readonly because: string;
  readonly source: Source;
};

export const COMPUTED: Source = { publication: 'arithmetic on this plan', standing: 'computed' };
export const ANSWERED: Source = { publication: 'your answer', standing: 'answer' };
/** Found with the tape at the bench. */
export const MEASURED: Source = { publication: 'measured at the bench', standing: 'answer' };
export const COMMON_PRACTICE: Source = { publication: 'common practice', standing: 'practice' };
