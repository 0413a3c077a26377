import type { Section } from '../materials/section.js';
import type { Mm, SquareMm } from '../measure/quantities.js';

/** Axes: x to the right, y away from you, z up. */
export type Axis = 'x' | 'y' | 'z';
export const AXES: readonly Axis[] = ['x', 'y', 'z'];

export type Point = { readonly x: Mm; readonly y: Mm; readonly z: Mm };
export type Box = { readonly min: Point; readonly max: Point };

/** Which hole in a board: the box of wood that is taken away, in the piece's own space. */
export type Notch = {
  /** Id of the notch rule. */
  readonly rule: string;
  readonly box: Box;
  /** Id of the part that it makes room for. */
  readonly for: string;
};

/**
 * One board standing in space. `id` is unique (`planter/left.panel/front.post/1`); `path` is the id
 * without its stands and numbers (`planter.panel.post`), the name by which a recipe picks it.
 */
export type Part = {
  readonly id: string;
  readonly path: string;
  readonly name: string;
  /** Kind of board in the recipe, for example `frame`. */
  readonly board: string;
  readonly section: Section;
  readonly runs: Axis;
  /** Axis that the wide face looks along. */
  readonly face: Axis;
  readonly length: Mm;
  /** The blank as it is crosscut, before notching. */
  readonly box: Box;
  readonly notches: readonly Notch[];
  /** What is left after notching, as boxes that do not overlap. */
  readonly solid: readonly Box[];
  readonly loose: boolean;
};

export type Side = { readonly axis: Axis; readonly toward: 1 | -1 };

/** A flat place where two parts touch. */
export type Contact = {
  readonly a: string;
  readonly b: string;
  /** Normal of the touching faces, pointing from a to b. */
  readonly normal: Side;
  /** The shared rectangle; its extent along the normal is zero. */
  readonly patch: Box;
  readonly area: SquareMm;
};

/** The same pair of parts touching at a joint of the recipe. */
export type Joint = {
  readonly rule: string;
  readonly name: string;
  readonly with: 'screw' | 'brad' | 'glue';
  readonly each: number;
  readonly glue: boolean;
  /** Part under the head, and part that holds the point. */
  readonly from: string;
  readonly into: string;
  /** Driving direction, from head to point. */
  readonly drive: Side;
  /** Where the fasteners go: the touching patch square to the driving direction. */
  readonly patch: Box;
  /** Wood under the head, and wood that holds the point, along the driving axis at the patch. */
  readonly through: Mm;
  readonly holds: Mm;
  readonly grain: 'side' | 'end';
  /** All faces of the pair that touch, for glue. */
  readonly gluedArea: SquareMm;
};

/** Even spacing as solved: see spacing.ts. */
export type Spread = {
  readonly layout: string;
  /** Paths of the parts, and the stand it belongs to (`planter/left.panel/front` or empty). */
  readonly spreads: string;
  readonly within: string;
  readonly over: Mm;
  readonly piece: Mm;
  readonly count: number;
  readonly gap: Mm;
  readonly ends: 'flush' | 'gap' | 'half';
  readonly endGap: Mm;
  /** Near edges, from the datum end, in full precision. */
  readonly marks: readonly Mm[];
  readonly want: Mm;
  readonly least: Mm;
  readonly most: Mm;
};

/** The whole piece as boards in space. */
export type Model = {
  readonly parts: readonly Part[];
  readonly contacts: readonly Contact[];
  readonly joints: readonly Joint[];
  readonly spreads: readonly Spread[];
  readonly overall: Box;
};
