import { type AgeBand, needsCompany, toolRight } from '../materials/helper-ages.js';
import type { SplitStep } from './glue-rows.js';
import type { Step } from './plan.js';
import { type Crew, lastingOf } from './step-lasts.js';

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

/**
 * The build as these people do it: who does each step, and how long it keeps them. Before the first saw the care for
 * young helpers is read aloud where there is one.
 */
export function withCrew(
  build: readonly Step[],
  crew: Crew,
  glueUps: readonly SplitStep[],
): readonly Step[] {
  const { helper } = crew;
  const young = helper !== undefined && helper !== 'grown';
  const first = build.find(({ phase }) => phase === 'cut');
  return build.map(step => ({
    ...step,
    ...helperPart(step, helper),
    minutes: lastingOf(step, { crew, build, glueUps: glueUps.find(it => it.step === step.id) }),
    care: young && step === first ? ['children', ...step.care] : step.care,
  }));
}
