import { formatLength } from '../../measure/format-length.js';
import type { Display, Mm } from '../../measure/quantities.js';
import { lessThan, sameLength } from '../../measure/tolerance.js';
import { otherAxes } from '../../model/box.js';
import { AXES, type Axis, type Box, type Part, type Side } from '../../model/part.js';
import type { FastenerRow, ScrewSpots } from '../../plan/plan.js';
import type { PaperBox, Span } from '../sight.js';
import {
  BLANK,
  type DimensionLine,
  type Drawing,
  type Label,
  type PaperPoint,
  type Ring,
  type Stroke,
} from '../strokes.js';
import { outline } from './faces-of-piece.js';

export type ScrewSheetInput = {
  readonly row: FastenerRow;
  readonly spots: ScrewSpots;
  readonly from: Part;
  readonly into: Part;
  /** Marks of both parts on the cut list. */
  readonly marks: { readonly from: string; readonly into: string };
  readonly display: Display;
};

/** What is drawn of one of the two parts. */
type Half = Pick<Drawing, 'strokes' | 'rings' | 'dimensions' | 'labels'>;

/**
 * Both parts of a joint as the driver of the screws sees them: at the left the one under the heads, at
 * the right the one around the points, each with the place of the other in dash-dots and the screws
 * measured from its own end and edge.
 */
export function drawScrews(input: ScrewSheetInput): Drawing {
  const { row, spots, from, into, marks, display } = input;
  const look = lookAlong(spots.drive, from.runs);
  const patch = look(spots.patch);
  const window = grown(patch, Math.max(MARGIN, Math.min(sizeOf(patch.u), sizeOf(patch.v)) / 2));
  const screws = screwPoints(input, look);
  const radius = (row.clearance?.value ?? 0) / 2;
  const apart = sizeOf(window.u) + 2 * MARGIN;
  const common = { patch, window, screws, radius, display };
  const words = {
    from: `${marks.from} ${from.name}, heads`,
    into: `${marks.into} ${into.name}, points`,
  };
  const halves = [
    drawHalf(look(from.box), { ...common, title: words.from, side: 'left' }),
    drawHalf(look(into.box), { ...common, title: words.into, side: 'right' }),
  ];
  const [left, right] = halves.map((half, at) =>
    shifted(half, { u: at * apart - window.u.from, v: -window.v.from }),
  );
  if (left === undefined || right === undefined) throw new Error('a joint has two parts');
  const title = `${row.joint}: ${spots.places.length} x ${row.what}`;
  return {
    ...BLANK,
    title,
    width: apart + sizeOf(window.u),
    height: sizeOf(window.v) + LABEL,
    strokes: [...left.strokes, ...right.strokes],
    rings: [...left.rings, ...right.rings],
    dimensions: [...left.dimensions, ...right.dimensions],
    labels: [...left.labels, ...right.labels],
    notes: row.drills === 'none' ? [] : [`Drills: ${row.drills}.`],
    inWords: `${title}. ${row.where.join('; ')}. ${row.drills}.`,
  };
}

/** Wood shown round the overlap, and room for a line of words. */
const MARGIN: Mm = 25;
const LABEL: Mm = 32;

type Look = (box: Box) => PaperBox;

/** Along the way that the screws are driven, the length of the part under the heads level. */
function lookAlong({ axis, toward }: Side, runs: Axis): Look {
  const level = runs === axis ? (otherAxes(axis)[0] ?? runs) : runs;
  const up = AXES.find(it => it !== axis && it !== level) ?? level;
  // To the right of one who looks along the drive with `up` above: drive x up.
  const follows = AXES[(AXES.indexOf(axis) + 1) % AXES.length] === up;
  const isFlipped = (toward === 1) !== follows;
  return ({ min, max }) => ({
    u: isFlipped ? { from: -max[level], to: -min[level] } : { from: min[level], to: max[level] },
    v: { from: min[up], to: max[up] },
  });
}

/** The screws on the paper. */
function screwPoints({ spots, from }: ScrewSheetInput, look: Look): readonly PaperPoint[] {
  const { axis } = spots.drive;
  const across = otherAxes(axis).find(it => it !== from.runs) ?? axis;
  const { runs } = from;
  const startsAtMax =
    !sameLength(spots.patch.min[runs], from.box.min[runs]) &&
    sameLength(spots.patch.max[runs], from.box.max[runs]);
  return spots.places.map(place => {
    const at = {
      ...spots.patch.min,
      [runs]: startsAtMax
        ? spots.patch.max[runs] - place.along
        : spots.patch.min[runs] + place.along,
      [across]: spots.patch.min[across] + place.across,
    };
    const { u, v } = look({ min: at, max: at });
    return { u: u.from, v: v.from };
  });
}

