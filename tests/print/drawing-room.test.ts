import { describe, expect, test } from 'vitest';
import type { NamedDrawing } from '../../src/drawing/drawings.js';
import { layOut } from '../../src/print/print-paper.js';
import { type PlainMark, plainMarks } from '../../src/print/sheet/mark.js';
import { drawingPiece } from '../../src/print/sheet/set-drawing.js';
import { points } from '../../src/print/sheet/type.js';
import { paperAsk } from '../support/paper.js';

const { pack } = layOut(paperAsk());
const { rule } = pack.measure;

/** The rectangle that a mark fills on paper. */
function extentOf(mark: PlainMark) {
  if (mark.kind === 'line') return roundOf([mark.from, mark.to]);
  if (mark.kind === 'area') return roundOf(mark.corners);
  const wide = rule(mark.text, mark.size, mark.bold);
  const back = { start: 0, middle: wide / 2, end: wide }[mark.anchor];
  const high = points(mark.size) * 0.72;
  const { x, y } = mark.at;
  const level = [
    { x: x - back, y: y - high },
    { x: x - back + wide, y },
  ];
  const upward = [
    { x: x - high, y: y + back },
    { x, y: y + back - wide },
  ];
  return roundOf(mark.upward ? upward : level);
}

function roundOf(places: readonly { readonly x: number; readonly y: number }[]) {
  const [xs, ys] = [places.map(({ x }) => x), places.map(({ y }) => y)];
  return {
    left: Math.min(...xs),
    right: Math.max(...xs),
    top: Math.min(...ys),
    bottom: Math.max(...ys),
  };
}

const WHOLE = { width: 186, height: 58 };
const ROOMS = [WHOLE, { width: 90, height: 66 }, { width: 62, height: 40 }];
/** What needs the width of the paper gets it; boards are a sheet of their own, laid on its side. */
const ROOMS_OF: Partial<Record<NamedDrawing['group'], typeof ROOMS>> = {
  boards: [{ width: 250, height: 170 }],
  joints: [WHOLE],
  screws: [WHOLE],
  templates: [],
};
/** A line is half its thickness wider than its ends. */
const HAIR = 1.3;

describe('a drawing on paper keeps to its room: arrows, figures, names and all', () => {
  test.each(pack.drawings.map(one => [one.name, one] as const))('%s', (_, named) => {
    const drawing = named.draw();
    for (const room of ROOMS_OF[named.group] ?? ROOMS) {
      const piece = drawingPiece(drawing, room, rule);
      const all = plainMarks(piece.marks).map(extentOf);
      expect(Math.min(...all.map(({ top }) => top))).toBeGreaterThan(-HAIR);
      expect(Math.max(...all.map(({ bottom }) => bottom))).toBeLessThan(piece.height + HAIR);
      expect(Math.min(...all.map(({ left }) => left))).toBeGreaterThan(-HAIR);
      expect(Math.max(...all.map(({ right }) => right))).toBeLessThan(room.width + HAIR);
    }
  });
});
