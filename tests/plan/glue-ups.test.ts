import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { squareInches } from '../../src/measure/area.js';
import { inches } from '../../src/measure/inch.js';
import type { Joint } from '../../src/model/part.js';
import { batchSize, minutesForJoint } from '../../src/plan/glue-batch.js';
import { glueUps } from '../../src/plan/glue-ups.js';
import { planOf, project } from '../support/projects.js';
import { referenceRows } from '../support/reference-rows.js';

const ORIGIN = { x: 0, y: 0, z: 0 };

/** A joint of 10 sq in between two parts of a stand. */
function joint(stand: string, at: number, change: Partial<Joint> = {}): Joint {
  const inside = stand === '' ? '' : `${stand}.`;
  return {
    rule: 'tenon',
    name: 'Tenon into rail',
    with: 'glue',
    each: 1,
    glue: true,
    from: `${inside}slat/${at}`,
    into: `${inside}rail/1`,
    drive: { axis: 'x', toward: 1 },
    patch: { min: ORIGIN, max: { x: 0, y: inches(1), z: inches(3.5) } },
    through: 20,
    holds: 20,
    grain: 'side',
    gluedArea: squareInches(10),
    ...change,
  };
}

function tenons(stand: string, count: number): Joint[] {
  return Array.from({ length: count }, (_, at) => joint(stand, at + 1));
}

function ups(joints: readonly Joint[], openMinutes: number, people: 1 | 2 = 1) {
  return glueUps({ parts: [], joints }, { openMinutes }, people);
}

describe('how many joints fit into one glue-up', () => {
  // Field case F24: half a minute a joint, three minutes for the clamps.
  test.each(
    referenceRows('field case F24', [
      [10, 10],
      [15, 18],
    ] as const),
  )('F24: %d minutes of open time take %d joints', (openMinutes, joints) => {
    expect(batchSize({ openMinutes, clampingMinutes: 3, minutesEach: 0.5 })).toBe(joints);
  });

  // F24: 38 tenons with a 10 minute glue: 10 + 10 + 10 + 8.
  test('F24: 38 tenons are four glue-ups with a 10 minute glue, three with a 15 minute one', () => {
    expect(ups(tenons('', 38), 10).map(up => up.joints.length)).toEqual([10, 10, 10, 8]);
    expect(ups(tenons('', 38), 15).map(up => up.joints.length)).toEqual([18, 18, 2]);
  });

  test('F24: every one of them keeps inside four fifths of the open time', () => {
    for (const up of ups(tenons('', 38), 10)) expect(up.minutes).toBeLessThanOrEqual(8);
  });

  // Common practice: both faces of 25 sq in in half a minute, 50 sq in in one.
  test('a large face takes longer, a second person makes it quicker', () => {
    expect(minutesForJoint(squareInches(50), 1)).toBeCloseTo(1, 9);
    expect(minutesForJoint(squareInches(5), 1)).toBeCloseTo(0.5, 9);
    expect(minutesForJoint(squareInches(5), 2)).toBeLessThan(0.5);
  });
});

describe('glue-ups', () => {
  test('a sub-assembly that fits stays whole, and comes before what it is part of', () => {
    const joints = [
      joint('', 9, { from: 'end/left.post/1', into: 'seat_rail/1', rule: 'hold' }),
      ...tenons('end/left', 6),
      ...tenons('end/right', 6),
    ];
    const found = ups(joints, 10);
    expect(found.map(up => [up.number, up.of, up.joints.length])).toEqual([
      [1, 'end/left', 6],
      [2, 'end/right', 6],
      [3, '', 1],
    ]);
    expect(found[2]?.parts).toEqual(['seat_rail/1', 'end/left.post/1']);
  });

  test('what does not fit is cut between one kind of joint and the next', () => {
    const corners = tenons('panel/1', 4).map(it => ({
      ...it,
      rule: 'corner',
      name: 'Rail over post',
    }));
    const found = ups([...tenons('panel/1', 6), ...corners], 8);
    expect(found.map(up => up.joints.map(({ rule }) => rule[0]).join(''))).toEqual([
      'tttttt',
      'cccc',
    ]);
  });

  test('two people need fewer glue-ups', () => {
    expect(ups(tenons('', 38), 10, 2).length).toBeLessThan(ups(tenons('', 38), 10, 1).length);
  });

  test('a joint that does not fit stands alone and says so', () => {
    const found = ups(tenons('', 2), 3);
    expect(found.map(({ fits, joints }) => [fits, joints.length])).toEqual([
      [false, 1],
      [false, 1],
    ]);
  });

  // Glue maker guide: first clamp 2 in from the end, then every 10 in: a 3-1/2 in joint takes one, a 48
  // in joint six; screws pull their own joints together.
  test('clamps are counted for joints that glue alone holds', () => {
    const long = { min: ORIGIN, max: { x: inches(48), y: 0, z: inches(1) } };
    const found = ups(
      [...tenons('', 2), joint('', 3, { patch: long }), joint('', 4, { with: 'screw' })],
      15,
    );
    expect(found[0]?.clamps).toBe(1 + 1 + 6);
  });

  test('dry joints are none of its business', () => {
    expect(ups([joint('', 1, { glue: false })], 10)).toEqual([]);
  });

  test('more joints never make fewer glue-ups, and every joint is in one of them', () => {
    const aJoint = fc.record({
      stand: fc.constantFrom('', 'end/left', 'end/right', 'box/1.side/1'),
      rule: fc.constantFrom('corner', 'keeper'),
      area: fc.integer({ min: 1, max: 120 }),
    });
    fc.assert(
      fc.property(
        fc.array(aJoint, { maxLength: 30 }),
        fc.nat(30),
        fc.constantFrom(1, 2),
        (rows, out, people) => {
          const joints = rows.map(({ stand, rule, area }, at) =>
            joint(stand, at, { rule, gluedArea: squareInches(area) }),
          );
          const fewer = joints.filter((_, at) => at !== out);
          const all = ups(joints, 10, people as 1 | 2);
          expect(all.flatMap(up => up.joints).length).toBe(joints.length);
          expect(all.length).toBeGreaterThanOrEqual(ups(fewer, 10, people as 1 | 2).length);
          for (const up of all) if (up.fits) expect(up.minutes).toBeLessThanOrEqual(8 + 1e-9);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('the bench with planter ends', () => {
  const { model } = planOf(project('planter-bench'));
  const found = glueUps(model, { openMinutes: 8 }, 1);

  // Open time 8 min, (8 x 0.8 - 3) / 0.5 = 6.8: a panel of 4 corners, 2 keepers and 6 infill joints takes
  // two glue-ups, alone.
  test('an end panel is glued in two goes by one person, corners and keepers first', () => {
    const left = found.filter(({ of }) => of === 'end_panel/left');
    expect(left.map(up => up.joints.map(({ rule }) => rule))).toEqual([
      ['corner', 'corner', 'corner', 'corner', 'keeper_rail', 'keeper_rail'],
      Array.from({ length: 6 }, () => 'infill_keeper'),
    ]);
  });

  test('two people close a whole panel in one go', () => {
    const left = glueUps(model, { openMinutes: 8 }, 2).filter(({ of }) => of === 'end_panel/left');
    expect(left.map(up => up.joints.length)).toEqual([12]);
  });

  test('lines name the parts as people say them', () => {
    expect(found[0]?.order.join('\n')).toMatch(
      /Rail over post: .*panel rail on post, 4 joints, \d screws? each/,
    );
  });

  test('the same model gives the same glue-ups', () => {
    expect(glueUps(model, { openMinutes: 8 }, 1)).toEqual(found);
  });
});
