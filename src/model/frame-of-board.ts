import type { Mm } from '../measure/quantities.js';
import { extent } from './box.js';
import { AXES, type Axis, type Box, type Notch, type Part } from './part.js';

/** A stretch from one length to another, both measured from the same end or edge. */
export type Span = { readonly from: Mm; readonly to: Mm };

/** A box as somebody sees it who has the board on the bench. */
export type BoardBox = {
  /** From one end. */
  readonly along: Span;
  /** From one edge, over the width. */
  readonly across: Span;
  /** From one wide face, through the thickness. */
  readonly through: Span;
};

/** The axes of the piece that the length, the width and the thickness of a board lie along. */
export type BoardAxes = { readonly along: Axis; readonly across: Axis; readonly through: Axis };

/** Length, width and thickness of a board. */
export type BoardSize = { readonly along: Mm; readonly across: Mm; readonly through: Mm };

/** A post runs z with its wide face to y: its width lies along x. */
export function boardAxes(part: Pick<Part, 'runs' | 'face'>): BoardAxes {
  const across = AXES.find(axis => axis !== part.runs && axis !== part.face);
  if (across === undefined) throw new Error('a board has three axes');
  return { along: part.runs, across, through: part.face };
}

/** What a blank measures along its own axes. */
export function boardSize(part: Pick<Part, 'runs' | 'face' | 'box'>): BoardSize {
  const axes = boardAxes(part);
  return {
    along: extent(part.box, axes.along),
    across: extent(part.box, axes.across),
    through: extent(part.box, axes.through),
  };
}

/**
 * A box of the piece in the board's own frame. The frame is right-handed like that of the piece, so two
 * boards that look alike here are alike on the bench, and a left hand is never taken for a right one.
 */
export function inBoardFrame(part: Pick<Part, 'runs' | 'face' | 'box'>, box: Box): BoardBox {
  const axes = boardAxes(part);
  const along = span(part.box, box, axes.along);
  const length = extent(part.box, axes.along);
  return {
    along: rightHanded(axes) ? along : { from: length - along.to, to: length - along.from },
    across: span(part.box, box, axes.across),
    through: span(part.box, box, axes.through),
  };
}

/** The notches of a board in its own frame. */
export function notchesInFrame(
  part: Pick<Part, 'runs' | 'face' | 'box' | 'notches'>,
): readonly { readonly notch: Notch; readonly box: BoardBox }[] {
  return part.notches.map(notch => ({ notch, box: inBoardFrame(part, notch.box) }));
}

function span(blank: Box, box: Box, axis: Axis): Span {
  return { from: box.min[axis] - blank.min[axis], to: box.max[axis] - blank.min[axis] };
}

/** True when along, across and through follow each other as x, y and z do. */
function rightHanded(axes: BoardAxes): boolean {
  return AXES[(AXES.indexOf(axes.along) + 1) % AXES.length] === axes.across;
}
