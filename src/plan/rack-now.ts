import { formatBoardLength } from '../measure/format-length.js';
import type { Mm } from '../measure/quantities.js';
import { sameLength } from '../measure/tolerance.js';
import type { Plan } from './plan.js';
import { afterCuts, plannedRack, type Rack, type RackBoard, spare } from './rack.js';
import { partedRack } from './rack-parted.js';
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
  const planned = plannedRack(plan, section, setting);
  if (planned === undefined) return undefined;
  const steps = cutStepsOf(plan).filter(step => step.section === section);
  const own = work.rackChanges.flatMap((change, at) => (change.section === section ? [at] : []));
  const start: Changed = { rack: planned, last: undefined, cut: NOTHING_CUT };
  const { rack, last, cut } = own.reduce((before, at) => {
    const upTo = work.rackChanges.slice(0, at + 1);
    return remembered(plan, section, upTo, () =>
      afterChange(before, upTo, { plan, setting, steps }),
    );
  }, start);
  return { rack: sawnSince(rack, steps, { from: cut, to: work, lost: undefined }), last };
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
  const lost = change.kind === 'spoiled' ? lengthOf(change.step, steps) : undefined;
  const sawn = sawnSince(before.rack, steps, { from: before.cut, to: change, lost });
  const needed = stillNeeded(plan, sawn.section, { ...change, rackChanges: upTo });
  const hasRemains = change.kind === 'spoiled' && change.left > 0;
  const last = replan(changedRack(sawn, change, setting), { needed, setting, hasRemains });
  return { rack: last.rack, last, cut: change };
}

function changedRack(rack: Rack, change: RackChange, setting: Setting): Rack {
  if (change.kind === 'board-spoiled')
    return partedRack(rack, change.place, change, setting.display);
  return { ...rack, boards: [...rack.boards, ...boardsOf(change, setting)] };
}

const kept = new WeakMap<Plan, Map<string, Changed>>();

/** What a row of changes led to, worked out once for a plan: the screens ask for it at every key. */
function remembered(
  plan: Plan,
  section: string,
  changes: readonly RackChange[],
  workOut: () => Changed,
): Changed {
  const known = kept.get(plan) ?? new Map<string, Changed>();
  kept.set(plan, known);
  const key = JSON.stringify([section, changes], (_, value: unknown) =>
    value instanceof Map || value instanceof Set ? [...value] : value,
  );
  const found = known.get(key) ?? workOut();
  known.set(key, found);
  return found;
}

function lengthOf(id: string, steps: readonly CutStep[]): Mm | undefined {
  return steps.find(({ step }) => step.id === id)?.length;
}

type Sawing = {
  readonly from: CutSoFar;
  readonly to: CutSoFar;
  /** Length of a piece that was sawn and is not among the good ones. */
  readonly lost: Mm | undefined;
};

/** A count that was set back does not bring wood back. */
function sawnSince(rack: Rack, steps: readonly CutStep[], { from, to, lost }: Sawing): Rack {
  const lengths = steps
    .map(({ length }) => length)
    .filter((length, at, all) => all.findIndex(it => sameLength(it, length)) === at);
  return lengths.reduce((now, length) => {
    const it = { section: rack.section, length };
    const good = goodOfLength(steps, to, it) - goodOfLength(steps, from, it);
    const spoiled = lost !== undefined && sameLength(lost, length) ? 1 : 0;
    return afterCuts(now, length, good + spoiled);
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
