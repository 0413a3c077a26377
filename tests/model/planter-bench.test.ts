import { expect, test } from 'vitest';
import { inches, toInches } from '../../src/measure/inch.js';
import { extent, intersect } from '../../src/model/box.js';
import { exposed, surfaceOfParts } from '../../src/model/exposed.js';
import type { Box } from '../../src/model/part.js';
import { signature } from '../../src/model/signature.js';
import { solidVolume } from '../../src/model/solid.js';
import { bench, expectBox, inch, partOf, type Said, standing } from './bench.js';

/*
 * The bench at its usual answers, worked on paper. Dressed dry sizes of American Softwood Lumber Standard
 * PS 20: 2x4 is 1-1/2 x 3-1/2 in, 1x2 3/4 x 1-1/2, 1x3 3/4 x 2-1/2, 1x4 3/4 x 3-1/2.
 * Seat 48 long, 18 high, 18 deep; planters 18 wide and 22 high.
 */
const BENCH = standing(bench());

test.each([
  // End panel: 18 - 1.5 slat - 1.5 foot = 15 high; post 15 - 2 x 1.75; opening 18 - 2 x 3.5 and 15 - 2 x 3.5.
  ['end_panel.post', '2x4', 18 - 1.5 - 1.5 - 3.5, 4],
  ['end_panel.rail', '2x4', 18, 4],
  ['end_panel.keeper', '1x2', 18 - 7, 4],
  // 3 x 2.5 in 11 in leave 3.5 / 4 = 0.875; 4 would leave 0.2, further from 0.75.
  ['end_panel.infill', '1x3', 15 - 7 - 2 / 16, 2 * 3],
  // Planter: 22 - 1.5 foot = 20.5 high; sides 18 deep, faces 18 - 2 x 1.5 wide between them.
  ['planter_box.side.post', '2x4', 20.5 - 3.5, 8],
  ['planter_box.side.rail', '2x4', 18, 8],
  ['planter_box.side.keeper', '1x2', 11, 8],
  ['planter_box.side.infill', '1x3', 20.5 - 7 - 2 / 16, 4 * 3],
  ['planter_box.face.post', '2x4', 17, 8],
  ['planter_box.face.rail', '2x4', 15, 8],
  ['planter_box.face.keeper', '1x2', 15 - 7, 8],
  // 2 x 2.5 in 8 in leave exactly 1 in; 3 would leave 0.125.
  ['planter_box.face.infill', '1x3', 20.5 - 7 - 2 / 16, 4 * 2],
  ['planter_box.bearer', '2x4', 15, 4],
  // 3 x 3.5 in 15 in leave 4.5 / 4 = 1.125; 4 would leave 0.2, further from 0.75.
  ['planter_box.plank', '1x4', 15 - 2 / 8, 2 * 3],
  ['planter_box.front_foot', '2x4', 3.5, 4],
  ['planter_box.back_foot', '2x4', 3.5, 4],
  // 22 - 5.75 floor - 0.5 lip - 11.5 pot = 4.25: three layers of 1.5, two stacks, two planters.
  ['planter_box.riser', '2x4', (10.75 * 2) / 3, 12],
  ['seat_rail', '2x4', 48, 2],
  // 13 x 3.5 in 48 leave 2.5 / 14 = 0.179; 12 would leave 6/13, further from 1/4.
  ['seat_slat', '2x4', 18, 13],
  ['front_foot', '2x4', 3.5, 2],
  ['back_foot', '2x4', 3.5, 2],
])('%s is a %s, %d in long, %d of them', (path, section, length, count) => {
  const parts = BENCH.model.parts.filter(part => part.path === path);
  expect(parts.map(part => part.section.name)).toEqual(Array(count).fill(section));
  for (const part of parts) expect(toInches(part.length)).toBeCloseTo(length, 9);
});

test('nothing else stands there: no stretcher up to 48 in, no middle rail up to 24 in of reach', () => {
  const ends = 4 + 4 + 4 + 6;
  const sides = 8 + 8 + 8 + 12;
  const faces = 8 + 8 + 8 + 8;
  const inPlanters = 4 + 6 + 4 + 4 + 12;
  const seat = 2 + 13 + 2 + 2;
  expect(BENCH.model.parts).toHaveLength(ends + sides + faces + inPlanters + seat);
});

