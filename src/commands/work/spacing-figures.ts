import { ANSWERED, COMPUTED, type Figure } from '../../measure/figure.js';
import { figure } from '../../measure/figure-text.js';
import { formatLengthExact } from '../../measure/format-length.js';
import type { Display, Mm } from '../../measure/quantities.js';
import { worstRounding } from '../../model/spacing-marks.js';
import type { Answered } from './rule.js';
import type { Layout } from './spacing-layout.js';
import type { SpacingAsk, Way } from './spacing-options.js';

type Part = { readonly ask: SpacingAsk; readonly layout: Layout; readonly display: Display };

/** The figures of a layout: the gap, the ends, the sum that has to close. */
export function spacingFigures(
  ask: SpacingAsk,
  layout: Layout,
  display: Display,
): readonly Answered[] {
  const part = { ask, layout, display };
  return [
    { name: 'gap', say: 'clear gap', figure: gapFigure(part) },
    { name: 'pitch', say: 'center to center', figure: pitchFigure(part) },
    { name: 'end_gap', say: END_SAID[ask.way], figure: endFigure(part) },
    ...lapFigures(part),
    { name: 'closing_sum', say: 'adds up to', figure: closingFigure(part) },
    { name: 'rounding', say: 'marks are off by', figure: roundingFigure(part) },
  ];
}

const END_SAID: Readonly<Record<Way, string>> = {
  flush: 'before the first',
  gap: 'gap at each end',
  half: 'half gap at each end',
  margins: 'margin at each end',
  laps: 'shows at each end',
};

function gapFigure({ ask, layout, display }: Part): Figure {
  const { gap, count } = layout.spacing;
  const length = (mm: Mm) => formatLengthExact(mm, display);
  if (isFixed(ask.way)) return figure(gap, 'mm', 'the gap that was given', ANSWERED);
  const gaps = gapsOf(ask.way, count);
  const because = `(${length(ask.over)} - ${count} x ${length(ask.piece)}) / ${gaps} gaps`;
  return figure(gap, 'mm', because, COMPUTED);
}

function pitchFigure({ ask, layout, display }: Part): Figure {
  const length = (mm: Mm) => formatLengthExact(mm, display);
  const { gap } = layout.spacing;
  const because = `piece ${length(ask.piece)} + gap ${length(gap)}`;
  return figure(ask.piece + gap, 'mm', because, COMPUTED);
}

function endFigure({ ask, layout, display }: Part): Figure {
  const length = (mm: Mm) => formatLengthExact(mm, display);
  const { endGap, count, gap } = layout.spacing;
  const pieces = `${count} x ${length(ask.piece)}`;
  const because = {
    flush: 'the first and the last piece stand at the ends',
    gap: 'the same as between the pieces',
    half: `${length(gap)} / 2`,
    margins: `(${length(ask.over)} - ${pieces} - ${count - 1} x ${length(gap)}) / 2`,
    laps: `(${length(ask.over)} - ${pieces} - ${count - 1} x ${length(gap)}) / 2`,
  }[ask.way];
  return figure(endGap, 'mm', because, COMPUTED);
}

function lapFigures({ ask, layout, display }: Part): readonly Answered[] {
  const { laps } = layout;
  if (laps === undefined || ask.lap === undefined) return [];
  const length = (mm: Mm) => formatLengthExact(mm, display);
  const lap = length(ask.lap);
  return [
    {
      name: 'end_strip',
      say: 'backing strip at ends',
      figure: figure(laps.endStrip, 'mm', `${length(laps.reveal)} shows + ${lap} lap`, COMPUTED),
    },
    {
      name: 'backing',
      say: 'backing boards',
      figure: figure(
        laps.backing,
        'mm',
        `opening ${length(layout.spacing.gap)} + 2 x ${lap}`,
        COMPUTED,
      ),
    },
  ];
}

function closingFigure({ ask, layout, display }: Part): Figure {
  const { spacing } = layout;
  const length = (mm: Mm) => formatLengthExact(mm, display);
  const ends = isFixed(ask.way) ? ` + 2 x ${length(spacing.endGap)}` : '';
  const gaps = isFixed(ask.way) ? spacing.count - 1 : gapsOf(ask.way, spacing.count);
  const because = `${spacing.count} x ${length(ask.piece)} + ${gaps} x ${length(spacing.gap)}${ends}, of ${length(ask.over)}`;
  return figure(spacing.closes, 'mm', because, COMPUTED);
}

function roundingFigure({ layout, display }: Part): Figure {
  const worst = worstRounding(layout.spacing.marks, display.grid);
  const grid = formatLengthExact(display.grid, display);
  return figure(worst, 'mm', `the most of any mark, each rounded alone to ${grid}`, COMPUTED);
}

function isFixed(way: Way): boolean {
  return way === 'margins' || way === 'laps';
}

/** A single flush piece has no gap; the sum is then that of the piece alone. */
function gapsOf(way: Way, count: number): number {
  if (way === 'flush') return Math.max(1, count - 1);
  return way === 'gap' ? count + 1 : count;
}
