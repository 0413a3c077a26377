import { expect, test } from 'vitest';
import { drawings } from '../../src/drawing/drawings.js';
import { plainMarks } from '../../src/print/sheet/mark.js';
import { drawingPiece } from '../../src/print/sheet/set-drawing.js';
import { benchPlan } from '../support/open-build.js';

test('through the middle of a screw goes one level and one upright line, and no more', () => {
  const named = drawings(benchPlan()).find(({ name }) => name === 'screws-corner-1');
  if (named === undefined) throw new Error('no drawing of the screws of a corner');
  const drawing = named.draw();
  // Wide enough for 1:1, so that places on paper are those of the drawing.
  const { marks } = drawingPiece(drawing, { width: 1000, height: 1000 }, () => 10);
  const lines = plainMarks(marks).filter(mark => mark.kind === 'line');
  const rings = plainMarks(marks).filter(mark => mark.kind === 'area' && mark.fill === undefined);
  expect(rings).toHaveLength(4);
  for (const ring of rings) {
    if (ring.kind !== 'area') continue;
    const xs = ring.corners.map(({ x }) => x);
    const ys = ring.corners.map(({ y }) => y);
    const at = { x: mid(xs), y: mid(ys) };
    const near = lines.filter(
      ({ from, to }) => Math.hypot(mid([from.x, to.x]) - at.x, mid([from.y, to.y]) - at.y) < 0.01,
    );
    expect(near).toHaveLength(2);
  }
});

function mid(values: readonly number[]): number {
  return (Math.min(...values) + Math.max(...values)) / 2;
}
