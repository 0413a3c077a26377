import type { Newtons } from '../measure/force.js';
import type { Mm } from '../measure/quantities.js';
import type { Megapascals } from '../measure/stress.js';
import { practice, recalled, seen } from './sources.js';

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

/** Largest shear stress of a rectangle: 3 V / (2 b d). */
export function shearStress(shear: Newtons, { breadth, depth }: BeamSection): Megapascals {
  return (3 * shear) / (2 * breadth * depth);
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

/** Two equal loads, each `from` its support: V = P, M = Pa, sag Pa(3L^2 - 4a^2)/(24EI). */
export function twoLoads(load: Newtons, from: Mm, { span, rigidity }: Span): BeamEffect {
  return {
    shear: load,
    moment: load * from,
    sag: (load * from * (3 * span ** 2 - 4 * from ** 2)) / (24 * rigidity),
  };
}

/** Three equal loads at the quarter points: V = 1.5P, M = PL/2, sag 19PL^3/(384EI). */
export function threeLoads(load: Newtons, { span, rigidity }: Span): BeamEffect {
  return {
    shear: 1.5 * load,
    moment: (load * span) / 2,
    sag: (19 * load * span ** 3) / (384 * rigidity),
  };
}

/** Fixed at one end, load spread evenly: V = wL, M = wL^2/2, sag at the tip wL^4/(8EI). */
export function bracketEvenly(load: LineLoad, { span, rigidity }: Span): BeamEffect {
  return {
    shear: load * span,
    moment: (load * span ** 2) / 2,
    sag: (load * span ** 4) / (8 * rigidity),
  };
}

/** Fixed at one end, load at the tip: V = P, M = PL, sag PL^3/(3EI). */
export function bracketAtTip(load: Newtons, { span, rigidity }: Span): BeamEffect {
  return {
    shear: load,
    moment: load * span,
    sag: (load * span ** 3) / (3 * rigidity),
  };
}

type Overhung = Span & { readonly overhang: Mm };

/** Two supports with equal overhangs, load spread over all of it. Up is minus. */
export function overhungBothEnds(load: LineLoad, { span, overhang: a, rigidity }: Overhung) {
  const middle = (load * (span ** 2 - 4 * a ** 2)) / 8;
  const support = (load * a ** 2) / 2;
  return {
    reaction: (load * (span + 2 * a)) / 2,
    shear: Math.max(load * a, (load * span) / 2),
    supportMoment: -support,
    middleMoment: middle,
    moment: Math.max(support, Math.abs(middle)),
    middleSag: (load * span ** 2 * (5 * span ** 2 - 24 * a ** 2)) / (384 * rigidity),
    tipSag: (load * a * (3 * a ** 3 + 6 * a ** 2 * span - span ** 3)) / (24 * rigidity),
  };
}

/** Two supports and one overhang, load spread over all of it. */
export function overhungEvenly(load: LineLoad, { span, overhang: a }: Omit<Overhung, 'rigidity'>) {
  const support = (load * a ** 2) / 2;
  const spanMoment = (load * (span + a) ** 2 * (span - a) ** 2) / (8 * span ** 2);
  return {
    farReaction: (load * (span ** 2 - a ** 2)) / (2 * span),
    nearReaction: (load * (span + a) ** 2) / (2 * span),
    supportMoment: -support,
    spanMoment,
    moment: Math.max(support, a < span ? spanMoment : 0),
  };
}

/** Two supports and one overhang, load at its tip: the far support is pulled up. */
export function overhungAtTip(load: Newtons, { span, overhang: a, rigidity }: Overhung) {
  return {
    uplift: (load * a) / span,
    nearReaction: (load * (span + a)) / span,
    moment: load * a,
    tipSag: (load * a ** 2 * (span + a)) / (3 * rigidity),
  };
}

/** Where the formulas are printed. */
export const BEAM_SOURCES = [
  seen('beam-pages', 'uniform load; center load; two and three equal loads'),
  recalled('awc-da6', 'cantilevers and overhangs'),
  practice('rectangle: A = bd, S = bd^2/6, I = bd^3/12'),
];
