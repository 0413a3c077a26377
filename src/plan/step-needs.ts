import type { Model } from '../model/part.js';
import type { StepRule } from '../recipe/recipe.js';
import type { Step } from './plan.js';
import { selectJoints } from './select.js';

/** A step with the rule that it is from. */
export type RuledStep = { readonly rule: StepRule; readonly step: Step };

/** Phases in which loose boards are worked on or put together: there the boards say what has to come before. */
const BY_BOARDS: readonly Step['phase'][] = ['cut', 'notch', 'assemble'];

/**
 * For each step the ids of those that have to be done before it. A step that works on certain boards waits for the
 * earlier ones that work on the same boards, or on what they are joined to by then; saw settings keep their order. A
 * step that only makes ready for others holds up those alone. Any other step without boards of its own, and everything
 * that looks at the whole piece, stands between all before it and all after: too much waits rather than too little.
 */
export function stepNeeds(
  steps: readonly RuledStep[],
  model: Model,
): ReadonlyMap<string, readonly string[]> {
  const bodies = new Bodies();
  const needs = new Map<string, readonly string[]>();
  let open: (RuledStep & { readonly boards: readonly string[] })[] = [];
  let gate: string | undefined;
  for (const { rule, step } of steps) {
    if (isMakingReady({ rule, step })) {
      needs.set(step.id, []);
      continue;
    }
    const joints = isFixing(step) ? selectJoints(model, rule.joins) : [];
    for (const { from, into } of joints) bodies.join(from, into);
    const boards = [...step.bright, ...joints.flatMap(({ from, into }) => [from, into])];
    const own = new Set(boards.map(id => bodies.of(id)));
    const isGate = boards.length === 0 || !BY_BOARDS.includes(step.phase);
    const before = open.filter(
      earlier =>
        isGate ||
        isNextCut(earlier.step, step) ||
        earlier.boards.some(id => own.has(bodies.of(id))),
    );
    const told = steps.filter(it => it.rule.before.includes(rule.id));
    const ids = [...new Set([...told, ...before].map(it => it.step.id))];
    needs.set(step.id, gate === undefined ? ids : [gate, ...ids]);
    if (isGate) {
      gate = step.id;
      open = [];
    } else open.push({ rule, step, boards });
  }
  return needs;
}

/** Laid out, counted or sorted for later steps, with no board in hand. */
function isMakingReady({ rule, step }: RuledStep): boolean {
  return rule.before.length > 0 && step.bright.length === 0 && rule.joins.length === 0;
}

function isFixing({ phase }: Step): boolean {
  return phase === 'assemble' || phase === 'place';
}

/** One saw: its settings follow each other in the order of sawing. */
function isNextCut(earlier: Step, later: Step): boolean {
  return earlier.phase === 'cut' && later.phase === 'cut';
}

/** Boards that hang together, each known by one of them. */
class Bodies {
  readonly #leaders = new Map<string, string>();

  of(board: string): string {
    let leader = board;
    for (let next = this.#leaders.get(leader); next !== undefined; ) {
      leader = next;
      next = this.#leaders.get(leader);
    }
    return leader;
  }

  join(one: string, other: string): void {
    const leader = this.of(one);
    const follower = this.of(other);
    if (leader !== follower) this.#leaders.set(follower, leader);
  }
}
