import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inches } from '../../src/measure/inch.js';
import { volume } from '../../src/model/box.js';
import { clashesOf } from '../../src/model/clashes.js';
import { contactsOf } from '../../src/model/contacts.js';
import { exposed, exposedByPart, surfaceOfParts } from '../../src/model/exposed.js';
import { AXES, type Axis, type Part } from '../../src/model/part.js';
import { cutNotches, solidOf, solidVolume, surfaceOf } from '../../src/model/solid.js';
import { partWeight, weightOf } from '../../src/model/weight.js';
import { corners, cubes, part, smallBoxes } from './boards.js';

const SQ_IN = inches(1) ** 2;

const inch = (min: readonly number[], max: readonly number[]) =>
  corners(min.map(inches), max.map(inches));

test('a 2x4 of 10 in has 100 sq in of faces and 10-1/2 sq in of end grain', () => {
  const surface = surfaceOf([inch([0, 0, 0], [10, 1.5, 3.5])], 'x');
  expect(surface.faces / SQ_IN).toBeCloseTo(2 * (3.5 + 1.5) * 10, 9);
  expect(surface.endGrain / SQ_IN).toBeCloseTo(2 * 3.5 * 1.5, 9);
});

test('a half-depth notch in an edge loses its cheeks and keeps its shoulders as end grain', () => {
  // 10 in of 2x4 with 2 in x 1-3/4 in out of the middle of its upper edge. The two cheeks that the notch
  // opens in the wide faces are lost: 2 x 2 x 1.75 = 7 sq in. Its floor makes up for the edge that is
  // gone. Two shoulders of 1.5 x 1.75 in are new end grain: 5.25 sq in.
  const solid = solidOf(inch([0, 0, 0], [10, 1.5, 3.5]), [
    { rule: 'n', for: 'o', box: inch([4, 0, 1.75], [6, 1.5, 3.5]) },
  ]);
  const surface = surfaceOf(solid, 'x');
  expect(surface.faces / SQ_IN).toBeCloseTo(100 - 7, 9);
  expect(surface.endGrain / SQ_IN).toBeCloseTo(10.5 + 5.25, 9);
  expect(solidVolume(solid)).toBeCloseTo(inches(1) ** 3 * (52.5 - 2 * 1.75 * 1.5), 4);
});

test('a notch inside another is not cut again, and of two equal ones one stays', () => {
  const big = { rule: 'big', for: 'a', box: corners([0, 0, 0], [4, 4, 4]) };
  const small = { rule: 'small', for: 'b', box: corners([0, 0, 0], [2, 4, 4]) };
  expect(cutNotches([small, big])).toEqual([big]);
  expect(cutNotches([big, { ...big, rule: 'again' }])).toEqual([big]);
});

/** Six boards on a small grid, each giving way to all before it: they touch a lot and never overlap. */
const stacks: fc.Arbitrary<Part[]> = fc
  .array(fc.record({ box: smallBoxes, runs: fc.constantFrom<Axis>('x', 'y', 'z') }), {
    minLength: 2,
    maxLength: 6,
  })
  .map(rows =>
    rows.map(({ box, runs }, i) =>
      part(`p${i}`, box, { runs, notches: rows.slice(0, i).map(row => row.box) }),
    ),
  );

/** Unit faces between cubes of different parts, counted one by one: the slow and plain way. */
function countedContacts(parts: readonly Part[]): Map<string, number> {
  const owner = new Map<string, string>();
  for (const one of parts) for (const cube of cubes(one.solid)) owner.set(cube, one.id);
  const areas = new Map<string, number>();
  for (const [cube, id] of owner) {
    const at = cube.split(',').map(Number);
    for (const axis of [0, 1, 2]) {
      const beside = owner.get(at.map((c, i) => (i === axis ? c + 1 : c)).join());
      if (beside === undefined || beside === id) continue;
      const key = [...[id, beside].sort(), axis].join(' ');
      areas.set(key, (areas.get(key) ?? 0) + 1);
    }
  }
  return areas;
}

test('contacts are exactly the faces that unit cubes of different boards share', () => {
  fc.assert(
    fc.property(stacks, parts => {
      const areas = new Map<string, number>();
      for (const contact of contactsOf(parts)) {
        const key = `${contact.a} ${contact.b} ${AXES.indexOf(contact.normal.axis)}`;
        areas.set(key, (areas.get(key) ?? 0) + contact.area);
      }
      expect([...areas].sort()).toEqual([...countedContacts(parts)].sort());
    }),
  );
});

