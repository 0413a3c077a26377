import type { Display } from '../measure/quantities.js';
import { type DayRule, dayRuleText } from './day-rule.js';
import { footLine } from './foot-words.js';
import { BESIDE_GLUE, besideWords, glueUpLines } from './glue-up-words.js';
import type { GluePlan, Step } from './plan.js';
import { potLines } from './pot-words.js';
import { squareLines } from './square-words.js';
import type { TradeParts } from './trade-parts.js';

/** The tool by which a step is known to set the piece level. */
const LEVEL = 'level';

/** Steps with what was worked out for them: their glue-ups, their diagonals, what goes under the feet. */
export function withTradeLines(
  build: readonly Step[],
  { glueUps, squares, feet, planters, sealDay, glueDay }: TradeParts,
  { display, glue }: { readonly display: Display; readonly glue: GluePlan },
): readonly Step[] {
  const waits = { clampMinutes: glue.clampTime.value, cureMinutes: glue.cureTime.value };
  return build.map(step => {
    const own = glueUps.filter(row => row.step === step.id);
    const ups = own.flatMap(glueUpLines);
    const beside = own.map(row => ({ name: BESIDE_GLUE, text: besideWords(row, waits) }));
    const square = squares.filter(row => row.step === step.id);
    const levels = step.phase === 'place' && step.tools.includes(LEVEL);
    const sealing = seals(step) ? sealDay.map(dayLine) : [];
    // A later glue-up often falls on a colder evening than the first one.
    const gluing = step.day === 'glue' ? glueDay.map(dayLine) : [];
    const pots = planters
      .filter(({ steps }) => steps.includes(step.id))
      .flatMap(row => potLines(row, display));
    const shims = levels ? feet.map(row => footLine(row, display)) : [];
    return {
      ...step,
      settings: [...ups, ...step.settings, ...beside, ...gluing, ...shims, ...pots, ...sealing],
      look: [...step.look, ...squareLines(square, display)],
    };
  });
}

/** Finishing with a brush is sealing. */
function seals({ phase, tools }: Step): boolean {
  return phase === 'finish' && tools.includes('brush');
}

function dayLine(rule: DayRule): Step['settings'][number] {
  const { name, asks } = rule;
  return { name, text: dayRuleText(rule), ...(asks && { asks }) };
}
