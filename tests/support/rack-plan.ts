import { SIXTEENTHS } from '../../src/measure/displays.js';
import { COMPUTED } from '../../src/measure/figure.js';
import { inches } from '../../src/measure/inch.js';
import { inSawOrder } from '../../src/plan/cutting-order.js';
import type { CutRow, Plan, Step } from '../../src/plan/plan.js';
import { purchases } from '../../src/plan/purchases.js';
import { type Setting, settingOf } from '../../src/plan/setting.js';
import type { CutSoFar, WorkSoFar } from '../../src/plan/work-so-far.js';
import { step } from './journal.js';
import { smallPlan } from './small-plan.js';

const figure = (value: number) => ({ value, unit: 'mm', because: '', source: COMPUTED }) as const;

/** So many pieces of a 2x4 under one mark; lengths in inches. */
export type PieceInTest = readonly [mark: string, length: number, count: number, name?: string];

export type RackInTest = {
  readonly pieces: readonly PieceInTest[];
  /** Lengths in the store in inches, with prices in cents where there are any. */
  readonly store: readonly (readonly [length: number, cents?: number])[];
  /** Boards on hand, lengths in inches. */
  readonly onHand?: readonly number[];
};

/** 1/4 in comes off the first end, and every cut takes 1/8 in. */
export function settingFor({ store, onHand = [] }: Omit<RackInTest, 'pieces'>): Setting {
  return {
    ...settingOf({}, SIXTEENTHS),
    offers: store.map(([length, cents]) => ({
      section: '2x4',
      length: inches(length),
      ...(cents === undefined ? {} : { cents }),
    })),
    onHand: onHand.map(length => ({ section: '2x4', length: inches(length), count: 1 })),
  };
}

/** A plan that cuts these pieces, one step for each length, in the order of sawing. */
export function rackPlan(about: RackInTest): { readonly plan: Plan; readonly setting: Setting } {
  const setting = settingFor(about);
  const rows = about.pieces.map(rowOf);
  const order = inSawOrder(rows, row => row);
  const cutList = rows.map(row => ({ ...row, turn: order.indexOf(row) + 1 }));
  const plan: Plan = {
    ...smallPlan(),
    cutList,
    purchases: purchases(cutList, setting),
    steps: stepsOf(cutList),
  };
  return { plan, setting };
}

/** Id of the step that cuts pieces of so many inches. */
export function stepAt(length: number): string {
  return `cut-boards/2x4@${inches(length).toFixed(2)}`;
}

/** So many pieces cut of each length in inches; nothing spoiled. */
export function workOf(cut: Readonly<Record<number, number>>): WorkSoFar {
  return { ...cutSoFar(cut), rackChanges: [] };
}

export function cutSoFar(cut: Readonly<Record<number, number>>): CutSoFar {
  const tallies = Object.entries(cut).map(([length, count]) => [stepAt(Number(length)), count]);
  return { tallies: new Map(tallies as [string, number][]), done: new Set() };
}

/** The work after a piece was spoiled; `cut` is what is good without it. */
export function spoiling(
  cut: Readonly<Record<number, number>>,
  about: { readonly mark: string; readonly length: number; readonly left: number },
  before: WorkSoFar = workOf({}),
): WorkSoFar {
  const soFar = cutSoFar(cut);
  const change = {
    kind: 'spoiled',
    step: stepAt(about.length),
    section: '2x4',
    mark: about.mark,
    left: inches(about.left),
    ...soFar,
  } as const;
  return { ...soFar, rackChanges: [...before.rackChanges, change] };
}

/** The work after a board of so many inches came. */
export function adding(
  cut: Readonly<Record<number, number>>,
  length: number,
  before: WorkSoFar,
): WorkSoFar {
  const soFar = cutSoFar(cut);
  const change = {
    kind: 'added',
    section: '2x4',
    length: inches(length),
    count: 1,
    ...soFar,
  } as const;
  return { ...soFar, rackChanges: [...before.rackChanges, change] };
}

/** The work after the board at a place on the rack turned out bad from a to b, in inches. */
export function parting(
  cut: Readonly<Record<number, number>>,
  about: {
    readonly place: number;
    readonly from: number;
    readonly to: number;
    readonly board?: string;
  },
  before: WorkSoFar = workOf({}),
): WorkSoFar {
  const soFar = cutSoFar(cut);
  const change = {
    kind: 'board-spoiled',
    section: '2x4',
    place: about.place,
    board: about.board ?? `board ${about.place + 1}`,
    from: inches(about.from),
    to: inches(about.to),
    ...soFar,
  } as const;
  return { ...soFar, rackChanges: [...before.rackChanges, change] };
}

function rowOf([mark, length, count, name = `Part ${mark}`]: PieceInTest): Omit<CutRow, 'turn'> {
  return {
    mark,
    name,
    uses: [],
    pieces: Array.from({ length: count }, (_, at) => `${mark}/${at + 1}`),
    section: '2x4',
    width: figure(inches(3.5)),
    thickness: figure(inches(1.5)),
    length: figure(inches(length)),
    count,
    notches: [],
  };
}

function stepsOf(rows: readonly CutRow[]): readonly Step[] {
  const inTurn = rows.toSorted((a, b) => a.turn - b.turn);
  const lengths = [...new Set(inTurn.map(row => row.length.value))];
  return lengths.map(length => {
    const bright = rows.filter(row => row.length.value === length).flatMap(row => row.pieces);
    return step(`cut-boards/2x4@${length.toFixed(2)}`, {
      phase: 'cut',
      title: `Cut ${bright.length}`,
      tally: { of: 'piece', count: bright.length },
      bright,
    });
  });
}
