import { formatLength } from '../measure/format-length.js';
import type { Display } from '../measure/quantities.js';
import { atMost, sameLength } from '../measure/tolerance.js';
import type { AddedKind, Stretch } from './added-kinds.js';
import type { PaperBox } from './sight.js';
import type { DimensionLine } from './strokes.js';

/** More numbers than this are read by nobody; common practice. */
const MOST = 5;

/** Width below and height at the left of the whole drawing. */
export function overallDimensions(paper: PaperBox, display: Display): readonly DimensionLine[] {
  const whole = (['u', 'v'] as const).map(along => ({ along, span: paper[along] }));
  return inRows(
    whole.map(stretch => ({ stretch, side: stretch.along === 'u' ? 'below' : 'left' })),
    { display, bright: false },
  );
}

/**
 * For each kind of board being added its length, its distance from the datum and the first gap, on
 * the side of the drawing that is nearer; five at most, none twice.
 */
export function addedDimensions(
  kinds: readonly AddedKind[],
  paper: PaperBox,
  display: Display,
): readonly DimensionLine[] {
  const wanted: Sided[] = [];
  for (const kind of kinds) {
    for (const stretch of [kind.length, kind.offset, kind.gap]) {
      if (stretch === undefined || wanted.some(one => isSame(one.stretch, stretch))) continue;
      wanted.push({ stretch, side: nearerSide(stretch, kind.first, paper) });
    }
  }
  return inRows(wanted.slice(0, MOST), { display, bright: true });
}

type Side = DimensionLine['side'];
type Sided = { readonly stretch: Stretch; readonly side: Side };

function isSame(a: Stretch, b: Stretch): boolean {
  return (
    a.along === b.along && sameLength(a.span.from, b.span.from) && sameLength(a.span.to, b.span.to)
  );
}

function nearerSide(stretch: Stretch, box: PaperBox, paper: PaperBox): Side {
  const middle = (along: 'u' | 'v') => (box[along].from + box[along].to) / 2;
  if (stretch.along === 'u') {
    return middle('v') * 2 > paper.v.from + paper.v.to ? 'above' : 'below';
  }
  return middle('u') * 2 > paper.u.from + paper.u.to ? 'right' : 'left';
}

/**
 * Puts each dimension into the first row of its side where it overlaps no other, the short ones
 * first so that they stand near the wood. Those that only touch form a chain in one row.
 */
function inRows(
  wanted: readonly Sided[],
  look: { readonly display: Display; readonly bright: boolean },
): readonly DimensionLine[] {
  const rowOf = new Map<Sided, number>();
  for (const one of [...wanted].sort((a, b) => lengthOf(a) - lengthOf(b))) {
    const taken = [...rowOf].filter(([other]) => other.side === one.side && overlap(other, one));
    const rows = new Set(taken.map(([, row]) => row));
    let row = 0;
    while (rows.has(row)) row += 1;
    rowOf.set(one, row);
  }
  return wanted.map(one => ({
    along: one.stretch.along,
    from: one.stretch.span.from,
    to: one.stretch.span.to,
    side: one.side,
    row: rowOf.get(one) ?? 0,
    text: formatLength(lengthOf(one), look.display),
    bright: look.bright,
  }));
}

function lengthOf(one: Sided): number {
  return one.stretch.span.to - one.stretch.span.from;
}

function overlap(a: Sided, b: Sided): boolean {
  const [one, other] = [a.stretch.span, b.stretch.span];
  return !atMost(one.to, other.from) && !atMost(other.to, one.from);
}
