import { describe, expect, test } from 'vitest';
import { drawings } from '../../src/drawing/drawings.js';
import { sectionDrawings } from '../../src/drawing/section/section-drawings.js';
import { benchPlan } from '../support/open-build.js';

describe('a section through the planter of the bench', () => {
  const plan = benchPlan();
  const drawing = sectionDrawings(plan)[0]?.draw();
  if (drawing === undefined) throw new Error('the bench has planters');

  test('gives the inside, the blocks, the pot and its rim', () => {
    // By hand: 18 in less two walls of 1-1/2 in is 15 in. 22 in less foot 1-1/2, bearer 3-1/2 and plank
    // 3/4 in is 16-1/4 in: three blocks of 1-1/2 in, a pot of 11-1/2 in, and 1/4 in of edge over its rim.
    expect(drawing.dimensions.map(({ side, text }) => `${side} ${text}`)).toEqual([
      'below 15 in',
      'left 16-1/4 in',
      'right 4-1/2 in',
      'right 11-1/2 in',
      'right 1/4 in',
      'left 22 in',
      'below 18 in',
    ]);
  });

  test('hatches as much wood as the plane cuts', () => {
    const [planter] = plan.planters;
    const own = new Set(planter?.first.parts);
    const plane = planter?.first.pots[0]?.y ?? 0;
    // Cut by hand, box by box: every box has the plane inside or not.
    const cut = plan.model.parts
      .filter(({ id }) => own.has(id))
      .flatMap(({ solid }) => solid)
      .filter(({ min, max }) => min.y < plane - 1e-6 && plane + 1e-6 < max.y)
      .reduce((sum, { min, max }) => sum + (max.x - min.x) * (max.z - min.z), 0);
    const hatched = drawing.patches.reduce((sum, { corners, look }) => {
      expect(look).toBe('cut');
      const us = corners.map(({ u }) => u);
      const vs = corners.map(({ v }) => v);
      return sum + (Math.max(...us) - Math.min(...us)) * (Math.max(...vs) - Math.min(...vs));
    }, 0);
    expect(hatched).toBeCloseTo(cut, 3);
  });

  test('draws the pot in dash-dots on its blocks, as wide and as high as was answered', () => {
    const pot = drawing.strokes.filter(({ kind }) => kind === 'phantom');
    const us = pot.flatMap(({ from, to }) => [from.u, to.u]);
    const vs = pot.flatMap(({ from, to }) => [from.v, to.v]);
    // 10-3/4 in across, 11-1/2 in high.
    expect((Math.max(...us) - Math.min(...us)) / 25.4).toBeCloseTo(10.75, 6);
    expect((Math.max(...vs) - Math.min(...vs)) / 25.4).toBeCloseTo(11.5, 6);
  });

  test('leans the hatching of boards that touch differently', () => {
    const lean = new Map(drawing.patches.map(({ part, lean }) => [part, lean]));
    const touching = plan.model.contacts.filter(({ a, b }) => lean.has(a) && lean.has(b));
    expect(touching.length).toBeGreaterThan(0);
    const alike = touching.filter(({ a, b }) => lean.get(a) === lean.get(b));
    expect(alike.length).toBeLessThan(touching.length / 2);
  });

  test('is told on the view from above by a cutting plane through the middle of the pot', () => {
    const above = drawings(plan)
      .find(({ name }) => name === 'above')
      ?.draw();
    const planes = above?.strokes.filter(({ kind }) => kind === 'cutting-plane') ?? [];
    expect(planes.length).toBe(1);
    // The pot stands in the middle of a box that is 18 in deep.
    expect((planes[0]?.from.v ?? 0) / 25.4).toBeCloseTo(9, 6);
    expect(planes[0]?.to.v).toBe(planes[0]?.from.v);
  });
});
