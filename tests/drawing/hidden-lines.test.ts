import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Drawing, Stroke, SquareView as View } from '../../src/drawing/strokes.js';
import { allParts, drawView } from '../../src/drawing/view.js';
import { MILLIMETERS } from '../../src/measure/displays.js';
import type { Box, Model } from '../../src/model/part.js';
import { scene } from '../support/scenes.js';

/**
 * The check is a ray through the paper, worked out here box by box without the code under test: of
 * all boxes the ray meets, which part is met first, and how deep.
 */
type Hit = { readonly part: string; readonly depth: number };

const RAYS: Record<
  View,
  (box: Box) => { u: [number, number]; v: [number, number]; depth: number }
> = {
  front: ({ min, max }) => ({ u: [min.x, max.x], v: [min.z, max.z], depth: min.y }),
  end: ({ min, max }) => ({ u: [min.y, max.y], v: [min.z, max.z], depth: -max.x }),
  above: ({ min, max }) => ({ u: [min.x, max.x], v: [min.y, max.y], depth: -max.z }),
};

/** What a ray through the point (u, v) of the paper meets first. */
function firstHit(model: Model, view: View, at: { u: number; v: number }): Hit | undefined {
  const solids = model.parts.flatMap(part => part.solid.map(box => ({ part, ...RAYS[view](box) })));
  const corner = {
    u: Math.min(...solids.map(one => one.u[0])),
    v: Math.min(...solids.map(one => one.v[0])),
  };
  const u = at.u + corner.u;
  const v = at.v + corner.v;
  const hits = solids.filter(one => one.u[0] < u && u < one.u[1] && one.v[0] < v && v < one.v[1]);
  let first: Hit | undefined;
  for (const { part, depth } of hits) {
    if (first === undefined || depth < first.depth) first = { part: part.id, depth };
  }
  return first;
}

function isSameHit(a: Hit | undefined, b: Hit | undefined): boolean {
  return a?.part === b?.part && a?.depth === b?.depth;
}

function draw(model: Model, view: View, bright: ReadonlySet<string> = new Set()): Drawing {
  return drawView({
    model,
    view,
    bright,
    standing: allParts(model),
    display: MILLIMETERS,
    dimensions: 'overall',
  });
}

/** The dashes around boards that are wholly hidden stand for no edge that the eye meets. */
function visible(drawing: Drawing): readonly Stroke[] {
  return drawing.strokes.filter(stroke => stroke.kind !== 'hidden');
}

/** Whether some stroke passes over a point, which lies on a grid line in one direction at least. */
function isStroked(strokes: readonly Stroke[], u: number, v: number): boolean {
  return strokes.some(
    ({ from, to }) =>
      Math.min(from.u, to.u) <= u &&
      u <= Math.max(from.u, to.u) &&
      Math.min(from.v, to.v) <= v &&
      v <= Math.max(from.v, to.v),
  );
}

const view = fc.constantFrom<View>('front', 'end', 'above');
const RUNS = { numRuns: 1000, seed: 1848 };
/** A thousand scenes take a while where other work goes on beside. */
const LONG_MS = 120_000;

/** Points in the middle of each unit square of the paper, which no edge passes through. */
function middles(drawing: Drawing): { u: number; v: number }[] {
  return Array.from({ length: drawing.width }, (_, i) => i + 0.5).flatMap(u =>
    Array.from({ length: drawing.height }, (_, j) => ({ u, v: j + 0.5 })),
  );
}

describe('what is drawn and what is hidden', () => {
  test(
    'on both sides of every stroke something else is seen',
    () => {
      fc.assert(
        fc.property(scene, view, ({ model, bright }, from) => {
          const drawing = draw(model, from, bright);
          for (const stroke of visible(drawing)) {
            const isUpright = stroke.from.u === stroke.to.u;
            const [low, high] = isUpright
              ? [stroke.from.v, stroke.to.v]
              : [stroke.from.u, stroke.to.u];
            for (let along = low + 0.5; along < high; along += 1) {
              const [a, b] = isUpright
                ? [
                    { u: stroke.from.u - 0.5, v: along },
                    { u: stroke.from.u + 0.5, v: along },
                  ]
                : [
                    { u: along, v: stroke.from.v - 0.5 },
                    { u: along, v: stroke.from.v + 0.5 },
                  ];
              expect(isSameHit(firstHit(model, from, a), firstHit(model, from, b))).toBe(false);
            }
          }
        }),
        RUNS,
      );
    },
    LONG_MS,
  );

  test(
    'wherever something else comes into sight there is a stroke',
    () => {
      fc.assert(
        fc.property(scene, view, ({ model, bright }, from) => {
          const drawing = draw(model, from, bright);
          const strokes = visible(drawing);
          for (const { u, v } of [...middles(drawing), { u: -0.5, v: 0.5 }]) {
            const here = firstHit(model, from, { u, v });
            const right = firstHit(model, from, { u: u + 1, v });
            const over = firstHit(model, from, { u, v: v + 1 });
            expect(isStroked(strokes, u + 0.5, v)).toBe(!isSameHit(here, right));
            expect(isStroked(strokes, u, v + 0.5)).toBe(!isSameHit(here, over));
          }
        }),
        RUNS,
      );
    },
    LONG_MS,
  );

  test(
    'the filled places are those where a board being added is nearest, each filled once',
    () => {
      fc.assert(
        fc.property(scene, view, ({ model, bright }, from) => {
          const drawing = draw(model, from, bright);
          for (const { u, v } of middles(drawing)) {
            const covering = drawing.patches.filter(({ corners }) => {
              const [low, , high] = corners;
              if (low === undefined || high === undefined) return false;
              return low.u < u && u < high.u && low.v < v && v < high.v;
            });
            const hit = firstHit(model, from, { u, v });
            expect(covering.length).toBe(hit !== undefined && bright.has(hit.part) ? 1 : 0);
          }
        }),
        RUNS,
      );
    },
    LONG_MS,
  );

  test(
    'no two strokes of one weight continue each other',
    () => {
      fc.assert(
        fc.property(scene, view, ({ model, bright }, from) => {
          const ends = visible(draw(model, from, bright)).map(({ from, to, bright }) => {
            const weight = bright ? 'bright' : 'plain';
            const kind = from.u === to.u ? `upright at ${from.u}` : `level at ${from.v}`;
            const [low, high] = from.u === to.u ? [from.v, to.v] : [from.u, to.u];
            return { begins: `${weight} ${kind} ${low}`, ends: `${weight} ${kind} ${high}` };
          });
          const begins = new Set(ends.map(one => one.begins));
          expect(ends.filter(one => begins.has(one.ends))).toEqual([]);
        }),
        RUNS,
      );
    },
    LONG_MS,
  );
});
