import { formatBoardLength } from '../measure/format-length.js';
import type { Mm } from '../measure/quantities.js';
import { sameLength } from '../measure/tolerance.js';
import type { Plan } from './plan.js';
import { afterCuts, plannedRack, type Rack, type RackBoard, spare } from './rack.js';
import { type Replanned, replan } from './replan.js';
import type { Setting } from './setting.js';
import {
  type CutSoFar,
  type CutStep,
  cutStepsOf,
  goodOfLength,
  type RackChange,
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
  let rack = plannedRack(plan, section, setting);
  if (rack === undefined) return undefined;
  const steps = cutStepsOf(plan).filter(step => step.section === section);
  let last: Replanned | undefined;
  let cut: CutSoFar = { tallies: new Map(), done: new Set() };
  for (const [at, change] of work.rackChanges.entries()) {
    if (change.section !== section) continue;
    const lost = change.kind === 'spoiled' ? lengthOf(change.step, steps) : undefined;
    const sawn = sawnSince(rack, steps, { from: cut, to: change, lost });
    const changed = { ...sawn, boards: [...sawn.boards, ...boardsOf(change, setting)] };
    const upTo = { ...change, rackChanges: work.rackChanges.slice(0, at + 1) };
    const needed = stillNeeded(plan, section, upTo);
    const hasRemains = change.kind === 'spoiled' && change.left > 0;
    last = replan(changed, { needed, setting, hasRemains });
    rack = last.rack;
    cut = change;
  }
  return { rack: sawnSince(rack, steps, { from: cut, to: work, lost: undefined }), last };
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

function boardsOf(change: RackChange, { display }: Setting): readonly RackBoard[] {
  if (change.kind === 'added') {
    const name = `the added ${formatBoardLength(change.length, display)} board`;
    return Array.from({ length: change.count }, () => spare(name, change.length));
  }
  if (change.left <= 0) return [];
  const name = `the sound part of the spoiled ${change.mark}`;
  return [{ name, kind: 'remains', length: change.left, cuts: [] }];
}