test.each([
  // The left panel looks to the left: its first post, on the left seen from outside, stands at the wall.
  ['end_panel/left.post/1', [18, 14.5, 3.25], [19.5, 18, 14.75]],
  ['end_panel/left.post/2', [18, 0, 3.25], [19.5, 3.5, 14.75]],
  ['end_panel/right.post/1', [64.5, 0, 3.25], [66, 3.5, 14.75]],
  ['end_panel/left.rail/1', [18, 0, 1.5], [19.5, 18, 5]],
  ['end_panel/left.rail/2', [18, 0, 13], [19.5, 18, 16.5]],
  // Infill outside, keepers inside: 3/4 in each in 1-1/2 in.
  [
    'end_panel/left.infill/1',
    [18, 18 - 3.5 - 0.875 - 2.5, 5.0625],
    [18.75, 18 - 3.5 - 0.875, 12.9375],
  ],
  ['end_panel/right.keeper/2', [64.5, 3.5, 11.5], [65.25, 14.5, 13]],
  ['seat_rail/1', [18, 0, 13], [66, 1.5, 16.5]],
  ['seat_rail/2', [18, 16.5, 13], [66, 18, 16.5]],
  ['seat_slat/1', [18 + 5 / 28, 0, 16.5], [21.5 + 5 / 28, 18, 18]],
  ['seat_slat/13', [66 - 5 / 28 - 3.5, 0, 16.5], [66 - 5 / 28, 18, 18]],
  ['planter_box/left.side/outer.rail/2', [0, 0, 18.5], [1.5, 18, 22]],
  ['planter_box/left.side/inner.post/1', [16.5, 0, 3.25], [18, 3.5, 20.25]],
  ['planter_box/left.face/front.post/1', [1.5, 0, 3.25], [5, 1.5, 20.25]],
  ['planter_box/left.face/back.post/1', [13, 16.5, 3.25], [16.5, 18, 20.25]],
  // The right planter is the mirror image of the left: its inner side stands against the bench.
  ['planter_box/right.side/inner.rail/1', [66, 0, 1.5], [67.5, 18, 5]],
  ['planter_box/right.side/outer.rail/1', [82.5, 0, 1.5], [84, 18, 5]],
  ['planter_box/right.face/front.post/1', [79, 0, 3.25], [82.5, 1.5, 20.25]],
  ['planter_box/left.bearer/2', [15, 1.5, 1.5], [16.5, 16.5, 5]],
  ['planter_box/left.plank/1', [1.625, 2.625, 5], [16.375, 6.125, 5.75]],
  ['planter_box/right.back_foot/1', [80.5, 14.5, 0], [84, 18, 1.5]],
  // Pot 10.75 across in the middle of 15 x 15: from 9 - 43/12 to 9 + 43/12 both ways.
  [
    'planter_box/left.riser/1',
    [9 - 43 / 12, 9 - 43 / 12, 5.75],
    [12.5 - 43 / 12, 9 + 43 / 12, 7.25],
  ],
  [
    'planter_box/left.riser/6',
    [5.5 + 43 / 12, 9 - 43 / 12, 8.75],
    [9 + 43 / 12, 9 + 43 / 12, 10.25],
  ],
])('%s stands where it was drawn on paper', (id, min, max) => {
  expectBox(partOf(BENCH.model, id).box, inch(min, max));
});

test('the whole piece is 84 in long, 18 in deep and 22 in high', () => {
  expectBox(BENCH.model.overall, inch([0, 0, 0], [84, 18, 22]));
});

test('every panel closes: rails as long as it is wide, tongue, post and tongue as high', () => {
  const panels = new Set(
    BENCH.model.parts.flatMap(part => (/^(.*)\.rail\/1$/.exec(part.id) ?? []).slice(1)),
  );
  expect(panels.size).toBe(10);
  for (const panel of panels) {
    const [height, width] = panel.startsWith('end')
      ? [15, 18]
      : [20.5, panel.includes('face') ? 15 : 18];
    const part = (name: string) => partOf(BENCH.model, `${panel}.${name}`);
    expect(toInches(part('rail/1').length)).toBeCloseTo(width, 9);
    const tongues = ['rail/1', 'rail/2'].map(name => {
      const end = part(name).solid.filter(
        box => intersect(box, tall(part('post/1').box)) !== undefined,
      );
      return end.reduce((sum, box) => sum + extent(box, 'z'), 0);
    });
    const sum = (tongues[0] ?? 0) + part('post/1').length + (tongues[1] ?? 0);
    expect(toInches(sum)).toBeCloseTo(height, 9);
  }
});

/** The column of space over and under a post. */
function tall(box: Box): Box {
  return { min: { ...box.min, z: -1e4 }, max: { ...box.max, z: 1e4 } };
}

