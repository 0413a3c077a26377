import { expect, test } from 'vitest';
import { contactsOf } from '../../src/model/contacts.js';
import { type JointPick, jointsOf } from '../../src/model/joints.js';
import type { Joint, Part } from '../../src/model/part.js';
import { touchingPairs } from '../../src/model/touching-pairs.js';
import { corners, part } from './boards.js';

function joints(parts: readonly Part[], pick: Partial<JointPick>): readonly Joint[] {
  const whole: JointPick = {
    rule: 'corner',
    name: 'Corner',
    with: 'screw',
    glue: true,
    drive: undefined,
    from: parts.slice(0, 1),
    into: parts.slice(1),
    each: () => 2,
    ...pick,
  };
  return jointsOf(whole, touchingPairs(contactsOf(parts)));
}

/** A rail 4 high, notched to half over the end of a post 4 wide; both 2 thick. */
const RAIL = part('rail', corners([0, 0, 20], [30, 2, 24]), {
  notches: [corners([0, 0, 20], [4, 2, 22])],
});
const POST = part('post', corners([0, 0, 0], [4, 2, 22]), { runs: 'z' });

test('a screw through the tongue of a notched rail has half the rail above it and the post below', () => {
  const [joint, ...more] = joints([RAIL, POST], { drive: 'z' });
  expect(more).toEqual([]);
  expect(joint).toMatchObject({
    from: 'rail',
    into: 'post',
    drive: { axis: 'z', toward: -1 },
    patch: corners([0, 0, 22], [4, 2, 22]),
    through: 2,
    holds: 22,
    grain: 'end',
  });
  // Tongue on the post's end, 4 x 2, and shoulder against its side, 2 x 2.
  expect(joint?.gluedArea).toBe(12);
});

test('driven the other way, the post is under the head and the rail holds the point', () => {
  const [joint] = joints([POST, RAIL], { drive: 'z' });
  expect(joint).toMatchObject({
    drive: { axis: 'z', toward: 1 },
    through: 22,
    holds: 2,
    grain: 'side',
  });
});

test('driven along the rail, the screw goes through the shoulder', () => {
  const [joint] = joints([POST, RAIL], { drive: 'x' });
  // At the middle of the shoulder the post is 4 thick and the rail runs on for 26.
  expect(joint).toMatchObject({
    patch: corners([4, 0, 20], [4, 2, 22]),
    through: 4,
    holds: 26,
    grain: 'end',
  });
});

test('without a driving axis the largest touching face decides', () => {
  expect(joints([RAIL, POST], {})[0]?.drive).toEqual({ axis: 'z', toward: -1 });
});

test('parts that do not touch square to the driving axis have no joint', () => {
  expect(joints([RAIL, POST], { drive: 'y' })).toEqual([]);
});

test('an L-shaped place is one place, and its screws go into the largest rectangle', () => {
  // A panel whose upper left corner is notched away stands against a wall: 10 x 10 less 4 x 3.
  const panel = part('panel', corners([0, 0, 0], [10, 2, 10]), {
    notches: [corners([0, 0, 7], [4, 2, 10])],
  });
  const wall = part('wall', corners([0, 2, 0], [10, 4, 10]));
  const sides: number[] = [];
  const found = joints([panel, wall], {
    drive: 'y',
    each: ({ long, short }) => {
      sides.push(long, short);
      return 3;
    },
  });
  expect(found).toHaveLength(1);
  // 10 x 7 = 70 across the lower part, 6 x 10 = 60 up the right side.
  expect(found[0]?.patch).toEqual(corners([0, 2, 0], [10, 2, 7]));
  expect(found[0]?.gluedArea).toBe(88);
  expect(sides).toEqual([10, 7]);
});

test('a bridge that stands on two feet of the same board has two places', () => {
  const bridge = part('bridge', corners([0, 0, 2], [10, 2, 6]), {
    notches: [corners([3, 0, 2], [7, 2, 4])],
  });
  const beam = part('beam', corners([0, 0, 0], [10, 2, 2]));
  const found = joints([bridge, beam], { drive: 'z' });
  expect(found.map(joint => joint.patch)).toEqual([
    corners([0, 0, 2], [3, 2, 2]),
    corners([7, 0, 2], [10, 2, 2]),
  ]);
});

test('patches that a notch elsewhere cut apart are one contact again', () => {
  // The notch at the back slices the solid into several boxes, but the lower face stays whole.
  const rail = part('rail', corners([0, 0, 2], [10, 4, 6]), {
    notches: [corners([3, 0, 4], [7, 2, 6])],
  });
  const floor = part('floor', corners([-5, -5, 0], [15, 15, 2]));
  const contacts = contactsOf([rail, floor]);
  expect(contacts).toHaveLength(1);
  expect(contacts[0]?.area).toBe(40);
});
