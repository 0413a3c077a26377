import { describe, expect, test } from 'vitest';
import { focusOn } from '../../src/drawing/apart/focus.js';
import { movedBy, pullApart } from '../../src/drawing/apart/pull-apart.js';
import { heldBefore } from '../../src/drawing/apart/units.js';
import { drawStepCorner } from '../../src/drawing/step-drawing.js';
import { stepScene } from '../../src/drawing/step-scene.js';
import { stepSubject } from '../../src/drawing/step-subject.js';
import { contactsOf } from '../../src/model/contacts.js';
import type { Box, Part } from '../../src/model/part.js';
import { selectJoints } from '../../src/plan/select.js';
import { type BoardInTest, boardOf } from '../support/boards.js';
import { benchPlan } from '../support/open-build.js';

function pulled(bright: readonly BoardInTest[], standing: readonly BoardInTest[] = []) {
  const [added, there] = [bright.map(boardOf), standing.map(boardOf)];
  const contacts = contactsOf([...added, ...there]);
  const found = pullApart({ bright: added, standing: there, held: [], contacts });
  return new Map(
    found.flatMap(one =>
      one.unit.map(({ id }) => [id, `${ways[one.way.axis]}${one.way.toward} by ${one.by}`]),
    ),
  );
}

const ways = { x: 'x', y: 'y', z: 'z' };
const FLOOR: BoardInTest = { id: 'floor', from: [0, 0, 0], to: [500, 500, 20] };

describe('boards come off the way they are set down', () => {
  test('what stands on the floor comes up', () => {
    expect(pulled([{ id: 'block', from: [100, 100, 20], to: [200, 200, 60] }], [FLOOR])).toEqual(
      new Map([['block', 'z1 by 100']]),
    );
  });

  test('a foot comes down, a side board away from the side that it lies on', () => {
    const found = pulled(
      [
        { id: 'foot', from: [0, 0, -40], to: [90, 90, 0] },
        { id: 'side', from: [500, 0, 0], to: [520, 500, 20] },
      ],
      [FLOOR],
    );
    expect(found).toEqual(
      new Map([
        ['foot', 'z-1 by 104'],
        ['side', 'x1 by 104'],
      ]),
    );
  });

  test('what hangs together with something that stands there stays: a bench is not set without its feet', () => {
    const there = boardOf(FLOOR);
    const [post, box] = [
      boardOf({ id: 'post', from: [0, 0, 20], to: [40, 40, 400] }),
      boardOf({ id: 'box', from: [40, 0, 20], to: [300, 300, 300] }),
    ];
    const contacts = contactsOf([there, post, box]);
    const held = [{ from: 'post', into: 'floor' }];
    const found = pullApart({ bright: [post, box], standing: [there], held, contacts });
    expect(found.flatMap(({ unit }) => unit.map(({ id }) => id))).toEqual(['box']);
  });

  test('of a pile the top comes off first and is drawn farthest out', () => {
    const pile = [0, 1, 2].map(i => ({
      id: `block/${i}`,
      from: [100, 100, 20 + 40 * i] as const,
      to: [200, 200, 60 + 40 * i] as const,
    }));
    expect(pulled(pile, [FLOOR])).toEqual(
      new Map([
        ['block/2', 'z1 by 300'],
        ['block/1', 'z1 by 200'],
        ['block/0', 'z1 by 100'],
      ]),
    );
  });

  test('what is shut in on all sides stays in its place', () => {
    const walls: BoardInTest[] = [
      FLOOR,
      { id: 'lid', from: [0, 0, 80], to: [500, 500, 100] },
      { id: 'left', from: [0, 0, 20], to: [20, 500, 80] },
      { id: 'right', from: [480, 0, 20], to: [500, 500, 80] },
      { id: 'front', from: [20, 0, 20], to: [480, 20, 80] },
      { id: 'back', from: [20, 480, 20], to: [480, 500, 80] },
    ];
    expect(pulled([{ id: 'block', from: [100, 100, 20], to: [200, 200, 60] }], walls).size).toBe(0);
  });
});

describe('a step is shown at one place', () => {
  const parts = ['left', 'right'].flatMap(stand =>
    ['post/1', 'post/2', 'rail/1'].map((name, at) =>
      boardOf({ id: `panel/${stand}.${name}`, from: [at * 50, 0, 0], to: [at * 50 + 40, 40, 400] }),
    ),
  );

  test('where it does the same at each stand', () => {
    const focus = focusOn({ bright: parts, standing: [], made: [] });
    expect(focus.places).toBe(2);
    expect(focus.bright.map(({ id }) => id)).toEqual([
      'panel/left.post/1',
      'panel/left.post/2',
      'panel/left.rail/1',
    ]);
  });

  test('but whole where it joins one stand to another', () => {
    const [joint] = benchPlan().model.joints;
    if (joint === undefined) throw new Error('the bench has joints');
    const made = [{ ...joint, from: 'panel/left.post/1', into: 'panel/right.post/1' }];
    expect(focusOn({ bright: parts, standing: [], made })).toEqual({
      bright: parts,
      standing: [],
      places: 1,
    });
  });
});