test('seat rails stand with their lower edge on the shoulder of a post, and keep half their depth there', () => {
  const seats = BENCH.model.contacts.filter(
    ({ a, b, normal }) =>
      normal.axis === 'z' &&
      [a, b].some(id => id.startsWith('seat_rail')) &&
      [a, b].some(id => id.includes('post')),
  );
  expect(seats.map(({ patch }) => toInches(patch.min.z))).toEqual(
    Array(4).fill(expect.closeTo(13, 9)),
  );
  for (const { area } of seats) expect(area / inches(1) ** 2).toBeCloseTo(1.5 * 1.5, 9);
  const rail = partOf(BENCH.model, 'seat_rail/1');
  const end = rail.solid.filter(box => toInches(box.min.x) < 18.5);
  expect(end).toHaveLength(1);
  for (const box of end) expectBox(box, inch([18, 0, 13], [19.5, 1.5, 14.75]));
  // Two laps of 1.5 x 1.5 x 1.75 are gone from 48 x 1.5 x 3.5.
  expect(solidVolume(rail.solid) / inches(1) ** 3).toBeCloseTo(252 - 2 * 1.5 * 1.5 * 1.75, 6);
});

test('a panel rail has one notch over each post and no second one for the seat rail inside it', () => {
  const rules = partOf(BENCH.model, 'end_panel/left.rail/2').notches.map(notch => notch.rule);
  expect(rules).toEqual(['tongue', 'tongue']);
  const post = partOf(BENCH.model, 'end_panel/left.post/2');
  expect(post.notches).toMatchObject([{ rule: 'rail_seat', for: 'seat_rail/1' }]);
});

test.each([
  // [rule, places, fasteners in all, through, holds, grain, along the axis]
  ['corner', 40, 4 + 36 * 2, [1.75], [11.5, 17], 'end', 'z'],
  ['rail_hold', 4, 4, [1.75], [1.75], 'side', 'z'],
  ['slat_hold', 26, 52, [1.5], [3.5], 'side', 'z'],
  // Posts 9.75 in high touch below the shoulder.
  ['box_to_end', 4, 12, [1.5], [1.5], 'side', 'x'],
  // 17 in high: ceil(17 / 8) + 1 = 4 screws at each of eight corners.
  ['box_corner', 8, 32, [1.5], [3.5], 'side', 'x'],
  ['bearer_rail', 4, 12, [1.5], [1.5], 'side', 'x'],
  // Feet stand under the tongue of the rail: 1.75 in of it is left there.
  ['front_foot_rail', 2, 4, [1.5], [1.75], 'side', 'z'],
  // 11 in keepers: ceil(11 / 6) + 1 = 3; 8 in keepers as many.
  ['keeper_rail', 20, 60, [1.5], [3.5], 'side', 'z'],
  // 26 infill slats on two keepers each; turned panels are driven along x, the faces along y.
  ['infill_keeper', 52, 104, [0.75], [0.75], 'side', 'x, y'],
] as const)(
  '%s: %d places, %d fasteners',
  (rule, places, fasteners, through, holds, grain, axes) => {
    const joints = BENCH.model.joints.filter(joint => joint.rule === rule);
    expect(joints).toHaveLength(places);
    expect(joints.reduce((sum, joint) => sum + joint.each, 0)).toBe(fasteners);
    const all = (of: (joint: (typeof joints)[number]) => number) =>
      [...new Set(joints.map(joint => Number(toInches(of(joint)).toFixed(6))))].sort(
        (a, b) => a - b,
      );
    expect(all(joint => joint.through)).toEqual([...through]);
    expect(all(joint => joint.holds)).toEqual([...holds]);
    expect(new Set(joints.map(joint => joint.grain))).toEqual(new Set([grain]));
    expect([...new Set(joints.map(joint => joint.drive.axis))].sort().join(', ')).toBe(axes);
  },
);

test('screws from the end panels go outward into the planters', () => {
  const ways = BENCH.model.joints
    .filter(joint => joint.rule === 'box_to_end')
    .map(joint => [joint.from.split('.')[0], joint.into.split('.')[0], joint.drive.toward]);
  expect(new Set(ways.map(way => way.join(' ')))).toEqual(
    new Set(['end_panel/left planter_box/left -1', 'end_panel/right planter_box/right 1']),
  );
});

test('the glued corner of a panel has the tongue and the shoulder of the rail', () => {
  const corner = BENCH.model.joints.find(
    ({ from }) => from === 'planter_box/left.side/outer.rail/1',
  );
  // 3.5 x 1.5 on the end of the post, 1.75 x 1.5 against its side.
  expect(corner && corner.gluedArea / inches(1) ** 2).toBeCloseTo(5.25 + 2.625, 9);
});

