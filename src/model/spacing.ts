import type { Mm } from '../measure/quantities.js';
import { atMost, lessThan, SAME, sameLength } from '../measure/tolerance.js';

/**
 * What happens at the two ends. `flush`: the first and the last piece end with the run, so n pieces
 * have n - 1 gaps. `gap`: a whole gap at each end, n + 1 in all. `half`: half a gap at each end, n in all.
 */
export type Ends = 'flush' | 'gap' | 'half';

/** A run that is filled with equal pieces. */
export type Run = { readonly over: Mm; readonly piece: Mm; readonly ends: Ends };

/** The run with the gap that is wished for and its limits, all clear gaps from edge to edge. */
export type SpreadAsk = Run & { readonly want: Mm; readonly least: Mm; readonly most: Mm };

export type EvenSpacing = {
  readonly count: number;
  readonly gap: Mm;
  readonly endGap: Mm;
  /** Near edge of each piece from the datum end, in full precision: round each alone, never the gap. */
  readonly marks: readonly Mm[];
  /** End gap, pieces and gaps added up: it has to come out at the whole run. */
  readonly closes: Mm;
};

export type CountAndGap = { readonly count: number; readonly gap: Mm };

export type SpacingProblem =
  /** The piece has no width, the run is negative, or there would be more than MOST_PIECES. */
  | { readonly kind: 'not-a-run'; readonly over: Mm; readonly piece: Mm }
  /** `fewer` leaves gaps that are too wide, `more` gaps that are too narrow; 0 pieces is one gap. */
  | {
      readonly kind: 'no-count-fits';
      readonly fewer: CountAndGap;
      readonly more: CountAndGap;
      readonly ask: SpreadAsk;
    };

export type SpreadResult =
  | { readonly ok: true; readonly spacing: EvenSpacing }
  | { readonly ok: false; readonly problem: SpacingProblem };

/** More pieces than anybody sets in one run; a piece of almost no width would ask for millions. */
export const MOST_PIECES = 1000;

/**
 * The clear gap that so many pieces leave. Twelve 3-1/2 in slats over 48 in with a gap at each end leave
 * (48 - 42) / 13 = 0.4615 in. No piece at all leaves the whole run; one piece that has to be flush at
 * both ends leaves what is missing beside it, which is no gap only where it is as long as the run.
 */
export function gapAt(run: Run, count: number): Mm {
  const open = run.over - count * run.piece;
  return open / Math.max(1, gapCount(run.ends, count));
}

/**
 * How many pieces there are and where, when the count is settled. The gap is negative where they do not
 * fit: 15 balusters of 2 in at 3 in need 78 in.
 */
export function spreadByCount(run: Run, count: number): EvenSpacing {
  const gap = gapAt(run, count);
  const endGap = count === 0 ? run.over : endGapOf(run.ends, gap);
  const marks = Array.from({ length: count }, (_, i) => endGap + i * (run.piece + gap));
  const last = marks[count - 1];
  const closes = last === undefined ? run.over : last + run.piece + farGap({ run, count, gap });
  return { count, gap, endGap, marks, closes };
}

/**
 * The count whose gap is nearest to the wish within its limits; of two as near, the one with fewer
 * pieces. Flush 2-1/2 in slats over 48 in, wish 3/8 in: 17 slats, gap 0.3438 in. A run that is no wider
 * than the widest gap needs no piece.
 */
export function spread(ask: SpreadAsk): SpreadResult {
  const most = floorCount(countAt(ask, Math.max(0, ask.least)));
  if (lessThan(ask.over, 0) || atMost(ask.piece, 0) || most > MOST_PIECES) {
    return { ok: false, problem: { kind: 'not-a-run', over: ask.over, piece: ask.piece } };
  }
  const least = fewestCount(ask);
  const best = nearest(ask, least, most);
  if (best !== undefined) return { ok: true, spacing: spreadByCount(ask, best) };
  const fewer = Math.max(0, least - 1);
  const problem = {
    kind: 'no-count-fits',
    fewer: { count: fewer, gap: gapAt(ask, fewer) },
    more: { count: fewer + 1, gap: gapAt(ask, fewer + 1) },
    ask,
  } as const;
  return { ok: false, problem };
}

/** Candidates stand on both sides of the wish; the limits may cut off either. */
function nearest(ask: SpreadAsk, least: number, most: number): number | undefined {
  const ideal = countAt(ask, Math.max(0, ask.want));
  const candidates = [Math.floor(ideal), Math.ceil(ideal)]
    .map(count => Math.min(most, Math.max(least, count)))
    .filter(count => fits(ask, count))
    .map(count => ({ count, off: Math.abs(gapAt(ask, count) - ask.want) }));
  const [first, second] = candidates;
  if (first === undefined) return undefined;
  return second !== undefined && lessThan(second.off, first.off) ? second.count : first.count;
}

function fits(ask: SpreadAsk, count: number): boolean {
  const gap = gapAt(ask, count);
  if (count === 0) return atMost(gap, ask.most);
  if (count === 1 && ask.ends === 'flush') return sameLength(gap, 0);
  return atMost(ask.least, gap) && atMost(gap, ask.most);
}

/** The smallest count whose gap is not too wide. */
function fewestCount(ask: SpreadAsk): number {
  if (atMost(ask.over, ask.most)) return 0;
  return Math.max(1, Math.ceil(countAt(ask, ask.most) - SAME));
}

function floorCount(count: number): number {
  return Math.max(0, Math.floor(count + SAME));
}

/** How many pieces, not rounded, make this gap. */
function countAt(run: Run, gap: Mm): number {
  const pitch = run.piece + gap;
  if (run.ends === 'flush') return (run.over + gap) / pitch;
  return run.ends === 'gap' ? (run.over - gap) / pitch : run.over / pitch;
}

function gapCount(ends: Ends, count: number): number {
  if (ends === 'flush') return count - 1;
  return ends === 'gap' ? count + 1 : count;
}

function endGapOf(ends: Ends, gap: Mm): Mm {
  if (ends === 'flush') return 0;
  return ends === 'gap' ? gap : gap / 2;
}

/** The gap at the far end; a single flush piece leaves there what it does not reach. */
function farGap(at: { run: Run; count: number; gap: Mm }): Mm {
  if (at.run.ends === 'flush') return at.count === 1 ? at.gap : 0;
  return endGapOf(at.run.ends, at.gap);
}
