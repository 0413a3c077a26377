import type { TradeWord } from '../materials/trade-words.js';
import { wordsIn } from '../materials/words-met.js';
import type { Step } from './plan.js';

/** Words of the trade that somebody meets at a step, in the order of the alphabet. */
export function wordsOfStep(step: Step): readonly TradeWord[] {
  return wordsIn(textsOf(step));
}

/** All words of the trade that a build uses. */
export function wordsOfSteps(steps: readonly Step[]): readonly TradeWord[] {
  return wordsIn(steps.flatMap(textsOf));
}

function textsOf({ title, say, why, look, big, settings, timers }: Step): readonly string[] {
  return [
    title,
    ...say,
    why,
    ...look,
    ...(big === undefined ? [] : [big.caption]),
    ...settings.flatMap(({ name, text }) => [name, text]),
    ...timers.flatMap(({ name, then }) => [name, then]),
  ];
}
