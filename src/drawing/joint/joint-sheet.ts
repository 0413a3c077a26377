import { formatLengthExact } from '../../measure/format-length.js';
import type { Display, Mm } from '../../measure/quantities.js';
import { sameLength } from '../../measure/tolerance.js';
import type { BoardBox, BoardSize } from '../../model/frame-of-board.js';
import type { Part } from '../../model/part.js';
import type { CutRow } from '../../plan/plan.js';
import { boxRound, type Span } from '../sight.js';
import { BLANK, type Drawing, type Label, type Stroke } from '../strokes.js';
import { type CutOrder, cutOrder } from './cut-order.js';
import { drawSide, outline, type Side } from './faces-of-piece.js';
import { jointDimensions } from './joint-dimensions.js';
import { type LyingPiece, lyingPiece } from './lying.js';
import { squeeze } from './squeeze.js';

/** A piece with notches, as it is to be marked and cut. */
export type JointInput = {
  readonly row: CutRow;
  readonly part: Part;
  /** What its notches are called, in the order of the piece. */
  readonly named: readonly string[];
  readonly display: Display;
};

/**
 * A piece from its face, and above that from its upper edge, as third-angle drawings have it: waste
 * hatched, the cuts numbered. A long board is broken where nothing is cut.
 */
export function drawJoint({ row, part, named, display }: JointInput): Drawing {
  const piece = lyingPiece(part);
  const { size } = piece;
  const paper = squeeze(
    size.along,
    [
      { from: 0, to: size.across / 2 },
      ...piece.waste.map(({ along }) => ({
        from: along.from - size.across,
        to: along.to + size.across,
      })),
      { from: size.along - size.across / 2, to: size.along },
    ],
    size.across / 2,
  );
  const u = ({ along }: BoardBox): Span => ({
    from: paper.toPaper(along.from),
    to: paper.toPaper(along.to),
  });
  const edgeLow = size.across + size.through;
  const fromFace: Side = box => ({ on: { u: u(box), v: box.across }, depth: -box.through.to });
  const fromEdge: Side = box => ({
    on: {
      u: u(box),
      v: {
        from: edgeLow + size.through - box.through.to,
        to: edgeLow + size.through - box.through.from,
      },
    },
    depth: -box.across.to,
  });
  const sides = [fromFace, fromEdge].map(side => drawSide(piece, side, row.mark));
  const strokes = sides
    .flatMap(side => side.strokes)
    .flatMap(it => outsideBreaks(it, paper.breaks));
  const words = handWords(row);
  const cuts = differentCuts(piece, display);
  const title = `${row.mark} ${row.name}, ${row.count} of them: ${[...new Set(named)].join(', ')}`;
  return {
    ...BLANK,
    title,
    width: paper.length,
    height: edgeLow + size.through,
    strokes: [
      ...strokes,
      ...paper.breaks.flatMap(it => [
        ...breakLines(it, { from: 0, to: size.across }),
        ...breakLines(it, { from: edgeLow, to: edgeLow + size.through }),
      ]),
    ],
    patches: sides.flatMap(side => side.patches),
    dimensions: jointDimensions(piece, { paper, edgeLow }, display),
    labels: cuts.flatMap(({ box }, at) => cutNumbers(box, at, { size, fromFace, fromEdge })),
    notes: [...notesOf(cuts), words],
    inWords: `${title}. ${inWords(piece, display)} ${words}`,
  };
}

/** Left and right hand told apart, or that there is none. */
function handWords({ mark, otherHand }: CutRow): string {
  if (otherHand === undefined)
    return 'No left or right hand: turned end for end it is the same piece.';
  const hand = mark < otherHand ? 'left' : 'right';
  return `${mark} is the ${hand} hand. ${otherHand} is its mirror image, never a copy: mark them as a pair, shoulder to shoulder.`;
}

/** The first notch of each kind, and in which order it is cut. */
type Cut = { readonly box: BoardBox; readonly order: CutOrder };

function differentCuts({ size, waste }: LyingPiece, display: Display): readonly Cut[] {
  const found = new Map<string, Cut>();
  for (const box of waste) {
    const order = cutOrder(box, size, display);
    const key = order.cuts.join();
    if (!found.has(key)) found.set(key, { box, order });
  }
  return [...found.values()];
}

/** What is done before all cuts and after them once; each cut under the number that it has on the drawing. */
function notesOf(cuts: readonly Cut[]): readonly string[] {
  const [first] = cuts;
  if (first === undefined) return [];
  const numbered = cuts
    .flatMap(({ order }) => order.cuts)
    .map((line, at) => `Cut ${at + 1}: ${line}`);
  return [first.order.before, ...numbered, first.order.after];
}

type Sides = { readonly size: BoardSize; readonly fromFace: Side; readonly fromEdge: Side };

/** One number at the shoulder, the next at the bottom: in the waste, near the line, where its depth is seen. */
function cutNumbers(
  box: BoardBox,
  at: number,
  { size, fromFace, fromEdge }: Sides,
): readonly Label[] {
  const isDeep = !sameLength(box.across.to - box.across.from, size.across);
  const { u, v } = (isDeep ? fromFace : fromEdge)(box).on;
  // Seen from its edge, a piece has its near face below: there a notch opens down.
  const opensUp = isDeep
    ? sameLength(box.across.to, size.across)
    : !sameLength(box.through.to, size.through);
  const up = (share: number) =>
    opensUp ? v.from + (v.to - v.from) * share : v.to - (v.to - v.from) * share;
  const wide = u.to - u.from;
  const shoulder = sameLength(box.along.from, 0) ? u.to - wide / 6 : u.from + wide / 6;
  const number = at * 2 + 1;
  return [
    { text: `${number}`, at: { u: shoulder, v: up(2 / 3) }, bright: true },
    { text: `${number + 1}`, at: { u: u.from + wide / 2, v: up(1 / 5) }, bright: true },
  ];
}

function inWords({ size, waste }: LyingPiece, display: Display): string {
  const length = (value: Mm) => formatLengthExact(value, display);
  return waste
    .map(box => {
      const deep = sameLength(box.through.to - box.through.from, size.through)
        ? box.across.to - box.across.from
        : box.through.to - box.through.from;
      return `From ${length(box.along.from)} to ${length(box.along.to)}, ${length(deep)} deep.`;
    })
    .join(' ');
}

/** What is left of a stroke outside the breaks; level strokes run through them. */
function outsideBreaks(stroke: Stroke, breaks: readonly Span[]): readonly Stroke[] {
  if (stroke.from.v !== stroke.to.v) return [stroke];
  const { u } = boxRound([stroke.from, stroke.to]);
  let left: readonly Span[] = [u];
  for (const { from, to } of breaks) {
    left = left.flatMap(span =>
      [
        { from: span.from, to: Math.min(span.to, from) },
        { from: Math.max(span.from, to), to: span.to },
      ].filter(it => it.from < it.to),
    );
  }
  const { v } = stroke.from;
  return left.map(({ from, to }) => ({ ...stroke, from: { u: from, v }, to: { u: to, v } }));
}

function breakLines({ from, to }: Span, v: Span): readonly Stroke[] {
  return outline({ u: { from, to }, v }, 'break').filter(it => it.from.u === it.to.u);
}
