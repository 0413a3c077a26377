import { type AgeBand, needsCompany, toolRight } from '../materials/helper-ages.js';
import type { Step } from './plan.js';

type Shared = Pick<Step, 'who' | 'tools' | 'care'>;

/**
 * Who does a step when the helper is of this age: what the recipe says, or less. A step for the helper
 * becomes a shared one where a tool or the work wants somebody beside it; tools that the helper does not
 * hold are named. Without a helper nothing is changed.
 */
export function helperPart(
  { who, tools, care }: Shared,
  band: AgeBand | undefined,
): Pick<Step, 'who' | 'handsOff'> {
  if (band === undefined || who === 'lead') return { who, handsOff: [] };
  const rights = tools.map(tool => ({ tool, right: toolRight(tool, band).value }));
  const handsOff = rights.filter(({ right }) => right === 'lead').map(({ tool }) => tool);
  const company = rights.some(({ right }) => right !== 'alone') || needsCompany(care, band);
  return { who: who === 'helper' && company ? 'both' : who, handsOff };
}
