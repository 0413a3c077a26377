import type { Newtons } from '../measure/force.js';
import type { Mm } from '../measure/quantities.js';
import type { Megapascals } from '../measure/stress.js';
import { practice, seen } from './sources.js';

/** A rectangular section as it stands: `depth` in the direction of the load. */
export type BeamSection = { readonly breadth: Mm; readonly depth: Mm };

/** N mm. */
export type Moment = number;
/** N on a mm of length. */
export type LineLoad = number;
/** E times I, N mm2. */
export type Rigidity = number;

/** What a load does to a beam, at its worst places. Sag is downward. */
export type BeamEffect = { readonly shear: Newtons; readonly moment: Moment; readonly sag: Mm };

type Span = { readonly span: Mm; readonly rigidity: Rigidity };

/**
 * Area, section modulus and second moment of area, in mm2, mm3 and mm4.
 * @example sectionProperties({ breadth: 45, depth: 95 }) // modulus 67 688, inertia 3 215 156
 */
export function sectionProperties({ breadth, depth }: BeamSection) {
  return {
    area: breadth * depth,
    modulus: (breadth * depth ** 2) / 6,
    inertia: (breadth * depth ** 3) / 12,
  };
}

/** E times I of a section of this stiffness. */
export function rigidityOf(section: BeamSection, stiffness: Megapascals): Rigidity {
  return stiffness * sectionProperties(section).inertia;
}

/** Bending stress at the edge: M / S. */
export function bendingStress(moment: Moment, section: BeamSection): Megapascals {
  return moment / sectionProperties(section).modulus;
}

/**
 * Two supports, load spread evenly: V = wL/2, M = wL^2/8, sag 5wL^4/(384EI).
 * @example 9500 lb spread over 19 ft: M = 9500 x 19 / 8 = 22 562.5 ft lb
 */
export function evenlyLoaded(load: LineLoad, { span, rigidity }: Span): BeamEffect {
  return {
    shear: (load * span) / 2,
    moment: (load * span ** 2) / 8,
    sag: (5 * load * span ** 4) / (384 * rigidity),
  };
}

/**
 * Two supports, a load in the middle, on a point or spread over a short stretch:
 * M = P(2L - c)/8, sag P(8L^3 - 4Lc^2 + c^3)/(384EI), which for a point is PL/4 and PL^3/(48EI).
 */
export function loadedInMiddle(
  load: Newtons,
  { span, rigidity }: Span,
  stretch: Mm = 0,
): BeamEffect {
  const over = Math.min(stretch, span);
  return {
    shear: load / 2,
    moment: (load * (2 * span - over)) / 8,
    sag: (load * (8 * span ** 3 - 4 * span * over ** 2 + over ** 3)) / (384 * rigidity),
  };
}

/** Where the formulas are printed. */
export const BEAM_SOURCES = [
  seen('beam-pages', 'uniform load; center load'),
  practice('rectangle: A = bd, S = bd^2/6, I = bd^3/12'),
];
