import { formatLengthExact } from '../../measure/format-length.js';
import type { Display, Mm } from '../../measure/quantities.js';
import { sameLength } from '../../measure/tolerance.js';
import type { BoardBox } from '../../model/frame-of-board.js';
import type { Part } from '../../model/part.js';
import type { CutRow } from '../../plan/plan.js';
import { boxRound, type Span } from '../sight.js';
import { BLANK, type Drawing, type Label, type Stroke } from '../strokes.js';
import { cutOrder } from './cut-order.js';
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
 * hatched, the first cut numbered 1. A long board is broken where nothing is cut.
 */
export function drawJoint({ row, part, named, display }: JointInput): Drawing {
  const piece = lyingPiece(part);
  const { size } = piece;
  const paper = squeeze(
    size.along,
    [
      { from: 0, to: size.across / 2 },
      ...piece.waste.map(({ box }) => ({
        from: box.along.from - size.across,
        to: box.along.to + size.across,
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
    labels: cutNumbers(piece, fromFace),
    notes: [...notesOf(piece, display), words],
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

function notesOf({ size, waste }: LyingPiece, display: Display): readonly string[] {
  const orders = waste.map(({ box }) => cutOrder(box, size, display));
  const distinct = [...new Map(orders.map(order => [order.join(), order])).values()];
  return distinct.flatMap(order => order.map((line, at) => `${at + 1} ${line}`));
}

/** 1 at the shoulder, 2 at the bottom of the first notch of each kind: in the waste, near the line. */
function cutNumbers({ size, waste }: LyingPiece, side: Side): readonly Label[] {
  const [first] = waste;
  if (first === undefined) return [];
  const { u, v } = side(first.box).on;
  const atLeft = sameLength(first.box.along.from, 0);
  const [wide, high] = [u.to - u.from, v.to - v.from];
  const shoulder = atLeft ? u.to - wide / 6 : u.from + wide / 6;
  if (sameLength(high, size.across)) return [];
  return [
    { text: '2', at: { u: shoulder, v: v.from + (high * 2) / 3 }, bright: true },
    { text: '3', at: { u: u.from + wide / 2, v: v.from + high / 5 }, bright: true },
  ];
}

function inWords({ size, waste }: LyingPiece, display: Display): string {
  const length = (value: Mm) => formatLengthExact(value, display);
  return waste
    .map(({ box }) => {
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
