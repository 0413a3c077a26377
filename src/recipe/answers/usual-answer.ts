import { parseDay } from '../../measure/calendar.js';
import { parseClock } from '../../measure/clock.js';
import { flagOf, lengthOf, numberOf, type Scope, textOf } from '../evaluate.js';
import type { Formula } from '../formula.js';
import type { Problem } from '../problem.js';
import type { Question } from '../recipe.js';
import type { Answer } from '../values.js';
import { parseOffers, parseOnHand } from './boards-answer.js';
import { parseDays } from './days-answer.js';
import { parseItems } from './items-answer.js';

/**
 * The usual answer of a question. The checks of a recipe see to it that there is one; in a recipe that
 * was not checked, zero, the first option, no or an empty list stands in.
 */
export function usualAnswer(question: Question, scope: Scope): Answer {
  const { kind, usual, options, fields } = question;
  switch (kind) {
    case 'length':
      return { kind, value: worked(usual, scope, lengthOf) ?? 0 };
    case 'count':
    case 'hours':
      return { kind, value: worked(usual, scope, numberOf) ?? 0 };
    case 'clock': {
      const read = parseClock(worked(usual, scope, textOf) ?? '');
      return { kind, value: read.ok ? read.value : 0 };
    }
    case 'date': {
      const read = parseDay(worked(usual, scope, textOf) ?? '');
      return { kind, value: read.ok ? read.value : '' };
    }
    case 'days': {
      const read = parseDays(worked(usual, scope, textOf) ?? '');
      return { kind, value: read.ok ? read.value : [] };
    }
    case 'choice':
      return { kind, value: worked(usual, scope, textOf) ?? options[0]?.id ?? '' };
    case 'text':
      return { kind, value: worked(usual, scope, textOf) ?? '' };
    case 'yes':
      return { kind, value: worked(usual, scope, flagOf) ?? false };
    case 'items': {
      const read = parseItems(worked(usual, scope, textOf) ?? '', fields, 'inch');
      return { kind, value: read.ok ? read.value : [] };
    }
    case 'offers': {
      const read = parseOffers(worked(usual, scope, textOf) ?? '');
      return { kind, value: read.ok ? read.value : [] };
    }
    case 'boards': {
      const read = parseOnHand(worked(usual, scope, textOf) ?? '');
      return { kind, value: read.ok ? read.value : [] };
    }
  }
}

function worked<T extends number | string | boolean>(
  formula: Formula | undefined,
  scope: Scope,
  work: (formula: Formula, scope: Scope) => T | Problem,
): T | undefined {
  if (formula === undefined) return undefined;
  const value = work(formula, scope);
  return typeof value === 'object' ? undefined : value;
}
