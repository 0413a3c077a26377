import { glueOf } from '../materials/glue.js';
import { sourceText } from '../measure/figure-text.js';
import type { Minutes } from '../measure/quantities.js';
import { brushingRoom, CLAMPING_MINUTES } from './glue-batch.js';
import { GLUE } from './glue-plan.js';
import type { StepTimer } from './step-parts.js';

const LEAST_BRUSHING: Minutes = 1;
const END_OF_ID = '/open.time';

/**
 * When brushing has to give way to clamps, in whole minutes from the first stroke: four fifths of the open time less
 * what the clamps take, and a minute where the heat leaves less.
 * @example clampFrom(8) // 3, since 8 x 0.8 - 3 = 3.4
 */
export function clampFrom(openMinutes: Minutes): Minutes {
  const room = brushingRoom({ openMinutes, clampingMinutes: CLAMPING_MINUTES });
  return Math.max(LEAST_BRUSHING, Math.floor(room + 1e-9));
}

/** The timer of one glue-up, from the first brush stroke until the clamps have to go on; it rings before the glue skins. */
export function openTimer(step: string, openMinutes: Minutes, held: 'clamps' | 'brads'): StepTimer {
  const minutes = clampFrom(openMinutes);
  const left = Math.max(0, openMinutes - minutes);
  const now = held === 'clamps' ? 'Clamp now' : 'Close and brad now';
  return {
    id: `${step}${END_OF_ID}`,
    name: 'Open time',
    minutes,
    because: `${openMinutes} min of open time (${sourceText(glueOf(GLUE).openMinutes.source)}), a fifth of it in hand, ${CLAMPING_MINUTES} min for the clamps`,
    lasts: 'glue-open',
    then: `${now}. In ${left} min the glue skins: what is still open then is scraped off and brushed anew.`,
  };
}

/** Does this timer run while glue lies open? Then the work goes on, and nobody waits for it. */
export function isOpenTime({ id }: { readonly id: string }): boolean {
  return id.endsWith(END_OF_ID);
}