type HalfInput = {
  readonly patch: PaperBox;
  readonly window: PaperBox;
  readonly screws: readonly PaperPoint[];
  readonly radius: Mm;
  readonly title: string;
  readonly side: 'left' | 'right';
  readonly display: Display;
};

function drawHalf(board: PaperBox, half: HalfInput): Half {
  const { patch, window, screws, radius, title, side } = half;
  const shown: PaperBox = { u: within(board.u, window.u), v: within(board.v, window.v) };
  const isCut = (stroke: Stroke) =>
    stroke.from.u === stroke.to.u
      ? !(sameLength(stroke.from.u, board.u.from) || sameLength(stroke.from.u, board.u.to))
      : !(sameLength(stroke.from.v, board.v.from) || sameLength(stroke.from.v, board.v.to));
  const edges = outline(shown, 'visible').map(
    (it): Stroke => (isCut(it) ? { ...it, kind: 'break' } : it),
  );
  const name: Label = {
    text: title,
    at: { u: (window.u.from + window.u.to) / 2, v: window.v.to + LABEL / 2 },
    bright: false,
  };
  return {
    strokes: [...edges, ...outline(patch, 'phantom'), ...screws.flatMap(it => cross(it, radius))],
    rings: screws.map((at): Ring => ({ at, radius, bright: true })),
    dimensions: [
      ...distances(
        board.u,
        screws.map(({ u }) => u),
        { window: window.u, along: 'u', side: 'below', display: half.display },
      ),
      ...distances(
        board.v,
        screws.map(({ v }) => v),
        { window: window.v, along: 'v', side, display: half.display },
      ),
    ],
    labels: [name],
  };
}

/** Middle lines of a screw. */
function cross({ u, v }: PaperPoint, radius: Mm): readonly Stroke[] {
  const reach = radius * 2;
  return [
    { from: { u: u - reach, v }, to: { u: u + reach, v }, kind: 'center', bright: true },
    { from: { u, v: v - reach }, to: { u, v: v + reach }, kind: 'center', bright: true },
  ];
}

type Measured = {
  readonly window: Span;
  readonly along: 'u' | 'v';
  readonly side: DimensionLine['side'];
  readonly display: Display;
};

/** From the end or edge of the board to each screw, the nearest first; from the nearer one that is seen. */
function distances(
  board: Span,
  places: readonly Mm[],
  { window, along, side, display }: Measured,
): readonly DimensionLine[] {
  const seesStart = !lessThan(board.from, window.from);
  const seesEnd = !lessThan(window.to, board.to);
  const middle = places.reduce((sum, at) => sum + at, 0) / Math.max(1, places.length);
  const nearStart = middle - board.from <= board.to - middle;
  if (!seesStart && !seesEnd) return [];
  const fromStart = seesStart && (nearStart || !seesEnd);
  const datum = fromStart ? board.from : board.to;
  const rising = [...places].sort((a, b) => Math.abs(a - datum) - Math.abs(b - datum));
  const distinct = rising.filter((at, i) => i === 0 || !sameLength(at, rising[i - 1] ?? at));
  return distinct.map((at, row) => ({
    along,
    side,
    row,
    from: Math.min(datum, at),
    to: Math.max(datum, at),
    text: formatLength(Math.abs(at - datum), display),
    bright: true,
  }));
}

function within(span: Span, window: Span): Span {
  return { from: Math.max(span.from, window.from), to: Math.min(span.to, window.to) };
}

function grown({ u, v }: PaperBox, by: Mm): PaperBox {
  return { u: { from: u.from - by, to: u.to + by }, v: { from: v.from - by, to: v.to + by } };
}

function sizeOf({ from, to }: Span): Mm {
  return to - from;
}

function shifted(half: Half, by: PaperPoint): Half {
  const move = ({ u, v }: PaperPoint) => ({ u: u + by.u, v: v + by.v });
  return {
    strokes: half.strokes.map(it => ({ ...it, from: move(it.from), to: move(it.to) })),
    rings: half.rings.map(it => ({ ...it, at: move(it.at) })),
    labels: half.labels.map(it => ({ ...it, at: move(it.at) })),
    dimensions: half.dimensions.map(it => ({
      ...it,
      from: it.from + (it.along === 'u' ? by.u : by.v),
      to: it.to + (it.along === 'u' ? by.u : by.v),
    })),
  };
}
