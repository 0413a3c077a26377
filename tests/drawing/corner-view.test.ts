import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawCorner } from '../../src/drawing/corner/corner-view.js';
import type { CornerView, Drawing, PaperPoint } from '../../src/drawing/strokes.js';
import { MILLIMETERS } from '../../src/measure/displays.js';
import type { Axis, Box, Model } from '../../src/model/part.js';
import { boxOf, pieceOf } from '../support/boards.js';
import { scene } from '../support/scenes.js';

/**
 * The check is a ray from the eye through the paper, worked out here box by box without the code under
 * test. Boxes with whole corners have all their edges on a lattice of triangles in an isometric view,
 * so one ray in each triangle tells all there is to see.
 */
const EYES: Record<CornerView, { x: 1 | -1; y: 1 | -1 }> = {
  'corner-right': { x: 1, y: -1 },
  'corner-back-right': { x: 1, y: 1 },
  'corner-back-left': { x: -1, y: 1 },
  'corner-left': { x: -1, y: -1 },
};
/** Level lines rise by 30 degrees on isometric paper. */
const COS = Math.cos(Math.PI / 6);
const SIN = Math.sin(Math.PI / 6);

type Hit = { readonly part: string; readonly axis: Axis; readonly plane: number };

/** From front right, x runs down to the right and y up to the right; the other corners by quarter turns. */
function project(view: CornerView, [x, y, z]: readonly [number, number, number]): PaperPoint {
  const eye = EYES[view];
  const [right, away] = [eye.x * y - eye.y * x, -(eye.x * x + eye.y * y)];
  return { u: right * COS, v: z + away * SIN };
}

function cornerOfPaper(model: Model, view: CornerView): PaperPoint {
  const points = model.parts
    .flatMap(part => part.solid)
    .flatMap(({ min, max }) =>
      [min.x, max.x].flatMap(x =>
        [min.y, max.y].flatMap(y => [min.z, max.z].map(z => project(view, [x, y, z]))),
      ),
    );
  return { u: Math.min(...points.map(it => it.u)), v: Math.min(...points.map(it => it.v)) };
}

type Solid = { readonly part: string; readonly box: Box };

function solidsOf(model: Model): readonly Solid[] {
  return model.parts.flatMap(({ id, solid }) => solid.map(box => ({ part: id, box })));
}

/** What a ray through a point of the paper meets first: which face of which part. */
function firstHit(solids: readonly Solid[], view: CornerView, at: PaperPoint): Hit | undefined {
  const eye = { ...EYES[view], z: 1 };
  const [right, away] = [at.u / COS, -at.v / SIN];
  const [x, y] = [(eye.x * away - eye.y * right) / 2, (eye.x * right + eye.y * away) / 2];
  let nearest = Number.NEGATIVE_INFINITY;
  let hit: Hit | undefined;
  for (const { part, box } of solids) {
    // How far along the ray one enters and leaves the box, between each pair of faces.
    const [intoX, outX] =
      eye.x > 0 ? [box.min.x - x, box.max.x - x] : [x - box.max.x, x - box.min.x];
    const [intoY, outY] =
      eye.y > 0 ? [box.min.y - y, box.max.y - y] : [y - box.max.y, y - box.min.y];
    const out = Math.min(outX, outY, box.max.z);
    if (Math.max(intoX, intoY, box.min.z) >= out || out <= nearest) continue;
    nearest = out;
    const axis = out === outX ? 'x' : out === outY ? 'y' : 'z';
    const plane = eye[axis] > 0 ? box.max[axis] : box.min[axis];
    hit = { part, axis, plane };
  }
  return hit;
}

/** Sides of the lattice: where the middle of each is, and a point in the triangle on either hand. */
function latticeSides(drawing: Drawing, corner: PaperPoint) {
  const sides: { middle: PaperPoint; hands: readonly [PaperPoint, PaperPoint] }[] = [];
  const firstColumn = Math.round(corner.u / COS) - 1;
  const columns = Math.round(drawing.width / COS) + 2;
  for (let column = firstColumn; column <= firstColumn + columns; column += 1) {
    // Corners of the lattice stand at whole heights in every second column, at halves between.
    const shift = Math.abs(column % 2) / 2;
    const u = column * COS;
    const top = corner.v + drawing.height + 1;
    for (let v = Math.floor(corner.v) - 1 + shift; v <= top; v += 1) {
      const upright = { u, v: v + 0.5 };
      sides.push({
        middle: upright,
        hands: [
          { u: u - 0.2, v: v + 0.5 },
          { u: u + 0.2, v: v + 0.5 },
        ],
      });
      for (const way of [1, -1]) {
        const middle = { u: u + COS / 2, v: v + (way * SIN) / 2 };
        const hands = [0.2, -0.2].map(by => ({ u: middle.u, v: middle.v + by }));
        sides.push({ middle, hands: [hands[0] ?? middle, hands[1] ?? middle] });
      }
    }
  }
  return sides;
}

function name({ u, v }: PaperPoint): string {
  return `${Math.round(u * 1000)} ${Math.round(v * 1000)}`;
}

/** The middles of all sides of the lattice that strokes run over, each stroke from corner to corner. */
function strokedSides(drawing: Drawing): string[] {
  const names = drawing.strokes
    .filter(({ kind }) => kind === 'visible')
    .flatMap(({ from, to }) => {
      const length = Math.hypot(to.u - from.u, to.v - from.v);
      expect(Math.abs(length - Math.round(length))).toBeLessThan(1e-6);
      return Array.from({ length: Math.round(length) }, (_, i) => {
        const share = (i + 0.5) / length;
        return name({
          u: from.u + share * (to.u - from.u),
          v: from.v + share * (to.v - from.v),
        });
      });
    });
  return names.sort();
}

