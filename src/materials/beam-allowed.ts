import { formatNumber } from '../measure/format-number.js';
import type { Display, Mm } from '../measure/quantities.js';
import { formatStress, type Megapascals } from '../measure/stress.js';
import {
  CRACK_FACTOR,
  depthFactor,
  GAMMA_LOAD,
  GAMMA_M,
  kdef,
  kmod,
  LOAD_CLASS,
  type ServiceClass,
  SYSTEM_FACTOR,
} from './design-factors-en.js';
import {
  CREEP_FACTOR,
  flatUseFactor,
  INCISED_FACTOR,
  LOAD_TIME_FACTOR,
  type LoadTime,
  SHARING_FACTOR,
  sizeFactor,
  WET_FACTOR,
  wetBendingFactor,
} from './design-factors-nds.js';
import type { NdsValues } from './design-values-nds.js';
import type { ClassValues } from './strength-classes.js';

/** How a board is used: on which side it stands, in which weather, for how long it is loaded. */
export type BeamUse = {
  readonly board: { readonly thickness: Mm; readonly width: Mm };
  readonly stands: 'edge' | 'flat';
  /** Out in the rain; indoors and under a roof it is dry. */
  readonly wet: boolean;
  readonly time: LoadTime;
  /** Three boards or more that share every load. */
  readonly sharing?: boolean;
  /** Treated through cuts in the faces, as some boards are. */
  readonly incised?: boolean;
};

/** Stresses and stiffness that the sums may go up to, with every factor put in. */
export type Allowed = {
  readonly bending: Megapascals;
  readonly shear: Megapascals;
  readonly across: Megapascals;
  readonly stiffness: Megapascals;
  /** How many times the sag of the first minute there is after years; 1 for loads that come and go. */
  readonly creep: number;
  /** Share of the breadth that counts in shear. */
  readonly shearBreadth: number;
  readonly words: { readonly bending: string; readonly shear: string };
};

type Factor = readonly [name: string, value: number];

/**
 * Allowed stresses by the allowable stress design of the NDS, or by EN 1995-1-1 with the load factor
 * taken to this side, so that either is compared with plain loads.
 * @example 2x8 No. 1 Douglas fir, snow, wet: bending 1000 x 1.15 x 1.2 x 0.85 = 1173 psi
 */
export function allowedStresses(
  values: NdsValues | ClassValues,
  use: BeamUse,
  display: Display,
): Allowed {
  return values.kind === 'nds' ? byNds(values, use, display) : byEurocode(values, use, display);
}

function byNds(values: NdsValues, use: BeamUse, display: Display): Allowed {
  const time = LOAD_TIME_FACTOR[use.time].value;
  const incised = use.incised === true ? INCISED_FACTOR.strength.value : 1;
  const size = values.sized ? 1 : sizeFactor(use.board, 'bending');
  const bending: readonly Factor[] = [
    ['load duration', time],
    ['size', size],
    ['flat use', use.stands === 'flat' ? flatUseFactor(use.board) : 1],
    ['wet', use.wet ? wetBendingFactor(values.bending * size) : 1],
    ['incising', incised],
    ['sharing', use.sharing === true ? SHARING_FACTOR.value : 1],
  ];
  const shear: readonly Factor[] = [
    ['load duration', time],
    ['wet', use.wet ? WET_FACTOR.shear.value : 1],
    ['incising', incised],
  ];
  const wetStiffness = use.wet ? WET_FACTOR.stiffness.value : 1;
  const incisedStiffness = use.incised === true ? INCISED_FACTOR.stiffness.value : 1;
  return {
    bending: values.bending * product(bending),
    shear: values.shear * product(shear),
    across: values.across * (use.wet ? WET_FACTOR.across.value : 1),
    stiffness: values.stiffness * wetStiffness * incisedStiffness,
    creep:
      use.time === 'permanent' ? (use.wet ? CREEP_FACTOR.wet.value : CREEP_FACTOR.dry.value) : 1,
    shearBreadth: 1,
    words: {
      bending: factorWords(values.bending, bending, display),
      shear: factorWords(values.shear, shear, display),
    },
  };
}

function byEurocode(values: ClassValues, use: BeamUse, display: Display): Allowed {
  const service: ServiceClass = use.wet ? 3 : 2;
  const load = GAMMA_LOAD[use.time === 'permanent' ? 'permanent' : 'variable'].value;
  const depth = use.stands === 'edge' ? use.board.width : use.board.thickness;
  const shared: readonly Factor[] = [
    ['load time and weather', kmod(service, LOAD_CLASS[use.time])],
    ['material', 1 / GAMMA_M.value],
    ['load', 1 / load],
    ['sharing', use.sharing === true ? SYSTEM_FACTOR.value : 1],
  ];
  const bending: readonly Factor[] = [...shared, ['size', depthFactor(depth)]];
  return {
    bending: values.bending * product(bending),
    shear: values.shear * product(shared),
    across: values.across * product(shared),
    stiffness: values.stiffness,
    creep: use.time === 'permanent' ? 1 + kdef(service) : 1,
    shearBreadth: CRACK_FACTOR.value,
    words: {
      bending: factorWords(values.bending, bending, display),
      shear: factorWords(values.shear, shared, display),
    },
  };
}

function product(factors: readonly Factor[]): number {
  return factors.reduce((all, [, value]) => all * value, 1);
}

/** "725 psi x size 1.5 x flat use 1.1": factors of one are left out. */
function factorWords(value: Megapascals, factors: readonly Factor[], display: Display): string {
  const told = factors
    .filter(([, factor]) => factor !== 1)
    .map(([name, factor]) => `${name} ${formatNumber(factor, 2)}`);
  return [formatStress(value, display), ...told].join(' x ');
}
