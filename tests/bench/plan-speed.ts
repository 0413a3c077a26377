import { SIXTEENTHS } from '../../src/measure/displays.js';
import { inches } from '../../src/measure/inch.js';
import { makePlan } from '../../src/plan/make-plan.js';
import { usualAnswers } from '../../src/recipe/questions.js';
import { readRecipe } from '../../src/recipe/read.js';

/** Times, in ms, of making the bench's plan again after one answer changed. */
export function planTimes(text: string, rounds: number): { cold: number; warm: readonly number[] } {
  const read = readRecipe(text);
  if (!read.ok) throw new Error('the recipe has problems');
  const usual = usualAnswers(read.recipe);
  const once = (seat: number) => {
    const from = performance.now();
    const answers = { ...usual, seat_length: { kind: 'length', value: inches(seat) } } as const;
    const made = makePlan(read.recipe, answers, SIXTEENTHS);
    if (!made.ok) throw new Error('no plan');
    return performance.now() - from;
  };
  const cold = once(48);
  for (let seat = 30; seat <= 84; seat += 1) once(seat);
  return { cold, warm: Array.from({ length: rounds }, (_, at) => once(30 + (at % 55))) };
}