test('turning the list of parts around turns normals around and changes no area', () => {
  fc.assert(
    fc.property(stacks, parts => {
      const there = contactsOf(parts).map(
        c => `${c.a} ${c.b} ${c.normal.axis}${c.normal.toward} ${c.area}`,
      );
      const back = contactsOf(parts.toReversed()).map(
        c => `${c.b} ${c.a} ${c.normal.axis}${-c.normal.toward} ${c.area}`,
      );
      const total = (lines: readonly string[]) => {
        const sums = new Map<string, number>();
        for (const line of lines) {
          const [a, b, normal, area] = line.split(' ');
          const key = `${a} ${b} ${normal}`;
          sums.set(key, (sums.get(key) ?? 0) + Number(area));
        }
        return [...sums].sort();
      };
      expect(total(back)).toEqual(total(there));
    }),
  );
});

test('what is open and what is hidden, counted twice, make all surface of all boards', () => {
  fc.assert(
    fc.property(stacks, parts => {
      const contacts = contactsOf(parts);
      const open = exposed({ parts, contacts });
      const all = surfaceOfParts(parts);
      const hidden = contacts.reduce((sum, contact) => sum + contact.area, 0);
      expect(open.faces + open.endGrain + 2 * hidden).toBeCloseTo(all.faces + all.endGrain, 6);
    }),
  );
});

test('the open surface is the one that the joined lump of cubes has', () => {
  fc.assert(
    fc.property(stacks, parts => {
      const lump = new Set(parts.flatMap(one => [...cubes(one.solid)]));
      let faces = 0;
      for (const cube of lump) {
        const at = cube.split(',').map(Number);
        for (const axis of [0, 1, 2])
          for (const step of [-1, 1]) {
            if (!lump.has(at.map((c, i) => (i === axis ? c + step : c)).join())) faces += 1;
          }
      }
      const open = exposed({ parts, contacts: contactsOf(parts) });
      expect(open.faces + open.endGrain).toBeCloseTo(faces, 6);
    }),
  );
});

test('each part on its own adds up to the whole', () => {
  const parts = [
    part('rail', corners([0, 0, 0], [10, 2, 4])),
    part('post', corners([0, 0, 4], [2, 2, 20]), { runs: 'z' }),
  ];
  const open = exposedByPart({ parts, contacts: contactsOf(parts) });
  // The post stands with its end (2 x 2) on the rail's edge.
  expect(open.get('post')).toEqual({ faces: 4 * 2 * 16, endGrain: 2 * 4 - 4 });
  expect(open.get('rail')).toEqual({ faces: 2 * 10 * 2 + 2 * 10 * 4 - 4, endGrain: 2 * 8 });
});

test('boards clash exactly where they fill the same cubes', () => {
  fc.assert(
    fc.property(fc.array(smallBoxes, { minLength: 2, maxLength: 6 }), boxes => {
      const parts = boxes.map((box, i) => part(`p${i}`, box));
      const expected: string[] = [];
      parts.forEach((a, i) => {
        for (const b of parts.slice(i + 1)) {
          const filled = cubes(a.solid);
          const common = [...cubes(b.solid)].filter(cube => filled.has(cube)).length;
          if (common > 0) expected.push(`${a.id} ${b.id} ${common}`);
        }
      });
      const found = clashesOf(parts).map(clash => `${clash.a} ${clash.b} ${clash.volume}`);
      expect(found).toEqual(expected);
    }),
  );
});

test('boards that give way to each other do not clash', () => {
  fc.assert(
    fc.property(stacks, parts => {
      expect(clashesOf(parts)).toEqual([]);
    }),
  );
});

test('two 2x4s that cross on edge share 1-1/2 x 1-1/2 x 3-1/2 in', () => {
  const parts = [
    part('rail', inch([0, 4, 0], [10, 5.5, 3.5])),
    part('bearer', inch([4, 0, 0], [5.5, 10, 3.5]), { runs: 'y', face: 'x' }),
  ];
  const [clash] = clashesOf(parts);
  expect(clash).toMatchObject({ a: 'rail', b: 'bearer', where: inch([4, 4, 0], [5.5, 5.5, 3.5]) });
  expect(clash && clash.volume / inches(1) ** 3).toBeCloseTo(7.875, 9);
});

test('a liter of wood at 450 kg per cubic meter weighs 0.45 kg, without what is notched away', () => {
  const board = part('b', corners([0, 0, 0], [1000, 20, 50]));
  expect(partWeight(board, 450)).toBeCloseTo(0.45, 12);
  const notched = part('n', corners([0, 0, 0], [1000, 20, 50]), {
    notches: [corners([0, 0, 0], [500, 20, 50])],
  });
  expect(weightOf({ parts: [board, notched] }, one => (one.id === 'b' ? 450 : 900))).toBeCloseTo(
    0.9,
    12,
  );
  expect(volume(board.box)).toBe(1e6);
});