test('slats stand at marks that are counted from the left planter and close on the right one', () => {
  const [slats] = BENCH.model.spreads.filter(({ layout }) => layout === 'slats');
  expect(slats).toMatchObject({ spreads: 'seat_slat', within: '', count: 13, ends: 'gap' });
  slats?.marks.forEach((mark, i) => {
    // 5/28 in and i pitches of 3.5 + 5/28 = 103/28 in.
    expect(toInches(mark)).toBeCloseTo((5 + i * 103) / 28, 9);
  });
  const bars = BENCH.model.spreads.filter(({ layout }) => layout === 'bars');
  expect(bars).toHaveLength(10);
  expect(bars.map(({ within }) => within)).toContain('planter_box/right.face/back');
});

test('equal pieces are equal wherever they stand', () => {
  const signatures = (path: string) =>
    new Set(BENCH.model.parts.filter(part => part.path === path).map(signature));
  // All four end posts have one shoulder, through the whole thickness: no left and right hand.
  expect(signatures('end_panel.post').size).toBe(1);
  expect(signatures('planter_box.side.post')).toEqual(signatures('planter_box.face.post'));
  // Upper rails are lower rails turned over, and the deep sides of planters have the same ones.
  expect(signatures('end_panel.rail')).toEqual(signatures('planter_box.side.rail'));
  expect(signatures('end_panel.rail').size).toBe(1);
});

test('what is open and what touches make all surface of all boards', () => {
  const { model } = BENCH;
  const all = surfaceOfParts(model.parts);
  const open = exposed(model);
  const hidden = model.contacts.reduce((sum, contact) => sum + contact.area, 0);
  expect(open.faces + open.endGrain + 2 * hidden).toBeCloseTo(all.faces + all.endGrain, 3);
});

test('later texts may name the whole, its boards and its rows', () => {
  const value = (name: string) => BENCH.scope.find(name);
  const length = (inch: number) => ({
    kind: 'number',
    power: 1,
    value: expect.closeTo(inches(inch), 6),
  });
  expect(value('overall.width')).toEqual(length(84));
  expect(value('overall.depth')).toEqual(length(18));
  expect(value('overall.height')).toEqual(length(22));
  expect(value('end_panel.post.length')).toEqual(length(11.5));
  expect(value('seat_slat.length')).toEqual(length(18));
  expect(value('seat_slat.count')).toEqual({ kind: 'number', power: 0, value: 13 });
  expect(value('planter_box.riser.count')).toEqual({ kind: 'number', power: 0, value: 12 });
  expect(value('slats.gap')).toEqual(length(5 / 28));
  expect(value('frame.width')).toEqual(length(3.5));
  expect(value('pots.count')).toEqual({ kind: 'number', power: 0, value: 1 });
  expect(value('nobody')).toBeUndefined();
});

test('each named size says where it comes from', () => {
  const size = BENCH.sizes.find(({ id }) => id === 'end_height');
  expect(size?.because).toContain('rail_top - foot.thickness');
  expect(size?.because).toContain('16-1/2 in - 1-1/2 in');
  expect(size?.why).toContain('stands on feet');
});

test.each([
  // Metric: 457.2 - 45 slat - 45 foot - 95 = 272.2 mm.
  ['metric sections', { timber: 'metric' }, false, 272.2 / 25.4],
  // Green 2x4 of PS 20: 1-9/16 x 3-9/16 in.
  ['wet lumber', {}, true, 18 - 2 * 1.5625 - 3.5625],
  // 5/4x4 slats are 1 in thick.
  ['light slats', { slat: 'thin' }, false, 18 - 1 - 1.5 - 3.5],
  ['a seat of 19 in', { seat_height: 19 }, false, 12.5],
])('with %s the end posts follow', (_, changed, wet, length) => {
  const { model } = standing(bench(changed, { wet }));
  expect(toInches(partOf(model, 'end_panel/left.post/1').length)).toBeCloseTo(length, 9);
});

test('a long seat gets 2x6 rails and a stretcher, and still stands on shoulders', () => {
  const { model } = standing(bench({ seat_length: 84 }));
  const rail = partOf(model, 'seat_rail/1');
  expect(rail.section.name).toBe('2x6');
  expectBox(rail.box, inch([18, 0, 11], [102, 1.5, 16.5]));
  const shoulder = partOf(model, 'end_panel/left.post/2').solid.filter(box => box.min.y < 1);
  expect(shoulder).toHaveLength(1);
  for (const box of shoulder) expectBox(box, inch([18, 0, 3.25], [19.5, 1.5, 11]));
  expect(toInches(partOf(model, 'stretcher/1').length)).toBeCloseTo(84 - 3, 9);
});

