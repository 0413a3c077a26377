import { length, plain, text } from '../arithmetic.js';
import type { Question } from '../recipe.js';
import type { Answer, Item, Value } from '../values.js';

/**
 * What formulas see of an answer: its own name, or for a list `count` and for each field of its things
 * `sum`, `most` and `least`, such as `pots.diameter.sum`. Undefined when it has nothing of that name.
 */
export function answerValue(
  { id, fields }: Question,
  answer: Answer,
  name: string,
): Value | undefined {
  switch (answer.kind) {
    case 'length':
      return name === id ? length(answer.value) : undefined;
    case 'count':
    case 'hours':
      return name === id ? plain(answer.value) : undefined;
    case 'clock':
    case 'date':
      return undefined;
    case 'choice':
    case 'text':
      return name === id ? text(answer.value) : undefined;
    case 'yes':
      return name === id ? { kind: 'flag', value: answer.value } : undefined;
    case 'items':
      return name === `${id}.count` ? plain(answer.value.length) : total(id, fields, answer, name);
    case 'offers':
    case 'boards':
    case 'days':
      return name === `${id}.count` ? plain(answer.value.length) : undefined;
  }
}

const TOTALS: Readonly<Record<string, (sizes: readonly number[]) => number>> = {
  sum: sizes => sizes.reduce((sum, size) => sum + size, 0),
  most: sizes => Math.max(0, ...sizes),
  least: sizes => (sizes.length === 0 ? 0 : Math.min(...sizes)),
};

export const TOTAL_NAMES: readonly string[] = Object.keys(TOTALS);

function total(
  id: string,
  fields: readonly string[],
  { value }: { readonly value: readonly Item[] },
  name: string,
): Value | undefined {
  const [question, field = '', how = '', more] = name.split('.');
  const add = Object.hasOwn(TOTALS, how) ? TOTALS[how] : undefined;
  if (question !== id || more !== undefined || !fields.includes(field)) return undefined;
  return add === undefined ? undefined : length(add(value.map(item => item[field] ?? 0)));
}
