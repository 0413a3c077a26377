import type { HoldVerdict } from '../materials/beam-check.js';
import type { Species } from '../materials/species.js';
import type { Figure } from '../measure/figure.js';
import type { KgPerSquareMeter } from '../measure/floor-load.js';
import type { Display, Kilograms, SquareMm } from '../measure/quantities.js';

/** One answer to "will it hold?", with the sum that was done and what to change. */
export type HoldRow = {
  readonly id: string;
  readonly say: string;
  /** The sum in words, numbers put in. */
  readonly sum: string;
  /** What it carries by this sum, or what presses. */
  readonly value: Figure;
  readonly limit: string;
  readonly verdict: HoldVerdict;
  /** What to change; empty where it holds. */
  readonly better: string;
  readonly source: string;
};

/** Boards that carry between two supports: their paths, and those of what they stand on. */
type BeamRole<Kind extends string> = {
  readonly kind: Kind;
  readonly id: string;
  readonly say: string;
  readonly beams: readonly string[];
  readonly on: readonly string[];
};

/** Beams that a row of people sits over. */
export type SeatRole = BeamRole<'seat'>;

/** Slats that people sit on, and the beams under them. */
export type SlatRole = BeamRole<'slats'>;

/** Planks that the pots of all boxes stand on, and the bearers under them. */
export type ShelfRole = BeamRole<'shelf'>;

/** Screws that a load hangs on: the rule of the joint, by the part under the head. */
export type ScrewRole = {
  readonly kind: 'screws';
  readonly id: string;
  readonly say: string;
  /** Name of the joint's rule, with the use before it where there are several: `planter_box.bearer_rail`. */
  readonly joint: string;
  /** Shared pots, or one person pushing the part sideways. */
  readonly carries: 'pots' | 'push';
};

/** What stands on feet of its own. */
export type StandRole = {
  readonly kind: 'stand';
  readonly id: string;
  readonly say: string;
  readonly parts: readonly string[];
  readonly carries: 'people' | 'pots';
  /** Boards that people sit on, for tipping. */
  readonly seat: readonly string[];
};

export type HoldRole = SeatRole | SlatRole | ShelfRole | ScrewRole | StandRole;

/** Pots and soil in all boxes together. */
export type PotLoad = { readonly planted: Kilograms; readonly soaked: Kilograms };

export type FloorKind =
  | { readonly kind: 'ground' }
  | {
      readonly kind: 'raised';
      /** What its owner says it carries; 40 lb/sq ft where nobody said. */
      readonly limit?: KgPerSquareMeter;
      /** Size of the whole deck, where it is known. */
      readonly area?: SquareMm;
    };

export type HoldInputs = {
  readonly display: Display;
  readonly species: Species;
  /** Out in the weather. */
  readonly wet: boolean;
  readonly roles: readonly HoldRole[];
  readonly pots: PotLoad;
  readonly floor: FloorKind;
};