/** Corners go round to the left. */
function isInside(corners: readonly PaperPoint[], { u, v }: PaperPoint): boolean {
  return corners.every((a, i) => {
    const b = corners[(i + 1) % corners.length] ?? a;
    return (b.u - a.u) * (v - a.v) - (b.v - a.v) * (u - a.u) > 0;
  });
}

function isSameHit(a: Hit | undefined, b: Hit | undefined): boolean {
  return a?.part === b?.part && a?.axis === b?.axis && a?.plane === b?.plane;
}

function drawn(model: Model, view: CornerView, bright: ReadonlySet<string>): Drawing {
  const placed = model.parts.map(part => ({ part, bright: bright.has(part.id) }));
  return drawCorner({ view, placed, display: MILLIMETERS });
}

const view = fc.constantFrom<CornerView>(
  'corner-right',
  'corner-back-right',
  'corner-back-left',
  'corner-left',
);

const RUNS = { numRuns: 1000, seed: 1848 };
/** A thousand scenes take a while where other work goes on beside. */
const LONG_MS = 120_000;

describe('a corner view', () => {
  test(
    'has a stroke exactly where something else comes into sight',
    () => {
      fc.assert(
        fc.property(scene, view, ({ model, bright }, from) => {
          const drawing = drawn(model, from, bright);
          const corner = cornerOfPaper(model, from);
          const toPaper = ({ u, v }: PaperPoint) => ({ u: u - corner.u, v: v - corner.v });
          const solids = solidsOf(model);
          const changes: string[] = [];
          for (const { middle, hands } of latticeSides(drawing, corner)) {
            const [a, b] = hands.map(hand => firstHit(solids, from, hand));
            if (!isSameHit(a, b)) changes.push(name(toPaper(middle)));
          }
          expect(strokedSides(drawing)).toEqual(changes.sort());
        }),
        RUNS,
      );
    },
    LONG_MS,
  );

  test(
    'fills the places where a board being added is nearest, each once',
    () => {
      fc.assert(
        fc.property(scene, view, ({ model, bright }, from) => {
          const drawing = drawn(model, from, bright);
          const corner = cornerOfPaper(model, from);
          const solids = solidsOf(model);
          for (const { hands } of latticeSides(drawing, corner)) {
            const [{ u, v }] = hands;
            const hit = firstHit(solids, from, { u, v });
            const at = { u: u - corner.u, v: v - corner.v };
            const filled = drawing.patches.filter(({ corners }) => isInside(corners, at)).length;
            if (filled !== (hit !== undefined && bright.has(hit.part) ? 1 : 0)) {
              expect.fail(
                `${from}: filled ${filled} times at ${name(at)}, where ${hit?.part} is seen`,
              );
            }
          }
        }),
        RUNS,
      );
    },
    LONG_MS,
  );

  test('of a cube is the hexagon of an isometric drawing, with lengths true along the edges', () => {
    const cube = pieceOf([{ id: 'cube', from: [0, 0, 0], to: [100, 100, 100] }]);
    const drawing = drawn(cube, 'corner-right', new Set());
    expect(drawing.width).toBeCloseTo(200 * COS, 9);
    expect(drawing.height).toBeCloseTo(200, 9);
    expect(drawing.strokes.length).toBe(9);
    for (const { from, to } of drawing.strokes) {
      expect(Math.hypot(to.u - from.u, to.v - from.v)).toBeCloseTo(100, 9);
    }
  });

  test('draws a line that two flush boards share once, bright where one of them is', () => {
    const flush = pieceOf([
      { id: 'a', from: [0, 0, 0], to: [100, 20, 50] },
      { id: 'b', from: [100, 0, 0], to: [200, 20, 50] },
    ]);
    const joint = drawn(flush, 'corner-right', new Set(['a'])).strokes.filter(
      ({ from, to }) => from.u === to.u && Math.abs(from.u - 100 * COS) < 1e-6,
    );
    expect(joint.map(({ bright }) => bright)).toEqual([true]);
  });

  test('dashes a board being added that cannot be seen, and says so', () => {
    const inside = pieceOf([
      { id: 'floor', from: [0, 0, 0], to: [60, 60, 5] },
      { id: 'lid', from: [0, 0, 30], to: [60, 60, 35] },
      { id: 'front', from: [0, 0, 5], to: [60, 5, 30] },
      { id: 'side', from: [55, 5, 5], to: [60, 60, 30] },
      {
        id: 'block',
        from: [10, 20, 5],
        to: [30, 40, 15],
        solid: [boxOf([10, 20, 5], [30, 40, 15])],
      },
    ]);
    const drawing = drawn(inside, 'corner-right', new Set(['block']));
    expect(drawing.strokes.filter(({ kind }) => kind === 'hidden').length).toBe(9);
    expect(drawing.inWords).toContain('One of the boards being added is hidden behind other wood');
    const placed = inside.parts.map(part => ({ part, bright: part.id === 'block' }));
    const names = new Map([['block', 'F']]);
    const named = drawCorner({ view: 'corner-right', placed, display: MILLIMETERS, names });
    expect(named.marks.map(({ text, room }) => [text, room.width])).toEqual([['F', 0]]);
  });
});
