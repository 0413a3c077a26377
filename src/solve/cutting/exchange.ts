import { fixedNumbers } from './fixed-numbers.js';
import type { Use } from './greedy.js';
import type { ReducedProblem } from './normalize.js';
import type { Handful, RackBoard } from './rack.js';
import { Rack } from './rack.js';

/** How many exchanges are tried for each pair of boards, for each board, and at most. */
const triesForPair = 30;
const triesForBoard = 450;
const mostTries = 27_000;

/** A third board is looked for among so many. */
const mostLooks = 60;

/** What comes first when cost and boards are settled: few stop settings, or one long offcut. */
export type WishOrder = 'settings' | 'offcut';

/**
 * Exchanges pieces between the boards of a plan, which stay the same boards, so that the saw needs fewer stop
 * settings and one offcut becomes as long as possible, whichever comes first in the order. Accepts small losses at
 * first and none at the end; the best arrangement met is returned. Best found, not best possible.
 */
export function exchangePieces(
  problem: ReducedProblem,
  uses: readonly Use[],
  first: WishOrder = 'settings',
): Use[] {
  const rack = new Rack(problem, uses);
  const random = fixedNumbers(20_011);
  let best = arrangementOf(rack);
  const boards = rack.boards.length;
  const pairs = (boards * (boards - 1)) / 2;
  const tries = Math.min(mostTries, triesForBoard * boards, triesForPair * pairs);
  for (let attempt = 0; attempt < tries; attempt++) {
    // One setting for each length is the least there can be; what is left to gain then is found soon.
    if (best.settings === problem.lengths.length && attempt > tries / 5) break;
    const change =
      random(2) === 0 ? proposeTwin(problem, rack, random) : proposeExchange(problem, rack, random);
    if (change === undefined) continue;
    const before = change.places.map(place => rack.boards[place] as RackBoard);
    const gain = spread(change.boards) - spread(before);
    const more = rack.replace(change.places, change.boards);
    const patience = 1.6 * (1 - (1.3 * attempt) / tries);
    const refuses = first === 'settings' ? refusesSettings : refusesSpread;
    if (refuses({ more, gain, patience }, random)) rack.replace(change.places, before);
    else best = betterOf(best, rack, first);
  }
  return rack.uses(best.boards);
}

/** What an exchange brings: settings more, and what is left gathered on fewer boards. */
type Effect = { readonly more: number; readonly gain: number; readonly patience: number };

function refusesSettings({ more, gain, patience }: Effect, random: (below: number) => number) {
  return more > 0 ? more > patience : more === 0 && gain < 0 && random(4) > 0;
}

function refusesSpread({ more, gain, patience }: Effect, random: (below: number) => number) {
  return gain < 0 ? random(1000) > 200 * patience : gain === 0 && more > 0;
}

type Arrangement = {
  readonly settings: number;
  readonly left: number;
  readonly boards: readonly RackBoard[];
};

function arrangementOf(rack: Rack): Arrangement {
  return { settings: rack.settings, left: rack.longestLeft(), boards: [...rack.boards] };
}

function betterOf(best: Arrangement, rack: Rack, first: WishOrder): Arrangement {
  const { settings } = rack;
  if (first === 'settings' && settings > best.settings) return best;
  const left = rack.longestLeft();
  const [fewer, longer] = [best.settings - settings, left - best.left];
  const isBetter =
    first === 'settings' ? fewer > 0 || longer > 0 : longer > 0 || (longer === 0 && fewer > 0);
  return isBetter ? arrangementOf(rack) : best;
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
  const pair = { places: [a, b], boards: [newOne, newOther] };
  return random(2) === 0 ? pair : forAllAlike(rack, pair);
}

/** The same exchange between as many boards cut alike as there are on both sides. */
function forAllAlike(rack: Rack, { places, boards }: Exchange): Exchange | undefined {
  const [likeOne = [], likeOther = []] = places.map(place =>
    alike(rack, rack.boards[place] as RackBoard),
  );
  if (likeOne[0] === likeOther[0]) return undefined;
  const pairs = likeOne.slice(0, likeOther.length);
  const [newOne, newOther] = boards as [RackBoard, RackBoard];
  return {
    places: [...pairs, ...likeOther.slice(0, pairs.length)],
    boards: [...pairs.map(() => newOne), ...pairs.map(() => newOther)],
  };
}

/** Cuts one board like some other, where a third can make up for the difference. */
function proposeTwin(
  problem: ReducedProblem,
  rack: Rack,
  random: (below: number) => number,
): Exchange | undefined {
  const { boards } = rack;
  const a = random(boards.length);
  const [one, model] = [boards[a] as RackBoard, boards[random(boards.length)] as RackBoard];
  if (one.cuts === model.cuts || problem.kinds[one.kind]?.single) return undefined;
  const more: Handful[] = [];
  model.counts.forEach((count, i) => {
    const change = count - (one.counts[i] as number);
    if (change !== 0) more.push({ i, count: change });
  });
  const twin = rack.plus(one, more, 1);
  if (twin === undefined) return undefined;
  const from = random(boards.length);
  let found: Exchange | undefined;
  for (let step = 0; step < Math.min(mostLooks, boards.length); step++) {
    const c = (from + step) % boards.length;
    const other = boards[c] as RackBoard;
    if (c === a || other.cuts === model.cuts || problem.kinds[other.kind]?.single) continue;
    const newOther = rack.plus(other, more, -1);
    if (newOther === undefined || newOther.left === problem.kinds[other.kind]?.room) continue;
    const isTwin = rack.isKnown(newOther);
    if (found === undefined || isTwin) found = { places: [a, c], boards: [twin, newOther] };
    if (isTwin) break;
  }
  return found === undefined || random(2) === 0 ? found : forAllAlike(rack, found);
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
