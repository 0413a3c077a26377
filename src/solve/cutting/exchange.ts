import { fixedNumbers } from './fixed-numbers.js';
import type { Use } from './greedy.js';
import type { ReducedProblem } from './normalize.js';
import type { Handful, RackBoard } from './rack.js';
import { Rack } from './rack.js';

/** How many exchanges are tried for each board, and at most. */
const triesForBoard = 60;
const mostTries = 3000;

/**
 * Exchanges pieces between the boards of a plan, which stay the same boards, so that the saw needs fewer stop
 * settings and then one offcut becomes as long as possible. Accepts small losses at first and none at the end;
 * the best arrangement met is returned. Best found, not best possible.
 */
export function exchangePieces(problem: ReducedProblem, uses: readonly Use[]): Use[] {
  const rack = new Rack(problem, uses);
  const random = fixedNumbers(20_011);
  let best = { settings: rack.settings, left: rack.longestLeft(), boards: [...rack.boards] };
  const tries =
    rack.boards.length < 2 ? 0 : Math.min(mostTries, triesForBoard * rack.boards.length);
  for (let attempt = 0; attempt < tries; attempt++) {
    const change = proposeExchange(problem, rack, random);
    if (change === undefined) continue;
    const before = change.places.map(place => rack.boards[place] as RackBoard);
    const gain = spread(change.boards) - spread(before);
    const more = rack.replace(change.places, change.boards);
    const patience = 1.6 * (1 - (1.3 * attempt) / tries);
    if (more > 0 ? more > patience : more === 0 && gain < 0 && random(4) > 0) {
      rack.replace(change.places, before);
    } else if (rack.settings <= best.settings) {
      const left = rack.longestLeft();
      if (rack.settings < best.settings || left > best.left) {
        best = { settings: rack.settings, left, boards: [...rack.boards] };
      }
    }
  }
  return rack.uses(best.boards);
}

/** Grows when what is left gathers on few boards. */
function spread(boards: readonly RackBoard[]): number {
  return boards.reduce((sum, { left }) => sum + left * left, 0);
}

type Exchange = { readonly places: number[]; readonly boards: RackBoard[] };

/**
 * Some pieces of one length for some of another (or for none) between two boards; half of the time the same between
 * all boards cut like these two.
 */
function proposeExchange(
  problem: ReducedProblem,
  rack: Rack,
  random: (below: number) => number,
): Exchange | undefined {
  const a = random(rack.boards.length);
  const b = random(rack.boards.length);
  const [one, other] = [rack.boards[a] as RackBoard, rack.boards[b] as RackBoard];
  if (a === b || problem.kinds[one.kind]?.single || problem.kinds[other.kind]?.single)
    return undefined;
  const give = pick(one.counts, random);
  const take = random(3) === 0 ? undefined : pick(other.counts, random);
  if (give.i === take?.i) return undefined;
  const newOne = rack.changed(one, give, take);
  if (newOne.left < 0 || newOne.left === problem.kinds[one.kind]?.room) return undefined;
  const newOther = rack.changed(other, take, give);
  if (newOther.left < 0) return undefined;
  if (random(2) === 0) return { places: [a, b], boards: [newOne, newOther] };
  const likeOne = alike(rack, one);
  const likeOther = alike(rack, other);
  if (likeOne[0] === likeOther[0]) return undefined;
  const pairs = likeOne.slice(0, likeOther.length);
  return {
    places: [...pairs, ...likeOther.slice(0, pairs.length)],
    boards: [...pairs.map(() => newOne), ...pairs.map(() => newOther)],
  };
}

/** One or all pieces of some length on a board. */
function pick(counts: readonly number[], random: (below: number) => number): Handful {
  let i = random(counts.length);
  while (counts[i] === 0) i = (i + 1) % counts.length;
  return { i, count: random(2) === 0 ? 1 : (counts[i] as number) };
}

/** Places of all boards of the same kind with the same cuts. */
function alike({ boards }: Rack, { kind, cuts }: RackBoard): number[] {
  const places: number[] = [];
  for (const [place, board] of boards.entries()) {
    if (board.kind === kind && board.cuts === cuts) places.push(place);
  }
  return places;
}
