import type { Figure } from '../measure/figure.js';
import type { Display, Mm } from '../measure/quantities.js';
import type { Box, Model, Side } from '../model/part.js';
import type { Phase } from '../recipe/recipe.js';
import type { DayRule } from './day-rule.js';
import type { FootRow } from './foot-rows.js';
import type { GlueUpRow } from './glue-rows.js';
import type { HoldRow } from './hold-row.js';
import type { MeasureRow } from './measures.js';
import type { PlanterRow } from './planter.js';
import type { Purchase } from './purchase.js';
import type { SquareRow } from './squares.js';
import type { StepSetting, StepTimer } from './step-parts.js';
import type { TimePlan } from './time.js';
import type { DayWork } from './told-day.js';
import type { ToolRow } from './tool-row.js';

export type { BoughtBoard, BuyLine, Purchase } from './purchase.js';
export type { StepSetting, StepTimer, TradeWait } from './step-parts.js';
export type { Session, TimePlan, Turn } from './time.js';
export type { ToolBriefing, ToolRow } from './tool-row.js';

/**
 * The worked-out job: everything that follows from the boards in space. Types only. Lengths a person
 * marks or cuts are already on the marking grid; each number is a figure that says where it is from.
 */
export type Plan = {
  readonly recipe: string;
  readonly title: string;
  readonly about: string;
  readonly display: Display;
  readonly answers: readonly AnswerLine[];
  readonly overall: { readonly width: Figure; readonly depth: Figure; readonly height: Figure };
  readonly weight: Figure;
  readonly sizes: readonly SizeLine[];
  /** What can be measured, and what was. */
  readonly measures: readonly MeasureRow[];
  readonly cutList: readonly CutRow[];
  readonly sawOrder: readonly StopSetting[];
  readonly notches: readonly NotchRow[];
  readonly purchases: readonly Purchase[];
  readonly cost: Figure;
  readonly spacing: readonly SpacingRow[];
  readonly screws: readonly FastenerRow[];
  readonly hardware: readonly HardwareRow[];
  readonly glue: GluePlan;
  readonly sealer: SealerPlan;
  /** How the steps that close glued joints are split. */
  readonly glueUps: readonly GlueUpRow[];
  /** What a day has to be like for gluing, and for sealing. */
  readonly glueDay: readonly DayRule[];
  readonly sealDay: readonly DayRule[];
  readonly squares: readonly SquareRow[];
  /** Where the ground falls. */
  readonly feet: readonly FootRow[];
  readonly planters: readonly PlanterRow[];
  readonly fit: readonly FitCheck[];
  readonly holds: readonly HoldRow[];
  /** What the sums of `holds` leave out. */
  readonly holdsNot: readonly string[];
  readonly tools: readonly ToolRow[];
  readonly cautions: readonly Caution[];
  readonly warnings: readonly string[];
  readonly steps: readonly Step[];
  readonly time: TimePlan;
  readonly model: Model;
};

export type AnswerLine = { readonly id: string; readonly say: string; readonly text: string };
export type SizeLine = { readonly id: string; readonly figure: Figure };

/** Equal pieces: same section, length and notches; one mark wherever they end up. */
export type CutRow = {
  /** `A`, `B` … `Z`, `AA`: pieces are marked A1, A2 … */
  readonly mark: string;
  readonly name: string;
  /** Part paths that use it. */
  readonly uses: readonly string[];
  /** Ids of the parts, in the order of their piece numbers. */
  readonly pieces: readonly string[];
  readonly section: string;
  readonly width: Figure;
  readonly thickness: Figure;
  readonly length: Figure;
  readonly count: number;
  /** When it comes to the saw among all rows, from 1; its pieces stand on their boards in that order. */
  readonly turn: number;
  /** Ids of rows in `notches`. */
  readonly notches: readonly string[];
  /** Mark of the piece that is its mirror image, where there is one. */
  readonly otherHand?: string;
};

/** One setting of the stop: equal lengths of one section. */
export type StopSetting = {
  readonly id: string;
  readonly section: string;
  readonly length: Figure;
  readonly count: number;
  readonly marks: readonly {
    readonly mark: string;
    readonly name: string;
    readonly count: number;
  }[];
};

/** A notch as it is marked on the piece: measured from one end of the board. */
export type NotchRow = {
  readonly id: string;
  readonly rule: string;
  readonly name: string;
  /** Mark of the piece. */
  readonly mark: string;
  /** From the nearer end of the board to the near shoulder; 0 where it is cut from the end in. */
  readonly fromEnd: Figure;
  readonly along: Figure;
  readonly depth: Figure;
  /** Wood left beside it: the tongue. */
  readonly left: Figure;
  /** Cut into the wide face or into the edge. */
  readonly into: 'edge' | 'face';
  /** How many there are on each piece, and in all. */
  readonly each: number;
  readonly count: number;
  readonly where: string;
};

export type SpacingRow = {
  readonly id: string;
  readonly name: string;
  readonly count: number;
  readonly over: Figure;
  readonly piece: Figure;
  readonly gap: Figure;
  readonly endGap: Figure;
  readonly ends: 'flush' | 'gap' | 'half';
  /** Near edges from the datum, each rounded alone to the marking grid. */
  readonly marks: readonly Mm[];
  /** Pieces plus gaps, written out, with what they add up to. */
  readonly closing: string;
  /** Length of a spacer on the grid, and where stepping it would end. */
  readonly spacer: Figure;
  readonly drift: Figure;
  /** One fewer and one more, for comparison. */
  readonly beside: readonly { readonly count: number; readonly gap: Mm }[];
  readonly places: number;
  /** The gap through the year, where the boards move across it. */
  readonly year: GapYear;
};

