import { SIXTEENTHS } from '../../../src/measure/displays.js';
import { inches } from '../../../src/measure/inch.js';
import { makePlan } from '../../../src/plan/make-plan.js';
import { purchases } from '../../../src/plan/purchases.js';
import { settingOf } from '../../../src/plan/setting.js';
import { usualAnswers } from '../../../src/recipe/questions.js';
import { readRecipe } from '../../../src/recipe/read.js';
import { timed } from './cpu-time.js';

/** Processor times, in ms, of the bench's purchase alone, as it is made anew whenever an answer changes. */
export function purchaseTimes(text: string): readonly number[] {
  const read = readRecipe(text);
  if (!read.ok) throw new Error('the recipe has problems');
  const usual = usualAnswers(read.recipe);
  const once = (seat: number): number => {
    const answers = { ...usual, seat_length: { kind: 'length', value: inches(seat) } } as const;
    const made = makePlan(read.recipe, answers, SIXTEENTHS);
    if (!made.ok) throw new Error('no plan');
    const setting = settingOf(answers, SIXTEENTHS);
    return timed(() => purchases(made.plan.cutList, setting)).ms;
  };
  const seats = Array.from({ length: 55 }, (_, at) => 30 + at);
  seats.map(once);
  return seats.map(once);
}