test('a deep seat gets a third rail on posts of its own, between the end panels', () => {
  const { model } = standing(bench({ seat_depth: 26 }));
  expectBox(partOf(model, 'middle_rail/1').box, inch([19.5, 12.25, 13], [64.5, 13.75, 16.5]));
  expectBox(partOf(model, 'middle_post/2').box, inch([63, 11.25, 1.5], [64.5, 14.75, 13]));
  const rules = model.joints.map(joint => joint.rule);
  for (const rule of ['middle_hold', 'middle_post_hold', 'middle_foot_post', 'slat_middle']) {
    expect(rules).toContain(rule);
  }
});

test('two pots of two heights stand on stacks of their own, rims level', () => {
  const { model } = standing(
    bench({
      pots: [
        [8, 6],
        [6.5, 6],
      ],
    }),
  );
  const blocks = model.parts.filter(part => part.id.startsWith('planter_box/left.riser'));
  // 16.25 - 0.5 = 15.75 of room: 7.75 under the first (five layers of 1.5, 1/4 in low), 9.25 under the second
  // (six of 1.5, 1/4 in low; 9.75 would pass it by 1/2 in).
  expect(blocks).toHaveLength(2 * 5 + 2 * 6);
  expect(new Set(blocks.map(block => toInches(block.length).toFixed(6)))).toEqual(
    new Set(['4.000000']),
  );
  // Gaps (15 - 12) / 3 = 1: pot centers 1.5 + 1 + 3 and 1.5 + 2 + 6 + 3.
  const middles = new Set(
    blocks.map(({ box }) => toInches((box.min.y + box.max.y) / 2).toFixed(6)),
  );
  expect(middles).toEqual(new Set(['5.500000', '12.500000']));
});

test('a pot that is too tall for its planter is named, with what is missing', () => {
  const out = bench({
    pots: [
      [10, 8],
      [17, 8],
    ],
  });
  // 16.25 - 0.5 - 17 = -1.25 in.
  expect(out.ok ? [] : out.problems.map(({ kind }) => kind)).toEqual([
    { is: 'stack-too-tall', stack: 'Pot block', item: 2, by: expect.closeTo(inches(1.25), 6) },
  ]);
});

/** Both ends of each range of the size questions. */
const ENDS: readonly (readonly [string, number])[] = [
  ['seat_length', 30],
  ['seat_length', 84],
  ['seat_height', 15],
  ['seat_height', 22],
  ['seat_depth', 15],
  ['seat_depth', 26],
  ['planter_width', 12],
  ['planter_width', 30],
  ['planter_height', 19],
  ['planter_height', 36],
  ['slat_gap', 3 / 16],
  ['slat_gap', 5 / 8],
];

test.each([
  ['inch', 'thick', false],
  ['inch', 'thin', true],
  ['metric', 'thick', false],
  ['metric', 'thin', false],
])(
  'with %s sections and %s slats (wet: %s) it stands at every pair of ends of its ranges',
  (timber, slat, wet) => {
    ENDS.forEach(([one, first], i) => {
      for (const [other, second] of ENDS.slice(i)) {
        const changed: Record<string, Said> = { timber, slat, [other]: second, [one]: first };
        expect(bench(changed, { wet }), JSON.stringify(changed)).toMatchObject({ ok: true });
      }
    });
  },
);

test.each([
  ['smallest', 0],
  ['largest', 1],
])('it stands with all sizes at their %s, whichever way they are meant', (_, end) => {
  const sizes = Object.fromEntries(ENDS.filter((_, i) => i % 2 === end));
  for (const timber of ['inch', 'metric'])
    for (const slat of ['thick', 'thin'])
      for (const planter_means of ['outside', 'inside'])
        for (const wet of [false, true]) {
          const changed = { ...sizes, timber, slat, planter_means };
          expect(bench(changed, { wet }), JSON.stringify(changed)).toMatchObject({ ok: true });
        }
});

test('told the length over all, the seat gets what the planters leave', () => {
  const { model } = standing(bench({ length_means: 'overall', overall_length: 100 }));
  expect(toInches(partOf(model, 'seat_rail/1').length)).toBeCloseTo(100 - 36, 9);
});