describe('the steps of the bench', () => {
  const plan = benchPlan();

  test('both boxes are moved onto the bench, which stands there whole', () => {
    const step = plan.steps.find(({ id }) => id === 'place');
    if (step === undefined) throw new Error('no step that sets it in place');
    const { bright, standing } = stepScene(plan, step);
    expect(new Set(bright.map(({ id }) => id.split('.')[0]))).toEqual(
      new Set(['planter_box/left', 'planter_box/right']),
    );
    // By hand: two end panels, two seat rails, thirteen slats and four feet.
    const kinds = new Set(standing.map(({ id }) => id.split(/[./]/)[0]));
    expect([...kinds].sort()).toEqual([
      'back_foot',
      'end_panel',
      'front_foot',
      'seat_rail',
      'seat_slat',
    ]);
  });

  test('bearers go onto side panels alone: the faces are not there before the box is closed', () => {
    const step = plan.steps.find(({ id }) => id === 'bearers');
    if (step === undefined) throw new Error('no step that sets the bearers');
    const { bright, standing } = stepScene(plan, step);
    expect(bright.map(({ id }) => id)).toEqual([
      'planter_box/left.bearer/1',
      'planter_box/left.bearer/2',
    ]);
    const panels = new Set(standing.map(({ id }) => id.split('.')[1]));
    expect([...panels].sort()).toEqual(['side/inner', 'side/outer']);
  });

  test('eight panels are closed the same way, four of them with shorter rails, and the picture says so', () => {
    const step = plan.steps.find(({ id }) => id === 'box-corners');
    if (step === undefined) throw new Error('no step that closes panels');
    expect(drawStepCorner(plan, step, 'corner-right').notes).toEqual([
      'One of 8 places where the same is done; in some with E instead.',
    ]);
  });

  const assembling = plan.steps.filter(
    step => step.joins.length > 0 && stepSubject(step).standing !== undefined,
  );

  function overlaps(a: Box, b: Box): boolean {
    return (['x', 'y', 'z'] as const).every(
      axis => a.min[axis] < b.max[axis] - 1e-6 && b.min[axis] < a.max[axis] - 1e-6,
    );
  }

  function moved(part: Part, by: { x: number; y: number; z: number }): readonly Box[] {
    const add = (at: Box['min']) => ({ x: at.x + by.x, y: at.y + by.y, z: at.z + by.z });
    return part.solid.map(({ min, max }) => ({ min: add(min), max: add(max) }));
  }

  test.each(assembling.map(step => [step.id, step] as const))(
    '%s: no board is drawn into another, and on its way it passes none',
    (_, step) => {
      const bright = new Set(step.bright);
      const there = new Set(step.standing);
      const made = selectJoints(plan.model, step.joins);
      const before = plan.steps.slice(0, plan.steps.indexOf(step)).flatMap(({ joins }) => joins);
      const focus = focusOn({
        bright: plan.model.parts.filter(({ id }) => bright.has(id)),
        standing: plan.model.parts.filter(({ id }) => there.has(id)),
        made,
      });
      const found = pullApart({
        ...focus,
        held: heldBefore(selectJoints(plan.model, before), { ...focus, made }, plan.model.contacts),
        contacts: plan.model.contacts,
      });
      expect(found.length).toBeGreaterThan(0);
      const shift = new Map(found.flatMap(one => one.unit.map(({ id }) => [id, movedBy(one)])));
      const shown = [...new Set([...focus.standing, ...focus.bright])];
      const at = (part: Part, share: number) => {
        const { x, y, z } = shift.get(part.id) ?? { x: 0, y: 0, z: 0 };
        return moved(part, { x: x * share, y: y * share, z: z * share });
      };
      for (const share of [1, 2 / 3, 1 / 3]) {
        const solids = shown.map(part => at(part, share));
        solids.forEach((one, i) => {
          for (const other of solids.slice(i + 1)) {
            expect(one.some(a => other.some(b => overlaps(a, b)))).toBe(false);
          }
        });
      }
    },
  );

  test.each(assembling.map(step => [step.id, step] as const))(
    '%s: an arrow leads to each place, and what is added is filled and named',
    (_, step) => {
      const drawing = drawStepCorner(plan, step, 'corner-right');
      expect(drawing.arrows.filter(({ kind }) => kind === 'goes').length).toBeGreaterThan(0);
      expect(drawing.patches.length).toBeGreaterThan(0);
      const marks = new Set(plan.cutList.map(({ mark }) => mark));
      // Whole boxes are carried there: nobody looks for their pieces.
      expect(drawing.marks.length > 0).toBe(step.id !== 'place');
      expect(drawing.marks.filter(({ text }) => !marks.has(text))).toEqual([]);
    },
  );
});
