import { expect, test } from 'vitest';
import { inches, toInches } from '../../src/measure/inch.js';
import { setOut } from '../../src/model/setout.js';
import { problemWords } from '../../src/recipe/problem-words.js';
import { usualAnswers } from '../../src/recipe/questions.js';
import { expectBox, inch, partOf, recipeOf, standing } from './bench.js';

/** A recipe of a few boards: the frame around what a test is about. */
function trestle(text: string, ask = '') {
  const recipe = recipeOf(
    `recipe: 1
id: trestle
title: A trestle
about: Something to stand on.
ask:
  size:
    title: The size
    run: { kind: length, say: How long?, why: It decides., usual: 20 in, from: 1 in, to: 100 in }
${ask}${text}
steps: []
`,
  );
  return setOut(recipe, usualAnswers(recipe));
}

const WOOD = 'boards: { frame: 2x4, strip: 1x2 }';
const RAIL = 'name: Rail, board: frame, length: = run, runs: x, face: y';
const POST = 'name: Post, board: frame, length: 10 in, runs: z, face: y';

function kinds(text: string, ask = '') {
  const out = trestle(text, ask);
  return out.ok ? [] : out.problems.map(({ kind }) => kind);
}

test('a board runs along its axis and shows its wide face to another', () => {
  const { model } = standing(
    trestle(`${WOOD}
parts:
  rail: { ${RAIL}, at: [1 in, 2 in, 3 in] }
  bearer: { name: Bearer, board: frame, length: 5 in, runs: y, face: z, at: [0, 10 in, 0] }
`),
  );
  expectBox(partOf(model, 'rail/1').box, inch([1, 2, 3], [21, 3.5, 6.5]));
  expectBox(partOf(model, 'bearer/1').box, inch([0, 10, 0], [3.5, 15, 1.5]));
});

test('names may be given in any order', () => {
  const { sizes, scope } = standing(
    trestle(`${WOOD}
let:
  twice: { is: = 2 * once, why: later }
  once: { is: = run + frame.width, why: first }
parts:
  rail: { ${RAIL}, at: [0, 0, 0] }
`),
  );
  expect(sizes.map(({ id, value }) => [id, value])).toEqual([
    ['twice', { kind: 'number', power: 1, value: inches(47) }],
    ['once', { kind: 'number', power: 1, value: inches(23.5) }],
  ]);
  expect(scope.find('rail.length')).toEqual({ kind: 'number', power: 1, value: inches(20) });
});

test('names that need each other are told as a round', () => {
  const found = kinds(`${WOOD}
let:
  one: { is: = two, why: a }
  two: { is: = three + 1 in, why: b }
  three: { is: = one, why: c }
parts:
  rail: { ${RAIL}, at: [0, 0, 0] }
`);
  expect(found).toEqual([{ is: 'circular', names: ['one', 'two', 'three', 'one'] }]);
});

test('a board whose section depends on its own width is told as a round', () => {
  const found = kinds(`boards: { frame: '= if(frame.width > 3 in, "2x4", "2x6")' }
parts:
  rail: { ${RAIL}, at: [0, 0, 0] }
`);
  expect(found.map(({ is }) => is)).toEqual(['circular']);
});

test('a layout that its own piece depends on is told as a round', () => {
  const found = kinds(`${WOOD}
parts:
  bar: { name: Bar, board: strip, length: = bars.gap, runs: x, face: y, at: [0, 0, 0], repeat: { layout: bars } }
layouts:
  bars: { spread: bar, along: x, from: 0 in, over: 20 in, gap: { want: 1 in, from: 1/2 in, to: 2 in }, ends: flush }
`);
  expect(found.map(({ is }) => is)).toEqual(['circular']);
});

const FRAME = `assemblies:
  frame_of_two:
    takes: { tall: length }
    parts:
      post: { name: Post, board: frame, length: = tall, runs: z, face: y, at: [0, 0, 0] }
      arm: { name: Arm, board: frame, length: 10 in, runs: x, face: y, at: [3-1/2 in, 0, 0] }
    joints:
      arm_hold: { name: Arm to post, from: post, into: arm, with: screw, each: 2, glue: no, drive: x }
`;

