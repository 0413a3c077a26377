import { formatLengthExact } from '../../measure/format-length.js';
import type { Display, Mm } from '../../measure/quantities.js';
import { lessThan, sameLength } from '../../measure/tolerance.js';
import type { BoardBox, BoardSize } from '../../model/frame-of-board.js';
import type { DimensionLine } from '../strokes.js';
import type { LyingPiece } from './lying.js';
import type { Squeezed } from './squeeze.js';

type OnPaper = { readonly paper: Squeezed; readonly edgeLow: Mm };

/** A stretch that gets a figure: where it is drawn, and how long it really is. */
type Wanted = Pick<DimensionLine, 'along' | 'side' | 'from' | 'to'> & {
  readonly length: Mm;
  readonly row: number;
  readonly bright: boolean;
};

/**
 * What has to be marked, each figure once: how far along and how deep each different notch goes and what
 * is left beside it, then the size of the board.
 */
export function jointDimensions(
  { size, waste }: LyingPiece,
  on: OnPaper,
  display: Display,
): readonly DimensionLine[] {
  const different: BoardBox[] = [];
  for (const box of waste) {
    if (!different.some(other => isSameCut(other, box, size))) different.push(box);
  }
  const wanted = [
    ...different.flatMap(box => notchFigures(box, size, on)),
    ...boardFigures(size, different, on),
  ];
  return wanted.map(({ length, ...line }) => ({
    ...line,
    text: formatLengthExact(length, display),
  }));
}

/** Cut alike from either end. */
function isSameCut(a: BoardBox, b: BoardBox, size: BoardSize): boolean {
  const along = (box: BoardBox) => box.along.to - box.along.from;
  const fromEnd = (box: BoardBox) => Math.min(box.along.from, size.along - box.along.to);
  return (
    sameLength(along(a), along(b)) &&
    sameLength(fromEnd(a), fromEnd(b)) &&
    sameLength(a.across.from, b.across.from) &&
    sameLength(a.across.to, b.across.to) &&
    sameLength(a.through.from, b.through.from) &&
    sameLength(a.through.to, b.through.to)
  );
}

function notchFigures(box: BoardBox, size: BoardSize, on: OnPaper): readonly Wanted[] {
  const side = isLeft(box, size) ? 'left' : 'right';
  const along = (from: Mm, to: Mm): Wanted => ({
    along: 'u',
    side: 'above',
    from: on.paper.toPaper(from),
    to: on.paper.toPaper(to),
    length: to - from,
    row: 0,
    bright: true,
  });
  const up = (from: Mm, to: Mm, low: Mm): Wanted => ({
    along: 'v',
    side,
    from: low + from,
    to: low + to,
    length: to - from,
    row: 0,
    bright: true,
  });
  const { across } = box;
  // On the paper of the edge view the near face is below.
  const through = { from: size.through - box.through.to, to: size.through - box.through.from };
  const start = isLeft(box, size) ? along(0, box.along.from) : along(box.along.to, size.along);
  return [
    along(box.along.from, box.along.to),
    ...(lessThan(0, start.length) ? [start] : []),
    ...besides(across, size.across, (from, to) => up(from, to, 0)),
    ...besides(through, size.through, (from, to) => up(from, to, on.edgeLow)),
  ];
}

/** A cut that does not go all the way, and what stays on either side of it. */
function besides(
  cut: { readonly from: Mm; readonly to: Mm },
  whole: Mm,
  figure: (from: Mm, to: Mm) => Wanted,
): readonly Wanted[] {
  if (sameLength(cut.to - cut.from, whole)) return [];
  return [figure(cut.from, cut.to), figure(0, cut.from), figure(cut.to, whole)].filter(
    ({ length }) => lessThan(0, length),
  );
}

function boardFigures(
  size: BoardSize,
  notches: readonly BoardBox[],
  { paper, edgeLow }: OnPaper,
): readonly Wanted[] {
  const side = notches.every(box => isLeft(box, size)) ? 'right' : 'left';
  const row = notches.some(box => (isLeft(box, size) ? 'left' : 'right') === side) ? 1 : 0;
  const plain = { row, bright: false } as const;
  return [
    {
      along: 'u',
      side: 'below',
      from: 0,
      to: paper.length,
      length: size.along,
      row: 0,
      bright: false,
    },
    { along: 'v', side, from: 0, to: size.across, length: size.across, ...plain },
    { along: 'v', side, from: edgeLow, to: edgeLow + size.through, length: size.through, ...plain },
  ];
}

function isLeft({ along }: BoardBox, size: BoardSize): boolean {
  return !lessThan(size.along, along.from + along.to);
}
