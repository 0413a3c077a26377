import type { Formula, Template } from './formula.js';
import type { Place } from './place.js';
import type { Selector } from './recipe.js';

export type Phase =
  | 'plan'
  | 'buy'
  | 'cut'
  | 'notch'
  | 'dry-fit'
  | 'assemble'
  | 'finish'
  | 'place'
  | 'hand-over';

export type StepRule = {
  readonly id: string;
  readonly phase: Phase;
  readonly title: Template;
  readonly who: 'lead' | 'helper' | 'both';
  readonly tools: readonly string[];
  readonly say: readonly Template[];
  /** The same for somebody who is new to it. */
  readonly plain: readonly Template[];
  readonly why?: Template;
  /** Checked on the first piece, before the others are made. */
  readonly first?: Template;
  readonly look: readonly Template[];
  /** Ids of cautions that the program knows, beside those of the tools. */
  readonly care: readonly string[];
  /** Parts that this step cuts: it becomes one step for each stop setting. */
  readonly cuts: readonly Selector[];
  /** Notches that this step cuts. */
  readonly notches: readonly string[];
  /** Joints that this step closes. */
  readonly joins: readonly string[];
  /** Sizes that can be measured here; what is not cut yet follows them. */
  readonly measure: readonly MeasureRule[];
  /** Parts or uses of assemblies that are set in place here: bright in the picture. */
  readonly sets: readonly Selector[];
  /** Parts that are worked on here while they lie loose on the bench: cut by then, set in place later. */
  readonly loose: readonly Selector[];
  /** Steps that wait for this one. Without boards of its own it holds up those alone, and waits for nothing itself. */
  readonly before: readonly string[];
  readonly tally?: Formula;
  /** What is counted out here for the steps that come. */
  readonly counts?: 'fasteners';
  readonly timers: readonly TimerRule[];
  /** Minutes of hands-on work beside what the counts imply. */
  readonly minutes?: Formula;
  readonly when?: Formula;
  readonly at: Place;
};

/** A size of the piece that the tape may find other than planned. */
export type MeasureRule = {
  /** `seat`, a size or an answer of the whole; `end_panel.opening_height`, a size of a use. */
  readonly size: string;
  /** What is measured, in words. */
  readonly say: string;
  /** Which of several readings counts: a piece that has to go in everywhere goes by the least. */
  readonly take: 'average' | 'least' | 'most';
  readonly at: Place;
};

export type TimerRule = {
  readonly id: string;
  readonly name: string;
  /** A rule of the trade, or a number of minutes. */
  readonly lasts: 'glue-clamp' | 'glue-cure' | 'sealer-dwell' | 'sealer-dry' | Formula;
  /** Steps that must not begin before it has run out. */
  readonly before: readonly string[];
  /** What to do when it rings. */
  readonly then: string;
};