test.each([
  // Post 3.5 x 1.5 at the left end of a bracket of 13.5 x 1.5; the arm points to +x.
  ['as drawn', 'turn: 0', [5, 6, 0], [8.5, 7.5, 30], 'x', 1],
  // A quarter turn counterclockwise: the arm points to +y, the post stands at its near end.
  ['a quarter turn', 'turn: 1', [5, 6, 0], [6.5, 9.5, 30], 'y', 1],
  ['half a turn', 'turn: 2', [15, 6, 0], [18.5, 7.5, 30], 'x', -1],
  ['three quarter turns', 'turn: 3', [5, 16, 0], [6.5, 19.5, 30], 'y', -1],
  ['a mirror', 'turn: 0, mirror: x', [15, 6, 0], [18.5, 7.5, 30], 'x', -1],
  // Turned first, then mirrored across y: as three quarter turns would, but the other hand.
  ['a quarter turn and a mirror', 'turn: 1, mirror: y', [5, 16, 0], [6.5, 19.5, 30], 'y', -1],
] as const)('%s carries boards and driving axes along', (_, way, min, max, axis, toward) => {
  const { model } = standing(
    trestle(`${WOOD}
${FRAME}places:
  bracket: { use: frame_of_two, tall: 30 in, stands: { here: { at: [5 in, 6 in, 0], ${way} } } }
`),
  );
  expectBox(partOf(model, 'bracket/here.post/1').box, inch(min, max));
  expect(model.joints).toMatchObject([{ rule: 'arm_hold', drive: { axis, toward }, grain: 'end' }]);
  expect(model.joints.map(joint => toInches(joint.through))).toEqual([expect.closeTo(3.5, 9)]);
});

test('assemblies in assemblies keep their stands in the id and their uses in the path', () => {
  const { model } = standing(
    trestle(`${WOOD}
${FRAME}  pair:
    takes: { tall: length }
    places:
      half: { use: frame_of_two, tall: = tall, stands: { left: { at: [0, 0, 0], turn: 0 }, right: { at: [30 in, 0, 0], turn: 0, mirror: x } } }
places:
  low: { use: pair, tall: 12 in, stands: { a: { at: [0, 0, 0], turn: 0 }, b: { at: [0, 20 in, 0], turn: 0 } } }
  high: { use: pair, tall: 24 in, stands: { c: { at: [0, 40 in, 0], turn: 0 } } }
`),
  );
  expect(model.parts).toHaveLength(12);
  expect(partOf(model, 'low/b.half/right.post/1')).toMatchObject({
    path: 'low.half.post',
    length: inches(12),
  });
  expect(partOf(model, 'high/c.half/left.post/1').length).toBe(inches(24));
  expect(model.joints).toHaveLength(6);
});

test('an assembly sees the whole and its own names, and a joint rule only pairs boards of one standing', () => {
  const { model } = standing(
    trestle(`${WOOD}
let:
  rise: { is: = run / 2, why: half of it }
assemblies:
  block:
    let:
      high: { is: = rise + 1 in, why: seen from inside }
    parts:
      leg: { name: Leg, board: frame, length: = high, runs: z, face: y, at: [0, 0, 0] }
      cap: { name: Cap, board: frame, length: 3-1/2 in, runs: x, face: z, at: [0, 0, = high] }
    joints:
      cap_hold: { name: Cap on leg, from: cap, into: leg, with: screw, each: 1, glue: no, drive: z }
      side_hold: { name: Leg to leg, from: leg, into: cap, with: screw, each: 1, glue: no, drive: z }
places:
  # Two blocks that stand against each other: their legs touch, but belong to two standings.
  pile: { use: block, stands: { one: { at: [0, 0, 0], turn: 0 }, two: { at: [3-1/2 in, 0, 0], turn: 0 } } }
`),
  );
  expect(partOf(model, 'pile/two.leg/1').length).toBe(inches(11));
  expect(model.joints.map(({ from, into }) => `${from} ${into}`)).toEqual([
    'pile/one.cap/1 pile/one.leg/1',
    'pile/one.leg/1 pile/one.cap/1',
    'pile/two.cap/1 pile/two.leg/1',
    'pile/two.leg/1 pile/two.cap/1',
  ]);
});

test('a half lap takes the upper half of one board and the lower half of the other', () => {
  const { model } = standing(
    trestle(`${WOOD}
parts:
  long: { ${RAIL}, at: [0, 5 in, 0] }
  cross: { name: Cross, board: frame, length: 12 in, runs: y, face: x, at: [8 in, 0, 0] }
notches:
  lap: { name: Lap, cut: long, over: cross, share: half, along: z }
`),
  );
  for (const [id, other, box] of [
    ['long/1', 'cross/1', inch([8, 5, 1.75], [9.5, 6.5, 3.5])],
    ['cross/1', 'long/1', inch([8, 5, 0], [9.5, 6.5, 1.75])],
  ] as const) {
    const { notches } = partOf(model, id);
    expect(notches).toMatchObject([{ rule: 'lap', for: other }]);
    for (const notch of notches) expectBox(notch.box, box);
  }
});

