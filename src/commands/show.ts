import { nearestWord } from '../measure/suggest.js';
import type { Plan } from '../plan/plan.js';
import type { Arguments } from './arguments.js';
import type { Library } from './library.js';
import { EXIT, failed, fine, type Outcome } from './outcome.js';
import { workOut } from './plan.js';

/** Stages of the work, in order, each with what it holds. */
const STAGES = {
  answers: plan => plan.answers,
  sizes: plan => plan.sizes,
  model: plan => plan.model,
  'cut-list': plan => plan.cutList,
  steps: plan => plan.steps,
  plan: ({ model: _boards, ...rest }) => rest,
} as const satisfies Record<string, (plan: Plan) => unknown>;

type Stage = keyof typeof STAGES;

/** `notchbook show STAGE RECIPE`: the data after a stage as JSON, for authors and for us. */
export function showCommand(given: Arguments, library: Library): Outcome {
  const [word, ...rest] = given.rest;
  const names = ['recipe', ...Object.keys(STAGES)];
  if (word === undefined || !names.includes(word)) {
    const near = word === undefined ? undefined : nearestWord(word, names);
    const help = near === undefined ? `Stages: ${names.join(', ')}.` : `Did you mean ${near}?`;
    return failed([`show needs a stage and a recipe. ${help}`], EXIT.usage);
  }
  const worked = workOut(given, library, rest);
  if (!worked.ok) return worked.outcome;
  const data = isStage(word) ? STAGES[word](worked.plan) : worked.recipe;
  return fine(`${JSON.stringify(data, null, 2)}\n`);
}

function isStage(word: string): word is Stage {
  return Object.hasOwn(STAGES, word);
}
