import type { Plan } from './plan.js';

/** Which wood to ask for at the yard: `Western redcedar, surfaced dry (S-DRY stamp)`; empty where no question asks. */
export function woodWords({ answers }: Pick<Plan, 'answers'>): string {
  const answer = (id: string) => answers.find(it => it.id === id)?.text ?? '';
  return [answer('species'), answer('dryness')].filter(text => text !== '').join(', ');
}