test('fasteners may be counted from the sides of the place where two boards lie on each other', () => {
  const { model } = standing(
    trestle(`${WOOD}
parts:
  rail: { ${RAIL}, at: [0, 0, 0] }
  strip: { name: Strip, board: strip, length: 12 in, runs: x, face: y, at: [2 in, 1-1/2 in, 0] }
joints:
  strip_hold: { name: Strip, from: strip, into: rail, with: brad, each: '= ceil(patch.long / 6 in) + if(patch.short > 1 in, 1, 0)', glue: yes }
`),
  );
  // 12 x 1.5 in: ceil(12 / 6) + 1 = 3; driven toward -y, where the rail is.
  expect(model.joints).toMatchObject([
    {
      each: 3,
      drive: { axis: 'y', toward: -1 },
      through: expect.closeTo(inches(0.75), 9),
      glue: true,
    },
  ]);
});

test('boards that are left out leave their joints and notches out', () => {
  const { model } = standing(
    trestle(`${WOOD}
parts:
  rail: { ${RAIL}, at: [0, 0, 0] }
  brace: { name: Brace, board: frame, length: 4 in, runs: x, face: y, at: [0, 0, 10 in], when: = run > 30 in }
notches:
  seat: { name: Seat, cut: brace, over: rail, share: all }
joints:
  hold: { name: Brace, from: brace, into: rail, with: screw, each: 2, glue: no, drive: z }
`),
  );
  expect(model.parts.map(({ id }) => id)).toEqual(['rail/1']);
  expect(model.joints).toEqual([]);
});

test('a row of boards stands where its layout says, from its datum', () => {
  const { model } = standing(
    trestle(`${WOOD}
parts:
  bar: { name: Bar, board: strip, length: 5 in, runs: z, face: y, at: [0, 2 in, 0], repeat: { layout: bars } }
layouts:
  bars: { spread: bar, along: x, from: 3 in, over: = run, gap: { want: 2 in, from: 1 in, to: 3 in }, ends: flush }
`),
  );
  // (20 + 2) / (1.5 + 2) = 6.29: 6 bars leave (20 - 9) / 5 = 2.2 in, 7 leave 9.5 / 6 = 1.58.
  expect(model.parts.map(({ box }) => toInches(box.min.x))).toEqual(
    [0, 1, 2, 3, 4, 5].map(i => expect.closeTo(3 + i * 3.7, 9)),
  );
  expect(model.spreads).toMatchObject([{ layout: 'bars', spreads: 'bar', within: '', count: 6 }]);
});

