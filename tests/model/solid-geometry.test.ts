import fc from 'fast-check';
import Module, { type Manifold, type ManifoldToplevel } from 'manifold-3d';
import { beforeAll, describe, expect, test } from 'vitest';
import { MILLIMETERS, SIXTEENTHS } from '../../src/measure/displays.js';
import { contactsOf } from '../../src/model/contacts.js';
import { exposed, exposedByPart } from '../../src/model/exposed.js';
import { AXES, type Axis, type Box, type Model, type Part } from '../../src/model/part.js';
import { solidVolume, surfaceOf } from '../../src/model/solid.js';
import { PROJECT_NAMES, planOf, project } from '../support/projects.js';
import { corners, part } from './boards.js';

/**
 * Volumes and areas against a general library for solid geometry (manifold-3d 3.5.4), which knows of
 * triangles and nothing of boards. There each part is a cuboid less its notches, and the whole is the
 * union of all parts: what two parts lose by being joined is twice the area in which they touch.
 */
let library: ManifoldToplevel;

beforeAll(async () => {
  library = await Module();
  library.setup();
});

/** Relative to what is measured. */
const CLOSE = 1e-6;
/** Faces that meet have to meet bit by bit there: coordinates are whole multiples of this, in mm. */
const GRID = 2 ** -20;

const onGrid = (at: number) => Math.round(at / GRID) * GRID;

function cuboid({ min, max }: Box): Manifold {
  const size = AXES.map(axis => onGrid(max[axis]) - onGrid(min[axis])) as [number, number, number];
  return library.Manifold.cube(size).translate([onGrid(min.x), onGrid(min.y), onGrid(min.z)]);
}

/** A blank less its notches; nothing is asked of the boxes that the program made of it. */
function solidThere({ box, notches }: Part): Manifold {
  return notches.reduce((solid, notch) => solid.subtract(cuboid(notch.box)), cuboid(box));
}

/** Of the faces of a solid those square to an axis: stretching it to twice its length doubles the others. */
function areaAcross(solid: Manifold, axis: Axis): number {
  const by = AXES.map(it => (it === axis ? 2 : 1)) as [number, number, number];
  return 2 * solid.surfaceArea() - solid.scale(by).surfaceArea();
}

function expectClose(ours: number, theirs: number, what: string): void {
  expect(Math.abs(ours - theirs) / Math.abs(theirs), `${what}: ${ours} and ${theirs}`).toBeLessThan(
    CLOSE,
  );
}

function expectSameSolids(model: Pick<Model, 'parts' | 'contacts'>): void {
  const there = new Map(model.parts.map(it => [it.id, solidThere(it)]));
  for (const it of model.parts) {
    const solid = there.get(it.id);
    if (solid === undefined) continue;
    const surface = surfaceOf(it.solid, it.runs);
    expectClose(solidVolume(it.solid), solid.volume(), `volume of ${it.id}`);
    expectClose(surface.endGrain, areaAcross(solid, it.runs), `end grain of ${it.id}`);
    expectClose(surface.faces + surface.endGrain, solid.surfaceArea(), `surface of ${it.id}`);
  }
  expectSameContacts(model, there);
  const all = library.Manifold.union([...there.values()]);
  const open = exposed(model);
  expectClose(open.faces + open.endGrain, all.surfaceArea(), 'all that is exposed');
  const byPart = [...exposedByPart(model).values()];
  const sum = byPart.reduce((total, { faces, endGrain }) => total + faces + endGrain, 0);
  expectClose(sum, all.surfaceArea(), 'what is exposed, part by part');
}

function expectSameContacts(
  { contacts }: Pick<Model, 'contacts'>,
  there: ReadonlyMap<string, Manifold>,
): void {
  const areas = new Map<string, { a: string; b: string; area: number }>();
  for (const { a, b, area } of contacts) {
    const before = areas.get(`${a} ${b}`)?.area ?? 0;
    areas.set(`${a} ${b}`, { a, b, area: before + area });
  }
  for (const { a, b, area } of areas.values()) {
    const [one, other] = [there.get(a), there.get(b)];
    if (one === undefined || other === undefined) continue;
    const apart = one.surfaceArea() + other.surfaceArea();
    const lost = apart - one.add(other).surfaceArea();
    expectClose(area, lost / 2, `contact of ${a} and ${b}`);
  }
}

describe('volumes, contacts and exposed areas', () => {
  const displays = [
    ['inch', SIXTEENTHS],
    ['metric', MILLIMETERS],
  ] as const;
  const recipes = PROJECT_NAMES.flatMap(name =>
    displays.map(([system, display]) => [name, system, display] as const),
  );

  test.each(recipes)('of %s in %s sections', (name, system, display) => {
    const recipe = project(name);
    const hasTimber = recipe.groups.some(({ questions }) =>
      questions.some(({ id }) => id === 'timber'),
    );
    const given = hasTimber ? { timber: { kind: 'choice' as const, value: system } } : {};
    expectSameSolids(planOf(recipe, given, display).model);
  });

  test('of random boards, each notched where those before it stand', () => {
    const span = fc.tuple(fc.nat(9), fc.integer({ min: 1, max: 6 }));
    const blank = fc.tuple(span, span, span).map(spans =>
      corners(
        spans.map(([at]) => at),
        spans.map(([at, size]) => at + size),
      ),
    );
    const runs = fc.constantFrom<Axis>('x', 'y', 'z');
    fc.assert(
      fc.property(fc.array(fc.tuple(blank, runs), { minLength: 1, maxLength: 7 }), wished => {
        const parts: Part[] = [];
        for (const [box, along] of wished) {
          const notches = parts.flatMap(({ solid }) => solid);
          const made = part(`board/${parts.length}`, box, { runs: along, notches });
          if (made.solid.length > 0) parts.push(made);
        }
        expectSameSolids({ parts, contacts: contactsOf(parts) });
      }),
      { numRuns: 150, seed: 1848 },
    );
  });
});
