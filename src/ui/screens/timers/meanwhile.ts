import type { Plan, Step } from '../../../plan/plan.js';
import { isDone } from '../../../workbook/next-step.js';
import type { Build } from '../../screen.js';

/** Work on loose boards, or before there are any; sealing and setting up need the whole piece. */
const POSSIBLE: readonly Step['phase'][] = ['plan', 'buy', 'cut', 'notch', 'dry-fit', 'assemble'];

/**
 * Steps that can be done while parts are clamped or wet: those whose own parts are none of them and
 * touch none of them. What waits for such a step waits with it: slats on a rail whose ends are still
 * in clamps stay out of the list. In the finished piece much touches that is put together apart, so
 * this leaves out too much rather than too little.
 */
export function meanwhile(build: Build, waiting: readonly string[]): readonly Step[] {
  const { plan, progress } = build;
  const wet = new Set(plan.steps.filter(({ id }) => waiting.includes(id)).flatMap(partsOf));
  const beside = neighbors(plan);
  const held = new Set(wet);
  const free: Step[] = [];
  for (const step of plan.steps) {
    if (isDone(step, progress) || waiting.includes(step.id)) continue;
    const touched = isFixing(step) ? step.bright.flatMap(id => beside.get(id) ?? []) : [];
    const taken = isFixing(step) ? held : wet;
    const can = isPossible(step) && ![...step.bright, ...touched].some(id => taken.has(id));
    if (can) free.push(step);
    else for (const id of partsOf(step)) held.add(id);
  }
  return free;
}

/** Cutting and notching are done on loose boards; fixing touches what the board will touch. */
function isFixing({ phase }: Step): boolean {
  return phase === 'assemble' || phase === 'dry-fit';
}

function isPossible(step: Step): boolean {
  return POSSIBLE.includes(step.phase) && (!isFixing(step) || step.bright.length > 0);
}

/** A coat wets everything that stands there; a glue-up holds what it sets. */
function partsOf(step: Step): readonly string[] {
  return step.phase === 'finish' ? [...step.bright, ...step.standing] : step.bright;
}

function neighbors({ model }: Plan): ReadonlyMap<string, readonly string[]> {
  const beside = new Map<string, string[]>();
  const add = (one: string, other: string) => {
    const known = beside.get(one);
    if (known === undefined) beside.set(one, [other]);
    else known.push(other);
  };
  for (const { a, b } of model.contacts) {
    add(a, b);
    add(b, a);
  }
  return beside;
}
