import type { Mm } from '../measure/quantities.js';
import type { LoadTime } from './design-factors-nds.js';
import { type Sourced, sourced } from './sourced.js';
import { recalled, seen } from './sources.js';

/** 1: indoors, about 12 % moisture; 2: under a roof, to 20 %; 3: out in the weather. */
export type ServiceClass = 1 | 2 | 3;

export type LoadClass = 'permanent' | 'long' | 'medium' | 'short' | 'instantaneous';

/** The load class that stands for a time; people on a floor or a seat count as medium. */
export const LOAD_CLASS: Readonly<Record<LoadTime, LoadClass>> = {
  permanent: 'permanent',
  'ten-years': 'medium',
  'two-months': 'medium',
  'seven-days': 'short',
  'ten-minutes': 'instantaneous',
};

const KMOD: Readonly<Record<ServiceClass, Readonly<Record<LoadClass, number>>>> = {
  1: { permanent: 0.6, long: 0.7, medium: 0.8, short: 0.9, instantaneous: 1.1 },
  2: { permanent: 0.6, long: 0.7, medium: 0.8, short: 0.9, instantaneous: 1.1 },
  3: { permanent: 0.5, long: 0.55, medium: 0.65, short: 0.7, instantaneous: 0.9 },
};

const KDEF: Readonly<Record<ServiceClass, number>> = { 1: 0.6, 2: 0.8, 3: 2 };

export const EN_FACTOR_SOURCE = seen(
  'vademecum',
  'EN 1995-1-1 kmod, kdef and gamma M, solid timber',
);

/**
 * Share of the strength that counts for a load class in this weather.
 * @example kmod(3, 'medium') // 0.65: people on a bench in the rain
 */
export function kmod(service: ServiceClass, load: LoadClass): number {
  return KMOD[service][load];
}

/** Creep factor: 2 out in the weather, so what stays sags three times as far in the end. */
export function kdef(service: ServiceClass): number {
  return KDEF[service];
}

/** Partial factor of the material. */
export const GAMMA_M: Sourced<number> = sourced(1.3, EN_FACTOR_SOURCE);

/** Partial factors of the loads: what always stands, what comes and goes. */
export const GAMMA_LOAD = {
  permanent: sourced(1.35, recalled('en1990', 'Table A1.2, permanent actions')),
  variable: sourced(1.5, recalled('en1990', 'Table A1.2, variable actions')),
} as const;

/** Share of the breadth that counts in shear, for cracks. */
export const CRACK_FACTOR: Sourced<number> = sourced(0.67, recalled('ec5', '6.1.7, k cr'));

/** Boards that share a load. */
export const SYSTEM_FACTOR: Sourced<number> = sourced(1.1, recalled('ec5', '6.6, k sys'));

const FULL_DEPTH: Mm = 150;
const MOST_DEPTH_FACTOR = 1.3;

export const DEPTH_SOURCE = recalled('ec5', '3.2, k h for depths under 150 mm');

/**
 * Small sections are stronger than the class says: (150 / depth) to the power 0.2, at most 1.3.
 * @example depthFactor(95) // 1.096
 */
export function depthFactor(depth: Mm): number {
  return depth >= FULL_DEPTH ? 1 : Math.min((FULL_DEPTH / depth) ** 0.2, MOST_DEPTH_FACTOR);
}
