import { checkPlan } from '../../../solve/cutting/check-plan.js';
import { planCutting } from '../../../solve/cutting/plan-cutting.js';
import type { Given, WorkResult, WorkRule } from '../rule.js';
import { boardsAnswer } from './boards-answer.js';
import { BOARDS_OPTIONS } from './boards-options.js';
import { boardsProblem } from './boards-problem.js';
import { readAsk } from './read-ask.js';
import { refusal } from './refusal.js';
import { spent } from './spend.js';

/** `notchbook work boards`: which boards to buy, and how to cut each. */
export const BOARDS_RULE: WorkRule = {
  name: 'boards',
  say: 'which boards to buy for these pieces at the least cost, and how to cut each',
  example:
    'notchbook work boards --piece 21in*4 --piece 34.5in*6 --board 8ft@7.48 --board 10ft@9.98 --on-hand 52in',
  options: BOARDS_OPTIONS,
  csv: true,
  work,
};

function work(given: Given): WorkResult {
  const read = readAsk(given);
  if (!read.ok) return read;
  const asked = boardsProblem(read.ask);
  const first = given.word('first') === 'offcut' ? 'offcut' : 'settings';
  const plan = planCutting(asked.problem, { effort: given.number('effort'), first });
  const wrong = checkPlan(asked.problem, plan);
  if (wrong.length > 0) throw new Error(`a cutting plan does not add up: ${wrong.join('; ')}`);
  if (plan.missing.length > 0)
    return { ok: false, problems: refusal(read.ask, asked, { plan, display: given.display }) };
  const more = spent(asked, plan, given);
  if (!more.ok) return { ok: false, problems: [`--spend: ${more.problem} ${more.hint}`] };
  return boardsAnswer(read.ask, asked, { ...more.value, cheapest: plan, given });
}