/** A gap that is set today, and what the weather makes of it. */
export type GapYear = {
  readonly today: Figure;
  readonly wettest: Figure;
  readonly driest: Figure;
  /** The gap that would go well all year. */
  readonly better: Figure;
  readonly verdict: string;
  readonly words: readonly string[];
};

export type FastenerRow = {
  readonly id: string;
  readonly joint: string;
  readonly kind: 'screw' | 'brad';
  /** `No. 10 x 3-1/2 in`. */
  readonly what: string;
  readonly length: Figure;
  readonly through: Figure;
  readonly bite: Figure;
  readonly clearance?: Figure;
  readonly pilot?: Figure;
  readonly countersink?: Figure;
  readonly drills: string;
  readonly grain: 'side' | 'end';
  readonly each: number;
  readonly places: number;
  readonly count: number;
  /** Where the screws stand in each different overlap, seen from their heads. */
  readonly where: readonly string[];
  readonly spots: readonly ScrewSpots[];
  readonly notes: readonly string[];
  /** Overlaps that are too small for their screws, each with why. */
  readonly noRoom: readonly string[];
  /** What a plain butt through the full width would have needed, where a notch saved it. */
  readonly without?: string;
};

/** One overlap of two boards, and where its screws stand on it. */
export type ScrewSpots = {
  /** Part under the heads, and part around the points. */
  readonly from: string;
  readonly into: string;
  readonly drive: Side;
  readonly patch: Box;
  /** From the end of the part under the heads, or from where the overlap begins; and from one border. */
  readonly places: readonly { readonly along: Mm; readonly across: Mm }[];
};

export type HardwareRow = {
  readonly what: string;
  readonly count: Figure;
  /** As sold: boxes, bottles, cans. */
  readonly buy: string;
  readonly note: string;
};

export type GluePlan = {
  readonly kind: string;
  readonly area: Figure;
  readonly amount: Figure;
  readonly buy: string;
  readonly openTime: Figure;
  readonly clampTime: Figure;
  readonly cureTime: Figure;
  readonly lowest: Figure;
  readonly notes: readonly string[];
};

export type SealerPlan = {
  readonly kind: string;
  readonly faces: Figure;
  readonly endGrain: Figure;
  readonly coats: number;
  readonly amount: Figure;
  readonly buy: string;
  /** The cans with the least left over, and what that is. */
  readonly leastOver: { readonly cans: string; readonly over: Figure };
  readonly dwell: Figure;
  readonly dry: Figure;
  /** How long a coat usually lasts outdoors, in years, and who says so. */
  readonly lasts: { readonly from: number; readonly to: number; readonly source: string };
  /** What its kind asks of those who brush it on. */
  readonly care: string;
  /** Rags with it on them can catch fire by themselves. */
  readonly hotRags: boolean;
  readonly notes: readonly string[];
};

export type Verdict = 'fits' | 'look again' | 'does not fit';

export type FitCheck = {
  readonly id: string;
  readonly say: string;
  readonly value: Figure;
  readonly limit: string;
  readonly verdict: Verdict;
  readonly advice: string;
  readonly source: string;
};

export type Caution = {
  readonly id: string;
  readonly title: string;
  readonly lines: readonly string[];
  readonly source: string;
};

export type Step = {
  /** Id of the recipe's step, with a number where one rule makes several (`cut-frame/2`). */
  readonly id: string;
  readonly phase: Phase;
  readonly title: string;
  readonly who: 'lead' | 'helper' | 'both';
  /** Tools of this step that the helper does not hold. */
  readonly handsOff: readonly string[];
  readonly tools: readonly string[];
  /** The same as `say` for somebody who is new to it; empty where `say` is plain enough. */
  readonly plain: readonly string[];
  readonly say: readonly string[];
  readonly why: string;
  readonly look: readonly string[];
  /** The first of `look` is made on the first piece, before the others are counted. */
  readonly firstCheck: boolean;
  /** Timers of earlier steps that must have run out before this one begins. */
  readonly after: readonly string[];
  /** Wants a day that suits glue, or sealer. */
  readonly day?: DayWork;
  /** Steps that have to be done before this one. */
  readonly needs: readonly string[];
  readonly care: readonly string[];
  /** The one number to set or to hit, large; and its settings beside it. */
  readonly big?: { readonly text: string; readonly caption: string };
  readonly settings: readonly StepSetting[];
  readonly tally?: { readonly of: string; readonly count: number };
  /** What is counted out, cup by cup: the next one is the large number. */
  readonly cups?: readonly {
    readonly count: number;
    readonly what: string;
    readonly joint: string;
  }[];
  readonly timers: readonly StepTimer[];
  /** Names of the joints that it makes, as recipes name them. */
  readonly joins: readonly string[];
  /** Ids of the parts that this step adds or works on, and those that stand there already. */
  readonly bright: readonly string[];
  readonly standing: readonly string[];
  /** How long it keeps those who do it, fetching, tidying and short waits counted. */
  readonly minutes: Figure;
};
