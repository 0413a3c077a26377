import type { GlueUpRow } from './glue-rows.js';
import { glueUpTime } from './glue-up-words.js';
import type { FastenerRow, Plan } from './plan.js';
import type { PlanterRow } from './planter.js';

/** What the rules of the trade object to, for the first page: pots, drains, glue-ups, screws without room. */
export function tradeTroubles(
  { planters, glueUps }: Pick<Plan, 'planters' | 'glueUps'>,
  screws: readonly FastenerRow[],
): readonly string[] {
  return [
    ...planters.flatMap(planterTroubles),
    ...glueUps.filter(({ fits }) => !fits).map(glueUpTrouble),
    ...screws.flatMap(({ noRoom }) => noRoom),
  ];
}

function planterTroubles({ name, pots, drains }: PlanterRow): readonly string[] {
  const out = pots.filter(({ verdict }) => verdict === 'does not fit');
  return [
    ...out.map(
      ({ number }) => `${name}: pot ${number} does not go in beside its walls and neighbors.`,
    ),
    ...(drains ? [] : [`${name}: its floor is too tight to drain; leave gaps between the planks.`]),
  ];
}

function glueUpTrouble(row: GlueUpRow): string {
  return `${row.title}: ${glueUpTime(row)}.`;
}
