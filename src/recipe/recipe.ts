import type { Formula, Template } from './formula.js';
import type { Place } from './place.js';
import type { StepRule } from './step-rule.js';

export type { MeasureRule, Phase, StepRule, TimerRule } from './step-rule.js';

/**
 * What a project file may say, after reading: names are unique, every formula is parsed, and each
 * part of it remembers its place in the file. Types only; the words of the file are the same words.
 */
export type Axis = 'x' | 'y' | 'z';

export type Recipe = {
  readonly format: 1;
  readonly id: string;
  readonly title: string;
  /** One or two sentences: what will stand there at the end. */
  readonly about: string;
  readonly groups: readonly QuestionGroup[];
  readonly boards: readonly BoardRule[];
  readonly assemblies: readonly Assembly[];
  /** The whole piece: an assembly that takes nothing. */
  readonly whole: Assembly;
  readonly fit: readonly FitRule[];
  readonly holds: readonly HoldRule[];
  readonly steps: readonly StepRule[];
};

export type QuestionGroup = {
  readonly id: string;
  readonly title: string;
  readonly questions: readonly Question[];
};

export type QuestionKind =
  | 'length'
  | 'count'
  | 'choice'
  | 'yes'
  | 'text'
  | 'hours'
  /** A time of day: `18:00`. */
  | 'clock'
  /** A day of the calendar, or none yet. */
  | 'date'
  /** Days on which somebody works: `Tue Thu, Sat 9:00-16:00`. */
  | 'days'
  /** A list of things with named lengths, such as pots with height and diameter. */
  | 'items'
  /** Store lengths with prices: `2x4 8ft @ 7.48`. */
  | 'offers'
  /** Boards already there: `2x4 52in`. */
  | 'boards';

export type Question = {
  readonly id: string;
  readonly kind: QuestionKind;
  /** What is asked, as said to a person. */
  readonly say: string;
  readonly why: string;
  readonly usual?: Formula;
  readonly from?: Formula;
  readonly to?: Formula;
  readonly options: readonly Option[];
  /** For `items`: the names of the lengths of each thing, in the order they are typed. */
  readonly fields: readonly string[];
  /** Asked only where this holds. */
  readonly when?: Formula;
  readonly at: Place;
};

export type Option = {
  readonly id: string;
  readonly say: string;
  readonly why: string;
};

export type NamedSize = {
  readonly id: string;
  readonly formula: Formula;
  /** In words, what it is and why it is so. */
  readonly why: string;
  readonly at: Place;
};

/** A kind of board by trade name, for example `frame: 2x4`; the name may be chosen by a formula. */
export type BoardRule = {
  readonly id: string;
  readonly section: Formula;
  /** Some kinds of wood never follow the answer, a strip of composite for example. */
  readonly at: Place;
};

export type Assembly = {
  readonly id: string;
  readonly takes: readonly Take[];
  readonly sizes: readonly NamedSize[];
  readonly parts: readonly PartRule[];
  readonly layouts: readonly LayoutRule[];
  readonly stacks: readonly StackRule[];
  readonly places: readonly PlacedAssembly[];
  readonly notches: readonly NotchRule[];
  readonly joints: readonly JointRule[];
  readonly at: Place;
};

export type Take = { readonly id: string; readonly kind: 'length' | 'count'; readonly at: Place };

export type Triple = readonly [Formula, Formula, Formula];

export type PartRule = {
  readonly id: string;
  readonly name: string;
  readonly board: string;
  readonly length: Formula;
  /** Axis of the length. */
  readonly runs: Axis;
  /** Axis that the wide face looks along. */
  readonly face: Axis;
  /** The corner nearest the origin, before anything is notched away. */
  readonly corner: Triple;
  readonly repeat?: Repeat;
  readonly when?: Formula;
  /** Lies loose: needs no joint. */
  readonly loose: boolean;
  readonly at: Place;
};

export type Repeat =
  | { readonly kind: 'count'; readonly count: Formula; readonly step: Triple }
  /** As many and where a layout says; the layout replaces the corner along its axis. */
  | { readonly kind: 'layout'; readonly layout: string };

