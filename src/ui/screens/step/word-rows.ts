import { wordsOfStep, wordsOfSteps } from '../../../plan/step-words.js';
import { hanging } from '../../../text/page-lines.js';
import { factLines, plainer } from '../../widgets/facts.js';
import { plainRows, type Row } from '../../widgets/rows.js';
import type { Work } from './work-rows.js';

/** All words of the trade that this build uses. */
export function allWordRows({ build, at }: Work, columns: number): readonly Row[] {
  const plain = plainer(at.ascii);
  const facts = wordsOfSteps(build.plan.steps).map(({ word, means }) => ({
    name: word,
    text: plain(means),
  }));
  return plainRows(factLines(facts, columns));
}

/** The words of the trade that stand at a step. */
export function wordRows({ step, at }: Work, columns: number): readonly Row[] {
  const plain = plainer(at.ascii);
  return wordsOfStep(step).flatMap(({ word, means }) =>
    plainRows(hanging('- ', plain(`${word}: ${means}`), columns)),
  );
}
