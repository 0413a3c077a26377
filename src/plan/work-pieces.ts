import { toolRight } from '../materials/helper-ages.js';
import type { Minutes } from '../measure/quantities.js';
import type { Task, Wait } from '../solve/schedule/problem.js';
import type { Step } from './plan.js';
import type { Setting } from './setting.js';

/** A step, or what is left of it, with how long it keeps those who do it. */
export type Work = {
  readonly step: Step;
  readonly minutes: Minutes;
  /** Pieces still to make, where they are counted; the step can be left between two of them. */
  readonly pieces: number;
  /** Not before this minute of the frame: a wait that runs already. */
  readonly from: Minutes;
};

/** What limits one go at a step. */
export type Longest = { readonly quiet: Minutes; readonly loud: Minutes };

/** A step that is counted can be left in the middle, if there is time to get going; common practice. */
const WORTH_BEGINNING: Minutes = 25;

/** A step or a part of it, as it is laid into one session. */
export type Piece = {
  readonly id: string;
  readonly step: Step;
  readonly minutes: Minutes;
  readonly from: Minutes;
};

/**
 * Each step in pieces of at least 25 minutes where it is counted, so that it can go on in the next session. A step
 * that is longer than any session is cut into as few pieces as fit.
 */
export function piecesOf(work: readonly Work[], longest: Longest): readonly Piece[] {
  return work.flatMap(({ step, minutes, pieces, from }): readonly Piece[] => {
    const most = isLoud(step) ? longest.loud : longest.quiet;
    const whole = Math.max(1, Math.round(minutes));
    const needed = most > 0 ? Math.ceil(whole / most) : 1;
    const count = Math.max(
      needed,
      Math.min(pieces, Math.max(1, Math.floor(whole / WORTH_BEGINNING))),
    );
    return Array.from({ length: count }, (_, part) => ({
      id: `${step.id}#${part}`,
      step,
      from,
      minutes: Math.round((whole * (part + 1)) / count) - Math.round((whole * part) / count),
    }));
  });
}

/** Saws, nailer and sander, and whatever else the trade gives ear muffs for. */
export function isLoud({ care }: Step): boolean {
  return care.includes('noise');
}

type Crew = Pick<Setting, 'people' | 'helper'>;

/**
 * The pieces as tasks: alone, one does everything; of two, the lead is the first. While the lead is at a saw or nailer
 * nobody watches a young helper, who then does nothing alone.
 */
export function tasksOf(pieces: readonly Piece[], crew: Crew): readonly Task[] {
  return pieces.map(({ id, step, minutes, from }) => ({
    id,
    minutes,
    from,
    loud: isLoud(step),
    fair: step.day === 'seal',
    needs: { all: handsFor(step, crew) },
  }));
}

function handsFor({ who, tools }: Step, { people, helper }: Crew): readonly number[] {
  if (people === 1) return [0];
  const watches = helper !== undefined && helper !== 'grown';
  const saws = tools.some(tool => toolRight(tool, 'grown').value === 'lead');
  return CREWS[who === 'lead' && watches && saws ? 'both' : who];
}

const CREWS: Readonly<Record<Step['who'], readonly number[]>> = {
  lead: [0],
  helper: [1],
  both: [0, 1],
};

/**
 * Pieces of a step one after the other, steps after those they need, and after the waits that these begin. Alone, what a
 * helper would do beside comes in its place.
 */
export function waitsOf(pieces: readonly Piece[], people: number): readonly Wait[] {
  const ofStep = new Map<string, readonly Piece[]>();
  for (const piece of pieces)
    ofStep.set(piece.step.id, [...(ofStep.get(piece.step.id) ?? []), piece]);
  return [...ofStep.values()].flatMap(own => {
    const [first] = own;
    if (first === undefined) return [];
    const chain = own.slice(1).map((piece, at) => ({
      first: own[at]?.id ?? '',
      then: piece.id,
      minutes: 0,
    }));
    const before = first.step.needs.flatMap(need => {
      const last = ofStep.get(need)?.at(-1);
      return last === undefined ? [] : [{ first: last.id, then: first.id, minutes: 0 }];
    });
    return [...chain, ...before, ...timerWaits(first, ofStep), ...ownPlace(first, pieces, people)];
  });
}

function ownPlace(first: Piece, pieces: readonly Piece[], people: number): readonly Wait[] {
  const earlier = pieces[pieces.indexOf(first) - 1];
  if (people > 1 || earlier === undefined) return [];
  if (first.step.who !== 'helper' && earlier.step.who !== 'helper') return [];
  return [{ first: earlier.id, then: first.id, minutes: 0 }];
}

function timerWaits(
  { id, step }: Piece,
  ofStep: ReadonlyMap<string, readonly Piece[]>,
): readonly Wait[] {
  return step.after.flatMap(timer => {
    for (const own of ofStep.values()) {
      const last = own.at(-1);
      const found = last?.step.timers.find(it => it.id === timer);
      if (last !== undefined && found !== undefined)
        return [{ first: last.id, then: id, minutes: Math.ceil(found.minutes) }];
    }
    return [];
  });
}