export type LayoutRule = {
  readonly id: string;
  /** The part that is spread, in the same assembly. */
  readonly spread: string;
  readonly along: Axis;
  /** The datum end. */
  readonly from: Formula;
  readonly over: Formula;
  readonly want: Formula;
  readonly least: Formula;
  readonly most: Formula;
  readonly ends: 'flush' | 'gap' | 'half';
  readonly at: Place;
};

/** Loose blocks stacked flat to a height, once for each thing in a list answer. */
export type StackRule = {
  readonly id: string;
  readonly name: string;
  /** Kinds of board the layers may be cut from. */
  readonly boards: readonly string[];
  readonly length: Formula;
  readonly runs: Axis;
  readonly height: Formula;
  readonly corner: Triple;
  /**
   * Question whose list is walked. Formulas of the stack see `item.<field>`, `item.number` (from 1)
   * and `item.before.<field>` (the sum over the things before it); everywhere a list answer `pots`
   * gives `pots.count`, and `pots.<field>.sum`, `.most` and `.least` (0 for an empty list).
   */
  readonly each: string;
  /** Equal stacks beside each other under each thing. */
  readonly repeat?: { readonly kind: 'count'; readonly count: Formula; readonly step: Triple };
  readonly at: Place;
};

export type PlacedAssembly = {
  /** Name of this use, for example `end_panel`. */
  readonly id: string;
  readonly assembly: string;
  readonly sizes: readonly { readonly take: string; readonly formula: Formula }[];
  readonly stands: readonly Stand[];
  readonly when?: Formula;
  readonly at: Place;
};

export type Stand = {
  /** `left`, `right`, `front` …: becomes part of the piece's id. */
  readonly id: string;
  /** Corner nearest the origin of the turned assembly. */
  readonly corner: Triple;
  /** Quarter turns about the upright axis, counterclockwise seen from above. */
  readonly turn: 0 | 1 | 2 | 3;
  /** Axis along which it is mirrored after turning, where it is the other hand. */
  readonly mirror?: Axis;
};

/** `end_panel.post` picks that part wherever the use `end_panel` stands; `post` one of this assembly. */
export type Selector = { readonly path: string; readonly at: Place };

export type NotchRule = {
  readonly id: string;
  readonly name: string;
  /** The boards that give way… */
  readonly cut: Selector;
  /** …where these boards are. */
  readonly over: Selector;
  /**
   * `all`: the boards of `cut` lose the whole overlap. `half`: those of `cut` lose its half toward the
   * plus end of the axis `along`, those of `over` lose the other half.
   */
  readonly share: 'all' | 'half';
  readonly along?: Axis;
  readonly at: Place;
};

export type JointRule = {
  readonly id: string;
  readonly name: string;
  /** The board under the head of the fastener. */
  readonly from: Selector;
  readonly into: Selector;
  readonly with: 'screw' | 'brad' | 'glue';
  /**
   * Fasteners at each place where the two touch; 0 with glue alone. The formula sees `patch.long` and
   * `patch.short`, the sides of that place.
   */
  readonly each: Formula;
  readonly glue: boolean;
  /** Axis of driving, in the frame of this assembly; otherwise the largest touching face decides. */
  readonly drive?: Axis;
  readonly at: Place;
};

export type FitRule = {
  readonly id: string;
  readonly say: string;
  readonly value: Formula;
  readonly least?: Formula;
  readonly most?: Formula;
  readonly when?: Formula;
  /** Written `must: yes`: where it does not hold the piece can't stand there; otherwise look again. */
  readonly must: boolean;
  /** What to do when it does not hold. */
  readonly otherwise: Template;
  readonly source: string;
  readonly at: Place;
};

/**
 * What has to carry what. `seat`: beams that people sit over; `slats`: what they sit on; `shelf`: planks
 * under pots; `screws`: a joint that a load hangs on; `stand`: what stands on feet of its own.
 */
export type HoldRule = {
  readonly id: string;
  readonly role: 'seat' | 'slats' | 'shelf' | 'screws' | 'stand';
  readonly say: string;
  /** The boards that carry, or for `stand` the parts that stand together. */
  readonly parts: readonly Selector[];
  /** What they lie on; for `stand`, the boards that people sit on. */
  readonly on: readonly Selector[];
  /** For `screws`: the joint. */
  readonly joint?: string;
  readonly carries?: 'people' | 'pots' | 'push';
  readonly at: Place;
};
