import type { Figure } from '../measure/figure.js';
import type { Weather } from './told-day.js';

/** One condition that a day has to meet, with the figure it hangs on. */
export type DayRule = {
  readonly name: string;
  readonly text: string;
  readonly limit: Figure;
  /** What is read off on the day to see whether it is met. */
  readonly asks?: keyof Weather;
};

/** The words of a rule, and that its figure was not looked up again, where that is so. */
export function dayRuleText({ text, limit }: DayRule): string {
  return limit.source.standing === 'memory' ? `${text} (from memory, not re-checked)` : text;
}
