import { formatLength, formatLengthExact } from '../../measure/format-length.js';
import type { Display, Mm } from '../../measure/quantities.js';
import { atMost, lessThan, SAME, sameLength } from '../../measure/tolerance.js';
import {
  type Ends,
  type EvenSpacing,
  gapAt,
  MOST_PIECES,
  spread,
  spreadByCount,
} from '../../model/spacing.js';
import { type LappedSpacing, spreadWithLaps } from '../../model/spacing-laps.js';
import { mostWithMargins, spreadWithMargins } from '../../model/spacing-margins.js';
import type { SpacingAsk } from './spacing-options.js';

/** A layout that fits, and how other counts would come out. */
export type Layout = {
  readonly spacing: EvenSpacing;
  readonly spreadAt: (count: number) => EvenSpacing;
  readonly laps: LappedSpacing | undefined;
};

export type LayoutResult =
  | { readonly ok: true; readonly layout: Layout }
  | { readonly ok: false; readonly problem: string };

/** Lays the pieces out, or says why they do not fit and what would. */
export function layOut(ask: SpacingAsk, display: Display): LayoutResult {
  const { over, piece, way } = ask;
  if (lessThan(over, piece)) {
    const length = (mm: Mm) => formatLength(mm, display);
    return no(
      `A piece of ${length(piece)} is longer than the ${length(over)} to fill. --piece can be up to ${length(over)}.`,
    );
  }
  if (Math.floor(over / piece) > MOST_PIECES && ask.count === undefined) {
    return no(`More than ${MOST_PIECES} such pieces would fit. Check the units, or give --count.`);
  }
  if (way !== 'laps' && ask.lap !== undefined) return no('--lap goes with --ends laps.');
  return way === 'margins' || way === 'laps' ? fixedGap(ask, display) : evenGap(ask, way, display);
}

function evenGap(ask: SpacingAsk, ends: Ends, display: Display): LayoutResult {
  const { over, piece, gap, count } = ask;
  const run = { over, piece, ends };
  if ((count === undefined) === (gap === undefined)) {
    return no(
      'Give either --count or --gap, such as --count 12. To keep a gap exactly, add --ends margins.',
    );
  }
  const spreadAt = (n: number) => spreadByCount(run, n);
  if (count !== undefined) return counted(ask, { ends, spreadAt, count }, display);
  const found = spread({ ...run, want: gap ?? 0, least: 0, most: Number.POSITIVE_INFINITY });
  if (!found.ok || found.spacing.count === 0) {
    return no(
      `No piece fits with gaps of about ${formatLength(gap ?? 0, display)}. Wish for a smaller gap, such as --gap 1in.`,
    );
  }
  return yes({ spacing: found.spacing, spreadAt, laps: undefined });
}

function counted(
  { over, piece }: SpacingAsk,
  { ends, spreadAt, count }: { ends: Ends; spreadAt: Layout['spreadAt']; count: number },
  display: Display,
): LayoutResult {
  const length = (mm: Mm) => formatLengthExact(mm, display);
  const most = Math.floor(over / piece + SAME);
  if (count > most) {
    return no(
      `${count} pieces of ${length(piece)} need ${length(count * piece)} and there are ${length(over)}. --count can be 1 to ${most}.`,
    );
  }
  if (count === 1 && ends === 'flush' && !sameLength(gapAt({ over, piece, ends }, 1), 0)) {
    return no(
      `One piece of ${length(piece)} cannot be flush at both ends of ${length(over)}. Give --count 2 to ${most}, or --ends gap.`,
    );
  }
  return yes({ spacing: spreadAt(count), spreadAt, laps: undefined });
}

function fixedGap(ask: SpacingAsk, display: Display): LayoutResult {
  const { over, piece, gap, lap, way } = ask;
  if (gap === undefined) return no(`With --ends ${way} give --gap as well, such as --gap 3.5in.`);
  if (way === 'laps' && lap === undefined) {
    return no('With --ends laps give --lap as well, such as --lap 1in.');
  }
  const length = (mm: Mm) => formatLengthExact(mm, display);
  if (lap !== undefined && !atMost(lap, piece / 2)) {
    return no(
      `Laps of ${length(lap)} from both sides meet behind a piece of ${length(piece)}. --lap can be up to ${length(piece / 2)}.`,
    );
  }
  const run = { over, piece, gap };
  const most = mostWithMargins(run);
  const count = ask.count ?? most;
  if (count > most) {
    return no(
      `${count} pieces of ${length(piece)} with ${count - 1} gaps of ${length(gap)} need ${length(count * piece + (count - 1) * gap)} and there are ${length(over)}. --count can be 1 to ${most}.`,
    );
  }
  return yes({
    spacing: spreadWithMargins(run, count),
    spreadAt: n => spreadWithMargins(run, n),
    laps: lap === undefined ? undefined : spreadWithLaps({ over, piece, opening: gap, lap }, count),
  });
}

function yes(layout: Layout): LayoutResult {
  return { ok: true, layout };
}

function no(problem: string): LayoutResult {
  return { ok: false, problem };
}
