import type { Page } from '../../text/page.js';
import type { Plan } from '../plan.js';
import { wordsOfSteps } from '../step-words.js';

/** The words of the trade that this build uses, explained. */
export function wordsPage({ steps }: Plan): Page {
  const facts = wordsOfSteps(steps).map(({ word, means }) => ({ name: word, text: means }));
  return { id: 'words', title: 'Words of the trade', blocks: [{ kind: 'facts', facts }] };
}