test.each([
  [
    'a section that nobody sells',
    `boards: { frame: 2x5 }\nparts:\n  rail: { ${RAIL}, at: [0, 0, 0] }`,
    { is: 'unknown-target', target: 'section', name: '2x5' },
  ],
  [
    'a board without length',
    `${WOOD}\nparts:\n  rail: { name: Rail, board: frame, length: = run - 21 in, runs: x, face: y, at: [0, 0, 0] }`,
    { is: 'no-length', part: 'Rail', length: expect.closeTo(-25.4, 9) },
  ],
  [
    'half a board',
    `${WOOD}\nparts:\n  rail: { ${RAIL}, at: [0, 0, 0], repeat: { count: = 5 / 2, step: [0, 5 in, 0] } }`,
    { is: 'bad-count', what: 'Rail', count: 2.5 },
  ],
  [
    'thousands of boards',
    `${WOOD}\nparts:\n  rail: { ${RAIL}, at: [0, 0, 0], repeat: { count: 100000, step: [0, 5 in, 0] } }`,
    { is: 'too-many-parts', most: 2000 },
  ],
  [
    'two boards in one place',
    `${WOOD}\nparts:\n  rail: { ${RAIL}, at: [0, 0, 0] }\n  post: { ${POST}, at: [2 in, 1 in, 0] }`,
    {
      is: 'boards-overlap',
      a: 'rail/1',
      b: 'post/1',
      sides: [3.5, 0.5, 3.5].map(side => expect.closeTo(inches(side), 9)),
      corner: [2, 1, 0].map(at => expect.closeTo(inches(at), 9)),
    },
  ],
  [
    'a joint of boards that stand apart',
    `${WOOD}\nparts:\n  rail: { ${RAIL}, at: [0, 0, 0] }\n  post: { ${POST}, at: [0, 5 in, 0] }\njoints:\n  hold: { name: Hold, from: rail, into: post, with: screw, each: 1, glue: no, drive: y }`,
    { is: 'never-touches', joint: 'Hold', from: 'rail', into: 'post' },
  ],
  [
    'a joint driven along an axis where its boards do not touch',
    `${WOOD}\nparts:\n  rail: { ${RAIL}, at: [0, 0, 0] }\n  post: { ${POST}, at: [0, 1-1/2 in, 0] }\njoints:\n  hold: { name: Hold, from: rail, into: post, with: screw, each: 1, glue: no, drive: z }`,
    { is: 'never-touches', joint: 'Hold', from: 'rail', into: 'post' },
  ],
  [
    'a notch where nothing overlaps',
    `${WOOD}\nparts:\n  rail: { ${RAIL}, at: [0, 0, 0] }\n  post: { ${POST}, at: [0, 1-1/2 in, 0] }\nnotches:\n  gap: { name: Gap, cut: rail, over: post, share: all }`,
    { is: 'never-overlaps', notch: 'Gap', cut: 'rail', over: 'post' },
  ],
  [
    'a notch that takes the whole board',
    `${WOOD}\nparts:\n  rail: { ${RAIL}, at: [0, 0, 0] }\n  chip: { name: Chip, board: strip, length: 1 in, runs: x, face: y, at: [1 in, 0, 0] }\nnotches:\n  gone: { name: Gone, cut: chip, over: rail, share: all }`,
    { is: 'nothing-left', part: 'chip/1' },
  ],
  [
    'a row that no count fills',
    `${WOOD}\nparts:\n  bar: { name: Bar, board: strip, length: 5 in, runs: z, face: y, at: [0, 0, 0], repeat: { layout: bars } }\nlayouts:\n  bars: { spread: bar, along: x, from: 0 in, over: 2-1/4 in, gap: { want: 1 in, from: 1/2 in, to: 1-1/2 in }, ends: gap }`,
    {
      is: 'no-count-fits',
      layout: 'bars',
      // None leaves 2-1/4 in; one leaves (2.25 - 1.5) / 2 = 3/8 in.
      fewer: { count: 0, gap: expect.closeTo(inches(2.25), 9) },
      more: { count: 1, gap: expect.closeTo(inches(0.375), 9) },
    },
  ],
  [
    'an assembly inside itself',
    `${WOOD}\nassemblies:\n  box:\n    parts:\n      post: { ${POST}, at: [0, 0, 0] }\n    places:\n      inner: { use: box, stands: { a: { at: [9 in, 0, 0], turn: 0 } } }\nplaces:\n  outer: { use: box, stands: { a: { at: [0, 0, 0], turn: 0 } } }`,
    { is: 'inside-itself', assembly: 'box' },
  ],
])('%s is a problem with its facts, and words for a person', (_, text, kind) => {
  const out = trestle(text);
  if (out.ok) throw new Error('it stands');
  expect(out.problems.map(problem => problem.kind)).toMatchObject([kind]);
  for (const problem of out.problems) {
    const { problem: wrong, hint } = problemWords(problem);
    expect(problem.at.line).toBeGreaterThan(8);
    expect(wrong).toMatch(/\.$/);
    expect(hint).toMatch(/\.$/);
    expect(wrong + hint).not.toMatch(/undefined|NaN|\[object/);
  }
});

test('all problems are told at once, in the order of the file', () => {
  const found = kinds(`${WOOD}
parts:
  a: { name: Short, board: frame, length: 0 in, runs: x, face: y, at: [0, 0, 0] }
  b: { ${RAIL}, at: [0, 0, = nowhere] }
  c: { ${RAIL}, at: [0, 0, 0], repeat: { count: -1, step: [0, 0, 0] } }
`);
  expect(found.map(({ is }) => is)).toEqual(['no-length', 'unknown-name', 'bad-count']);
});

test('boards of one path and two lengths have no length in a text', () => {
  const { scope } = standing(
    trestle(`${WOOD}
${FRAME}  pair:
    places:
      short: { use: frame_of_two, tall: 12 in, stands: { a: { at: [0, 0, 0], turn: 0 } } }
  other:
    takes: { tall: length }
    places:
      half: { use: frame_of_two, tall: = tall, stands: { a: { at: [0, 0, 0], turn: 0 } } }
places:
  one: { use: other, tall: 12 in, stands: { a: { at: [0, 0, 0], turn: 0 } } }
  two: { use: pair, stands: { a: { at: [0, 10 in, 0], turn: 0 } } }
`),
  );
  expect(scope.find('one.half.post.length')).toMatchObject({ kind: 'number', value: inches(12) });
  expect(scope.find('two.short.arm.count')).toMatchObject({ value: 1 });
});
