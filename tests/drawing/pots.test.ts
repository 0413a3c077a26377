import { describe, expect, test } from 'vitest';
import { draw } from '../../src/drawing/draw.js';
import { potsOf } from '../../src/drawing/pots.js';
import { drawStepCorner } from '../../src/drawing/step-drawing.js';
import type { Drawing } from '../../src/drawing/strokes.js';
import { benchPlan } from '../support/open-build.js';

const plan = benchPlan();

function stepOf(id: string) {
  const step = plan.steps.find(one => one.id === id);
  if (step === undefined) throw new Error(`no step ${id}`);
  return step;
}

/** How wide and high all that is drawn of pots is, in inches. */
function sizeOfPots({ strokes }: Drawing) {
  const ends = strokes
    .filter(({ kind }) => kind === 'phantom')
    .flatMap(({ from, to }) => [from, to]);
  const spread = (values: readonly number[]) => (Math.max(...values) - Math.min(...values)) / 25.4;
  return { wide: spread(ends.map(({ u }) => u)), high: spread(ends.map(({ v }) => v)) };
}

describe('the step that sets the pots', () => {
  const corner = drawStepCorner(plan, stepOf('pots'), 'corner-right');

  // Isometric drawings show a level circle as an ellipse 1.22 times as long as it is across and 0.71
  // times as wide (ISO 5456-3; not re-checked): for 10-3/4 in by 11-1/2 in
  // 10.75 x 1.2247 = 13.17 and 11.5 + 10.75 x 0.7071 = 19.10.
  test('shows a pot of the size that was answered, over the blocks', () => {
    expect(sizeOfPots(corner).wide).toBeCloseTo(13.17, 1);
    expect(sizeOfPots(corner).high).toBeCloseTo(19.1, 1);
    expect(corner.labels.map(({ text }) => text)).toEqual(['pot 1']);
    expect(corner.inWords).toContain('Pot 1, 11-1/2 in high and 10-3/4 in across');
  });

  test('shows the way of the pot down to its blocks', () => {
    const [pot] = potsOf(plan, stepOf('pots'));
    if (pot === undefined) throw new Error('no pot');
    const down = corner.arrows.filter(({ from, to }) => from.u === to.u && to.v < from.v);
    // By hand: 22 in high, 1-1/2 foot, 3-1/2 bearer, 3/4 plank and 4-1/2 of blocks make the foot of the
    // pot 10-1/4 in above the ground; it is drawn just clear of the wood.
    const longest = Math.max(...down.map(({ from, to }) => from.v - to.v)) / 25.4;
    expect(longest).toBeGreaterThan(22 - 10.25);
    expect(longest).toBeLessThan(22 - 10.25 + 3);
  });

  test('draws no wood through the pot', () => {
    const label = corner.labels[0];
    if (label === undefined) throw new Error('no pot');
    const near = corner.strokes.filter(
      ({ kind, from, to }) =>
        kind !== 'phantom' &&
        Math.abs((from.u + to.u) / 2 - label.at.u) < 50 &&
        Math.abs((from.v + to.v) / 2 - label.at.v) < 50,
    );
    expect(near).toEqual([]);
  });

  test('from above it is a circle as large as its rim, from the front a rectangle', () => {
    const { model, display } = plan;
    const { bright, standing } = stepOf('pots');
    const input = {
      model,
      display,
      bright: new Set(bright),
      standing: new Set(standing),
      pots: potsOf(plan, stepOf('pots')),
    };
    const [rim, ...more] = draw(input, 'above').rings;
    expect(((rim?.radius ?? 0) * 2) / 25.4).toBeCloseTo(10.75, 6);
    expect(more).toEqual([]);
    expect(sizeOfPots(draw(input, 'front')).high).toBeCloseTo(11.5, 6);
  });

  test('no other step shows a pot', () => {
    const others = plan.steps.filter(({ id, bright }) => id !== 'pots' && bright.length > 0);
    expect(others.filter(step => potsOf(plan, step).length > 0)).toEqual([]);
  });
});
