import { MISTAKES, mistakeLines, mistakeNamed } from '../../materials/mistakes.js';
import { sourceText } from '../../measure/figure-text.js';
import type { Given, WorkResult, WorkRule } from './rule.js';

/** `notchbook work mistake`: "I made a mistake, now what". */
export const MISTAKE_RULE: WorkRule = {
  name: 'mistake',
  say: 'something went wrong: how bad it is, and what to do',
  example: 'notchbook work mistake --what screw-snapped',
  options: [
    {
      name: 'what',
      kind: 'word',
      say: MISTAKES.map(({ id }) => id).join(', '),
      example: 'screw-snapped',
      choices: MISTAKES.map(({ id }) => id),
    },
  ],
  work,
};

function work(given: Given): WorkResult {
  const page = mistakeNamed(given.word('what'));
  if (page === undefined) throw new Error('a mistake without a page was let through');
  const { id, title, verdicts, look, act, next, source } = page;
  return {
    ok: true,
    figures: [],
    more: { id, title, verdicts, look, act, next, source },
    notes: [
      ...mistakeLines(page),
      `[${sourceText(source)}]`,
      'Not looked at: your piece. When in doubt about a board that carries people, remake it.',
    ],
  };
}
