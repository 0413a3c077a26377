import type { Source } from '../measure/figure.js';
import { forceWeight } from '../measure/force.js';
import type { Display, Kilograms } from '../measure/quantities.js';
import { allowedStresses, type BeamUse } from './beam-allowed.js';
import { standingSection } from './beam-check.js';
import type { WoodStrength } from './design-values-species.js';
import {
  type EndNotch,
  NOTCH_EN_SOURCE,
  NOTCH_SHEAR_SOURCE,
  notchedShearEn,
  notchedShearNds,
  wholeEndShear,
} from './notch-shear.js';

/** What a notched end carries in shear. */
export type NotchedEnd = {
  readonly carries: Kilograms;
  /** What the wood beside the notch carries alone, with no credit for a notch on the pressed edge. */
  readonly alone: Kilograms;
  readonly source: Source;
};

/**
 * Shear strength of a notched end of a board as it is used, by the code that its wood is graded for.
 * @example half of a wet redwood 2x4, notched on top over its post: 543 lb, 272 lb alone
 */
export function notchedEnd(
  notch: EndNotch,
  { use, wood }: { readonly use: BeamUse; readonly wood: WoodStrength },
  display: Display,
): NotchedEnd {
  const { values } = wood;
  const section = standingSection(use);
  const sum = { section, allowed: allowedStresses(values, use, display) };
  const byNds = values.kind === 'nds';
  const carries = byNds ? notchedShearNds(notch, sum) : notchedShearEn(notch, sum);
  const left = Math.max(0, section.depth - notch.depth) / section.depth;
  const alone = Math.min(carries, wholeEndShear(sum) * left);
  return {
    carries: forceWeight(carries),
    alone: forceWeight(alone),
    source: byNds ? NOTCH_SHEAR_SOURCE : NOTCH_EN_SOURCE,
  };
}
