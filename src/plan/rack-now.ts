import { formatBoardLength } from '../measure/format-length.js';
import type { Mm } from '../measure/quantities.js';
import { sameLength } from '../measure/tolerance.js';
import type { Plan } from './plan.js';
import {
  afterCuts,
  afterLoss,
  plannedRack,
  type Rack,
  type RackBoard,
  relabeled,
  spare,
} from './rack.js';
import { partedRack, placeOf } from './rack-parted.js';
import { type Replanned, replan } from './replan.js';
import type { Setting } from './setting.js';
import {
  type AddedBoards,
  type CutSoFar,
  type CutStep,
  cutStepsOf,
  goodOfLength,
  type RackChange,
  type SpoiledPiece,
  stillNeeded,
  type WorkSoFar,
} from './work-so-far.js';

export type RackNow = {
  readonly rack: Rack;
  /** What the last change led to; none as long as all went as planned. */
  readonly last: Replanned | undefined;
};

export type Bench = { readonly plan: Plan; readonly work: WorkSoFar; readonly setting: Setting };

/**
 * What really lies on the rack of a section: the boards of the plan, cut as far as the pieces are counted,
 * shared out again after every piece that was spoiled and every board that came. Undefined for a section
 * that the plan does not buy. The same work gives the same rack.
 */
export function rackNow(section: string, { plan, work, setting }: Bench): RackNow | undefined {
  const first = firstOf(section, { plan, setting });
  if (first === undefined) return undefined;
  const steps = cutStepsOf(plan).filter(step => step.section === section);
  const own = work.rackChanges.filter(change => change.section === section);
  const { rack, last, cut } = own.reduce((before, change, at) => {
    const key = keyOf(change);
    const known = before.then.get(key);
    if (known !== undefined) return known;
    const now = afterChange(before, own.slice(0, at + 1), { plan, setting, steps });
    const next = { ...now, then: new Map() };
    before.then.set(key, next);
    return next;
  }, first);
  const sawn = sawnSince(rack, steps, { from: cut, to: work });
  return { rack: relabeled(sawn, stillNeeded(plan, section, work)), last };
}

const NOTHING_CUT: CutSoFar = { tallies: new Map(), done: new Set() };

/** The rack right after a change, what was planned anew then, and how far the cutting was. */
type Changed = RackNow & { readonly cut: CutSoFar };

type Ground = Pick<Bench, 'plan' | 'setting'> & { readonly steps: readonly CutStep[] };

/** The last of these changes upon a rack that has gone through those before it. */
function afterChange(
  before: Changed,
  upTo: readonly RackChange[],
  { plan, setting, steps }: Ground,
): Changed {
  const change = upTo.at(-1);
  if (change === undefined) return before;
  const lost = change.kind === 'spoiled' ? lengthOf(change, steps) : undefined;
  const sawn = sawnSince(before.rack, steps, { from: before.cut, to: change, lost });
  const needed = stillNeeded(plan, sawn.section, { ...change, rackChanges: upTo });
  const hasRemains = change.kind === 'spoiled' && change.left > 0;
  const last = replan(changedRack(sawn, change, setting), { needed, setting, hasRemains });
  return { rack: last.rack, last, cut: change };
}

function changedRack(rack: Rack, change: RackChange, setting: Setting): Rack {
  if (change.kind === 'board-spoiled')
    return partedRack(rack, placeOf(change, rack), change, setting.display);
  return { ...rack, boards: [...rack.boards, ...boardsOf(change, setting)] };
}

/** What a row of changes led to, and what each change after it does: worked out once for a plan. */
type Branch = Changed & { readonly then: Map<string, Branch> };

const roots = new WeakMap<Plan, Map<string, Branch>>();

/** The rack of a section before anything happened to it; undefined where the plan buys none of it. */
function firstOf(
  section: string,
  { plan, setting }: Pick<Bench, 'plan' | 'setting'>,
): Branch | undefined {
  const known = roots.get(plan) ?? new Map<string, Branch>();
  roots.set(plan, known);
  const found = known.get(section);
  if (found !== undefined) return found;
  const rack = plannedRack(plan, section, setting);
  if (rack === undefined) return undefined;
  const root: Branch = { rack, last: undefined, cut: NOTHING_CUT, then: new Map() };
  known.set(section, root);
  return root;
}

const keys = new WeakMap<RackChange, string>();

/** The same change read from the journal once more has the same key. */
function keyOf(change: RackChange): string {
  const known = keys.get(change);
  if (known !== undefined) return known;
  const key = JSON.stringify(change, (_, value: unknown) =>
    value instanceof Map || value instanceof Set ? [...value] : value,
  );
  keys.set(change, key);
  return key;
}

/** A measured width may have made other lengths, and with them other steps, of pieces with the same mark. */
function lengthOf({ step, mark }: SpoiledPiece, steps: readonly CutStep[]): Mm | undefined {
  const cutting = steps.find(it => it.step.id === step);
  const row = steps.flatMap(({ rows }) => rows).find(it => it.mark === mark);
  return cutting?.length ?? row?.length.value;
}

type Sawing = {
  readonly from: CutSoFar;
  readonly to: CutSoFar;
  /** Length of a piece that was sawn and is not among the good ones; it may have been among them before. */
  readonly lost?: Mm | undefined;
};

/** A count that was set back does not bring wood back. */
function sawnSince(rack: Rack, steps: readonly CutStep[], { from, to, lost }: Sawing): Rack {
  const lengths = steps
    .map(({ length }) => length)
    .filter((length, at, all) => all.findIndex(it => sameLength(it, length)) === at);
  return lengths.reduce((now, length) => {
    const it = { section: rack.section, length };
    const good = goodOfLength(steps, to, it) - goodOfLength(steps, from, it);
    const isLost = lost !== undefined && sameLength(lost, length) && good >= 0;
    const cut = afterCuts(now, length, good);
    return isLost ? afterLoss(cut, length) : cut;
  }, rack);
}

function boardsOf(change: SpoiledPiece | AddedBoards, { display }: Setting): readonly RackBoard[] {
  if (change.kind === 'added') {
    const name = `the added ${formatBoardLength(change.length, display)} board`;
    return Array.from({ length: change.count }, () => spare(name, change.length));
  }
  if (change.left <= 0) return [];
  const name = `the sound part of the spoiled ${change.mark}`;
  return [{ name, kind: 'remains', length: change.left, cuts: [] }];
}
