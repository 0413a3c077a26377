import type { Newtons } from '../measure/force.js';
import type { Mm } from '../measure/quantities.js';
import type { Allowed } from './beam-allowed.js';
import type { BeamSection } from './beams.js';
import type { NotchEdge } from './notch-limits.js';
import { recalled } from './sources.js';

/** A notch at the end of a beam, over its support. */
export type EndNotch = {
  readonly edge: NotchEdge;
  readonly depth: Mm;
  /** How far it reaches past the inner face of the support; 0 where it lies wholly over it. */
  readonly beyond: Mm;
  /** Length of the support under the beam. */
  readonly bearing: Mm;
};

type Shear = { readonly section: BeamSection; readonly allowed: Allowed };

export const NOTCH_SHEAR_SOURCE = recalled('nds', '3.4.3.2, shear at notched ends');
export const NOTCH_EN_SOURCE = recalled(
  'ec5',
  '6.5.2, k v at notched supports; pressed edge after the German annex',
);

/** What a whole end carries: V = 2/3 F'v b d. */
export function wholeEndShear({ section, allowed }: Shear): Newtons {
  const { breadth, depth } = section;
  return (2 / 3) * allowed.shear * breadth * allowed.shearBreadth * depth;
}

/**
 * Share of the shear strength that a notched end keeps by the NDS. On the stretched edge V = 2/3 F'v b
 * dn (dn/d)^2. On the pressed edge V = 2/3 F'v b (d - (d - dn)/dn e), so that a notch wholly over its
 * support (e = 0) costs nothing, and one that reaches far past it leaves what is below it.
 * @example half of a 2x4 notched from below keeps 1/8
 */
export function notchedShareOfShear(notch: Omit<EndNotch, 'bearing'>, depth: Mm): number {
  const left = depth - notch.depth;
  if (left <= 0) return 0;
  if (notch.edge === 'bottom') return (left / depth) ** 3;
  const beyond = Math.min(Math.max(notch.beyond, 0), left);
  return (depth - ((depth - left) / left) * beyond) / depth;
}

/** What a notched end carries by the NDS. */
export function notchedShearNds(notch: EndNotch, { section, allowed }: Shear): Newtons {
  return wholeEndShear({ section, allowed }) * notchedShareOfShear(notch, section.depth);
}

const SOLID_TIMBER = 5;

/**
 * Factor k v for a right-angled notch on the stretched edge, EN 1995-1-1 6.5.2:
 * kn / (sqrt h (sqrt(a(1 - a)) + 0.8 x/h sqrt(1/a - a^2))), at most 1; `reach` is x, from the middle
 * of the support to the corner of the notch.
 */
export function notchFactor(depth: Mm, left: Mm, reach: Mm): number {
  if (left >= depth) return 1;
  const alpha = left / depth;
  const open = Math.sqrt(alpha * (1 - alpha));
  const lever = 0.8 * (reach / depth) * Math.sqrt(1 / alpha - alpha ** 2);
  return Math.min(1, SOLID_TIMBER / (Math.sqrt(depth) * (open + lever)));
}

/**
 * What a notched end carries by EN 1995-1-1. On the stretched edge V = kv fv b h ef / 1.5; on the pressed
 * edge the German annex lets it keep the same share as the NDS, all of it where the notch lies wholly
 * over its support.
 */
export function notchedShearEn(notch: EndNotch, { section, allowed }: Shear): Newtons {
  const { depth } = section;
  const left = depth - notch.depth;
  const whole = wholeEndShear({ section, allowed });
  if (notch.edge === 'top') return whole * notchedShareOfShear(notch, depth);
  if (left <= 0) return 0;
  const reach = notch.bearing / 2 + Math.max(notch.beyond, 0);
  return (whole * notchFactor(depth, left, reach) * left) / depth;
}
