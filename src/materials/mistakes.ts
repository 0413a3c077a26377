import { capital } from '../measure/capital.js';
import type { Mistake } from './mistake.js';
import { CUTTING_MISTAKES } from './mistakes-cutting.js';
import { FINISH_MISTAKES } from './mistakes-finish.js';
import { JOINING_MISTAKES } from './mistakes-joining.js';

/** Every page of "I made a mistake, now what", in the order of the work. */
export const MISTAKES: readonly Mistake[] = [
  ...CUTTING_MISTAKES,
  ...JOINING_MISTAKES,
  ...FINISH_MISTAKES,
];

/** The page with this id, or undefined. */
export function mistakeNamed(id: string): Mistake | undefined {
  return MISTAKES.find(page => page.id === id);
}

/** A page as lines to read: how bad, what to look at, what to do, how it does not happen again. */
export function mistakeLines({ title, verdicts, look, act, next }: Mistake): readonly string[] {
  return [
    title,
    ...verdicts.map(({ when, verdict }) => `${capital(verdict)}: ${when}.`),
    'Look',
    ...look.map(line => `  ${line}`),
    'Do',
    ...act.map(line => `  ${line}`),
    'Next time',
    ...next.map(line => `  ${line}`),
  ];
}
