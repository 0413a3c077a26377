import { COMPUTED } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import { formatLengthExact } from '../measure/format-length.js';
import type { Display, Mm } from '../measure/quantities.js';
import { sameLength } from '../measure/tolerance.js';
import {
  type BoardBox,
  type BoardSize,
  boardSize,
  notchesInFrame,
  type Span,
} from '../model/frame-of-board.js';
import type { NotchRule } from '../recipe/recipe.js';
import { type Batch, firstOf } from './cut-list.js';
import type { NotchRow } from './plan.js';

/** A notch as it is cut: how far from the nearer end, how long, how deep, and from which side. */
type Cut = {
  readonly fromEnd: Mm;
  readonly along: Mm;
  readonly depth: Mm;
  readonly left: Mm;
  readonly into: 'edge' | 'face';
};

/**
 * The different notches of each mark, measured on the piece from its nearer end. Depth is whatever the
 * neighbor takes; what is left beside it is the tongue.
 */
export function notchRows(
  batches: readonly Batch[],
  names: ReadonlyMap<string, string>,
  display: Display,
): readonly NotchRow[] {
  return batches.flatMap(batch => rowsOf(batch, names, display));
}

/** Names of the notch rules of a recipe, by id. */
export function notchNames(rules: readonly NotchRule[]): ReadonlyMap<string, string> {
  return new Map(rules.map(rule => [rule.id, rule.name]));
}

function rowsOf(
  batch: Batch,
  names: ReadonlyMap<string, string>,
  display: Display,
): readonly NotchRow[] {
  const part = firstOf(batch.parts);
  const size = boardSize(part);
  const found: { rule: string; cut: Cut; each: number }[] = [];
  for (const { notch, box } of notchesInFrame(part)) {
    const cut = cutOf(box, size);
    const same = found.find(it => it.rule === notch.rule && sameCut(it.cut, cut));
    if (same) same.each += 1;
    else found.push({ rule: notch.rule, cut, each: 1 });
  }
  return found.map(({ rule, cut, each }, at) => ({
    id: `${batch.mark}/${rule}/${at + 1}`,
    rule,
    name: names.get(rule) ?? rule,
    mark: batch.mark,
    ...figuresOf(cut, size, display),
    into: cut.into,
    each,
    count: each * batch.parts.length,
    where: part.name,
  }));
}

function figuresOf(cut: Cut, size: BoardSize, display: Display) {
  const whole = cut.into === 'edge' ? size.across : size.through;
  const words = (mm: Mm) => formatLengthExact(mm, display);
  return {
    fromEnd: figure(
      cut.fromEnd,
      'mm',
      cut.fromEnd === 0 ? 'cut from the end in' : 'from the nearer end to the near shoulder',
      COMPUTED,
    ),
    along: figure(cut.along, 'mm', 'as wide as the piece that lies in it', COMPUTED),
    depth: figure(cut.depth, 'mm', 'as deep as the two pieces overlap', COMPUTED),
    left: figure(cut.left, 'mm', `${words(whole)} less ${words(cut.depth)}`, COMPUTED),
  };
}

function cutOf(box: BoardBox, size: BoardSize): Cut {
  const end = Math.max(0, Math.min(box.along.from, size.along - box.along.to));
  const edge = widthOf(box.across);
  const face = widthOf(box.through);
  const throughFaces = sameLength(face, size.through);
  return {
    fromEnd: sameLength(end, 0) ? 0 : end,
    along: widthOf(box.along),
    depth: throughFaces ? edge : face,
    left: throughFaces ? size.across - edge : size.through - face,
    into: throughFaces ? 'edge' : 'face',
  };
}

function widthOf(span: Span): Mm {
  return span.to - span.from;
}

function sameCut(a: Cut, b: Cut): boolean {
  return (
    a.into === b.into &&
    sameLength(a.fromEnd, b.fromEnd) &&
    sameLength(a.along, b.along) &&
    sameLength(a.depth, b.depth)
  );
}
