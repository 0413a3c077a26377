import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { speciesNamed } from '../../src/materials/species.js';
import { squareFeet } from '../../src/measure/area.js';
import { MILLIMETERS, SIXTEENTHS } from '../../src/measure/displays.js';
import { psf, toPsf } from '../../src/measure/floor-load.js';
import { inches, toInches } from '../../src/measure/inch.js';
import type { Display } from '../../src/measure/quantities.js';
import { pounds, toPounds } from '../../src/measure/weight.js';
import type { Model } from '../../src/model/part.js';
import type { HoldInputs, HoldRole, HoldRow } from '../../src/plan/hold-row.js';
import { bearingsOf, partsAt } from '../../src/plan/hold-spans.js';
import { holdRows, notChecked } from '../../src/plan/holds.js';
import { makePlan } from '../../src/plan/make-plan.js';
import { usualAnswers } from '../../src/recipe/questions.js';
import { readRecipe } from '../../src/recipe/read.js';
import { referenceRows } from '../support/reference-rows.js';

const TEXT = readFileSync(
  new URL('../../projects/planter-bench/recipe.yaml', import.meta.url),
  'utf8',
);

type Bench = { seat: number; depth: number; slat: 'thick' | 'thin' };

/** The bench with planter ends at a seat length and depth in inches. */
function bench(
  { seat, depth, slat }: Bench,
  display: Display = SIXTEENTHS,
  text: string = TEXT,
): Model {
  const read = readRecipe(text);
  if (!read.ok) throw new Error('the bench has problems');
  const length = (value: number) => ({ kind: 'length', value: inches(value) }) as const;
  const answers = {
    ...usualAnswers(read.recipe),
    seat_length: length(seat),
    seat_depth: length(depth),
    slat: { kind: 'choice', value: slat } as const,
  };
  const made = makePlan(read.recipe, answers, display);
  if (!made.ok) throw new Error('the bench cannot be built');
  return made.plan.model;
}

const ROLES: readonly HoldRole[] = [
  {
    kind: 'seat',
    id: 'seat_rail',
    say: 'Seat rail',
    beams: ['seat_rail', 'middle_rail'],
    on: ['end_panel.post', 'middle_post'],
  },
  {
    kind: 'slats',
    id: 'slat',
    say: 'Seat slat',
    beams: ['seat_slat'],
    on: ['seat_rail', 'middle_rail'],
  },
  {
    kind: 'shelf',
    id: 'plank',
    say: 'Floor plank',
    beams: ['planter_box.plank'],
    on: ['planter_box.bearer', 'planter_box.side.rail'],
  },
  {
    kind: 'screws',
    id: 'bearer',
    say: 'Floor bearers on their screws',
    joint: 'planter_box.bearer_rail',
    carries: 'pots',
  },
  {
    kind: 'screws',
    id: 'slat_push',
    say: 'A slat pushed sideways',
    joint: 'slat_hold',
    carries: 'push',
  },
  {
    kind: 'stand',
    id: 'bench',
    say: 'Bench',
    parts: ['end_panel', 'seat_rail', 'seat_slat', 'stretcher', 'front_foot', 'back_foot'],
    carries: 'people',
    seat: ['seat_slat'],
  },
  {
    kind: 'stand',
    id: 'planter',
    say: 'Planters',
    parts: ['planter_box'],
    carries: 'pots',
    seat: [],
  },
];

function wood(name: string) {
  const found = speciesNamed(name);
  if (found === undefined) throw new Error(`${name} is missing`);
  return found;
}

function inputs(told: Partial<HoldInputs> = {}): HoldInputs {
  return {
    display: SIXTEENTHS,
    species: wood('redwood'),
    wet: true,
    roles: ROLES,
    pots: { planted: pounds(120), soaked: pounds(200) },
    floor: { kind: 'raised' },
    ...told,
  };
}

function row(rows: readonly HoldRow[], id: string): HoldRow {
  const found = rows.find(it => it.id === id);
  if (found === undefined) throw new Error(`${id} is not among ${rows.map(it => it.id)}`);
  return found;
}

const USUAL = bench({ seat: 48, depth: 18, slat: 'thick' });
const LONG = bench({ seat: 84, depth: 24, slat: 'thick' });
const THIN = bench({ seat: 48, depth: 17.5, slat: 'thin' });
const DEEP = bench({ seat: 84, depth: 26, slat: 'thin' });

describe('spans are taken from the boards in space', () => {
  // The seat rail of 48 in stands 1-1/2 in on each post: 45 in clear; 84 in: 81 in. Slats of 18, 24 and
  // 17-1/2 in lie 1-1/2 in on each rail: 15, 21 and 14-1/2 in clear.
  test.each([
    ['48 in bench', USUAL, 'seat_rail', ['end_panel.post'], 45],
    ['84 in bench', LONG, 'seat_rail', ['end_panel.post'], 81],
    ['slats 18 in deep', USUAL, 'seat_slat', ['seat_rail'], 15],
    ['slats 24 in deep', LONG, 'seat_slat', ['seat_rail'], 21],
    ['slats 17-1/2 in deep', THIN, 'seat_slat', ['seat_rail'], 14.5],
    // 26 in: from rail face to middle rail face, (26 - 3 x 1-1/2) / 2.
    ['slats over three rails', DEEP, 'seat_slat', ['seat_rail', 'middle_rail'], 10.75],
  ] as const)('%s: %s', (_name, model, path, on, clear) => {
    const [beam] = partsAt(model, [path]);
    const bearings = beam === undefined ? undefined : bearingsOf(model, beam, on);
    expect(toInches(bearings?.clear ?? 0)).toBeCloseTo(clear, 6);
  });

  test('a board that lies on nothing has no bearings', () => {
    const [slat] = partsAt(USUAL, ['seat_slat']);
    expect(slat && bearingsOf(USUAL, slat, ['end_panel.post'])).toBeUndefined();
  });
});

describe('the bench is judged as a woodworker would', () => {
  const verdicts = (model: Model) =>
    Object.fromEntries(holdRows(model, inputs()).map(it => [it.id, it.verdict]));

  test('48 in between 2x4 rails, 2x4 slats: everything holds; the floor is a question', () => {
    expect(verdicts(USUAL)).toEqual({
      'seat_rail/person': 'holds by this sum',
      'seat_rail/row': 'holds by this sum',
      'seat_rail/perch': 'holds by this sum',
      'seat_rail/notch': 'holds by this sum',
      'slat/seated': 'holds by this sum',
      'slat/foot': 'holds by this sum',
      'plank/pots': 'holds by this sum',
      'bearer/screws': 'holds by this sum',
      'slat_push/screws': 'holds by this sum',
      'bench/tip': 'holds by this sum',
      'bench/feet': 'holds by this sum',
      'planter/feet': 'holds by this sum',
      'floor/spread': 'look again',
    });
  });

  test('84 in between 2x6 rails holds; four on the very edge and a rocking bench ask for a look', () => {
    expect(verdicts(LONG)).toMatchObject({
      'seat_rail/person': 'holds by this sum',
      'seat_rail/row': 'holds by this sum',
      'seat_rail/perch': 'look again',
      'seat_rail/notch': 'holds by this sum',
      'slat/seated': 'holds by this sum',
      'slat/foot': 'holds by this sum',
      'bench/feet': 'look again',
    });
  });

  test('5/4 slats hold over 16 in from rail to rail', () => {
    expect(verdicts(THIN)).toMatchObject({
      'slat/seated': 'holds by this sum',
      'slat/foot': 'holds by this sum',
    });
  });

  test('a third rail carries half of the row', () => {
    const third = row(holdRows(DEEP, inputs()), 'seat_rail/row');
    expect(third.sum).toContain('4 x 250 lb, shared 0.25, 0.5, 0.25');
    expect(third.verdict).toBe('holds by this sum');
  });

  // 2x4 rails in place of 2x6 under 84 in would carry 250 x 82.5 / 4 / 3.0625 = 1684 psi of 1087.
  test('rails too small for their span do not hold, and the row says what would', () => {
    const small: Model = {
      ...LONG,
      parts: LONG.parts.map(part => {
        if (part.path !== 'seat_rail') return part;
        const box = { ...part.box, max: { ...part.box.max, z: part.box.min.z + inches(3.5) } };
        return { ...part, box, section: { ...part.section, width: inches(3.5) }, notches: [] };
      }),
    };
    const person = row(holdRows(small, inputs()), 'seat_rail/person');
    expect(person.verdict).toBe('does not hold by this sum');
    expect(person.better).toMatch(
      /^Bring the supports within 4\d.* in, or use a 2x6 that really is 5-1\/2 in wide\.$/,
    );
  });
});

describe('what the sums find out about the bench', () => {
  // By hand: redwood 2x4, 250 x 57.6 / 4 / 3.0625 = 1175 psi of 1087.5 at 60 in.
  test('2x4 rails do not hold one heavy person at 60 in, 2x6 would', () => {
    const sizes = { seat: 60, depth: 18, slat: 'thick' } as const;
    const slender = TEXT.replaceAll('seat > 52 in', 'seat > 60 in');
    const person = row(holdRows(bench(sizes, SIXTEENTHS, slender), inputs()), 'seat_rail/person');
    const asDrawn = row(holdRows(bench(sizes), inputs()), 'seat_rail/person');
    expect(asDrawn.verdict).toBe('holds by this sum');
    expect(person.verdict).toBe('does not hold by this sum');
    expect(person.value.because).toContain('108% of its bending strength');
    expect(person.better).toContain('use a 2x6');
  });

  test('a weaker wood is told from a stronger one', () => {
    const verdict = (name: string) =>
      row(holdRows(USUAL, inputs({ species: wood(name) })), 'seat_rail/person').verdict;
    expect(verdict('northern-white-cedar')).toBe('does not hold by this sum');
    expect(verdict('western-redcedar')).toBe('holds by this sum');
    expect(verdict('douglas-fir')).toBe('holds by this sum');
    expect(verdict('ipe')).toBe('holds by this sum');
  });
});

describe('sums by hand', () => {
  const rows = holdRows(USUAL, inputs());

  // Redwood No. 2, open grain, wet: F'b 1087.5, Fc across 425 x 0.67 = 284.75 psi. 250 lb need 250 /
  // (1.5 x 284.75) = 0.585 in of bearing: span 45.585 in. M = 250 x 45.585 / 4 = 2849 lb in, over 3.0625
  // in3 930.3 psi: 250 x 1087.5 / 930.3 = 292.2 lb.
  // A slat by shear: 2/3 x 155.2 x 3.5 x 1.5 = 543.2 lb beside the rail.
  // Every place taken: 500 / 2 x 45 / 48 = 234.4 lb spread; by bending 8 x 1087.5 x 3.0625 / 45.549 = 584.9.
  // A bearer's 3 No. 10 x 2-3/4 in: yield 89 lb, bite 1-1/4 in of 1.9: 0.658; x 0.7 wet x 0.9 for good.
  test.each(
    referenceRows('NDS sums worked by hand for the bench', [
      ['seat_rail/person', 292.2],
      ['slat/foot', 543.2],
      ['seat_rail/row', 584.9],
      ['bearer/screws', 3 * 88.55 * 0.6579 * 0.7 * 0.9],
    ] as const),
  )('%s carries %d lb', (id, carries) => {
    expect(toPounds(row(rows, id).value.value)).toBeCloseTo(carries, 0);
  });

  // The notch is 1-3/4 of 3-1/2 in on the pressed edge, wholly over the post: 2/3 x 155.2 x 1.5 x 3.5 =
  // 543 lb; the 1-3/4 in beside it alone 271.6 lb; the quarter would be 7/8 in.
  test('the notch on top of the seat rail costs nothing, and does not have to be relied on', () => {
    const notch = row(rows, 'seat_rail/notch');
    expect(toPounds(notch.value.value)).toBeCloseTo(543.2, 0);
    expect(notch.sum).toContain('1-3/4 in deep of 3-1/2 in on the upper edge');
    expect(notch.sum).toContain('alone 272 lb');
    expect(notch.sum).toContain('quarter of the depth, 7/8 in');
  });

  // The same notch from below: 2/3 x 155.2 x 1.5 x 1.75 / 4 = 67.9 lb.
  test('the same notch from below does not hold', () => {
    const turned: Model = {
      ...USUAL,
      parts: USUAL.parts.map(part =>
        part.path === 'seat_rail'
          ? {
              ...part,
              notches: part.notches.map(notch => ({
                ...notch,
                box: {
                  min: { ...notch.box.min, z: part.box.min.z },
                  max: { ...notch.box.max, z: part.box.min.z + inches(1.75) },
                },
              })),
            }
          : part,
      ),
    };
    const notch = row(holdRows(turned, inputs()), 'seat_rail/notch');
    expect(toPounds(notch.value.value)).toBeCloseTo(67.9, 0);
    expect(notch.verdict).toBe('does not hold by this sum');
    expect(notch.better).toContain('on top');
  });

  // Seat and planters cover 84 x 18 in = 10.5 sq ft.
  test('the floor is told what it carries, soaked and with people', () => {
    const floor = row(rows, 'floor/spread');
    const weight = Number(/([\d.]+) lb soaked/.exec(floor.sum)?.[1] ?? 0);
    expect(toPsf(floor.value.value)).toBeCloseTo((weight + 500) / 10.5, 0);
    expect(floor.limit).toContain('40 lb/sq ft');
    expect(floor.better).toContain('licensed engineer');
  });
});

describe('who decides about the floor', () => {
  test('on the ground there is no floor sum', () => {
    const rows = holdRows(USUAL, inputs({ floor: { kind: 'ground' } }));
    expect(rows.filter(it => it.id.startsWith('floor'))).toEqual([]);
  });

  test('an owner who allows more is believed, and named', () => {
    const rows = holdRows(USUAL, inputs({ floor: { kind: 'raised', limit: psf(100) } }));
    const floor = row(rows, 'floor/spread');
    expect(floor.verdict).toBe('holds by this sum');
    expect(floor.limit).toBe('100 lb/sq ft, as you were told');
  });

  // Field case F37: 100 sq ft at 40 lb are 4000 lb, half kept for people.
  test.each([
    [100, 'holds by this sum'],
    [30, 'look again'],
    [12, 'does not hold by this sum'],
  ] as const)('on a deck of %i sq ft: %s', (area, verdict) => {
    const floor = { kind: 'raised', area: squareFeet(area) } as const;
    expect(row(holdRows(USUAL, inputs({ floor })), 'floor/deck').verdict).toBe(verdict);
  });

  test('what is not checked is said, and more of it off the ground', () => {
    const ground = notChecked({ floor: { kind: 'ground' } });
    const raised = notChecked({ floor: { kind: 'raised' } });
    expect(ground.join(' ')).toMatch(/Knots.*Racking.*wind.*licensed engineer/s);
    expect(raised.join(' ')).toMatch(/building code and a licensed engineer.*railing/s);
    expect(raised.length).toBeGreaterThan(ground.length);
  });
});

describe('other woods and units', () => {
  test('no row calls anything safe, and every row has a sum and a source', () => {
    for (const name of ['redwood', 'western-redcedar', 'scots-pine', 'ipe', 'white-oak']) {
      for (const it of holdRows(USUAL, inputs({ species: wood(name) }))) {
        expect(`${it.say} ${it.sum} ${it.better}`, it.id).not.toMatch(/\bsafe/i);
        expect(it.sum.length, it.id).toBeGreaterThan(20);
        expect(it.source.length, it.id).toBeGreaterThan(5);
        expect(it.better === '', it.id).toBe(it.verdict === 'holds by this sum');
      }
    }
  });

  test('values that were not looked up say so', () => {
    expect(row(holdRows(USUAL, inputs()), 'seat_rail/person').source).toContain('not re-checked');
  });

  test('inch and metric give one answer', () => {
    const inch = holdRows(USUAL, inputs());
    const metric = holdRows(USUAL, inputs({ display: MILLIMETERS }));
    expect(metric.map(it => [it.id, it.value.value, it.verdict])).toEqual(
      inch.map(it => [it.id, it.value.value, it.verdict]),
    );
  });

  test('a role that picks nothing gives no row', () => {
    const roles: readonly HoldRole[] = [
      { kind: 'seat', id: 'none', say: 'None', beams: ['no_such'], on: ['end_panel.post'] },
      { kind: 'slats', id: 'none', say: 'None', beams: ['no_such'], on: ['seat_rail'] },
      { kind: 'shelf', id: 'none', say: 'None', beams: ['no_such'], on: ['seat_rail'] },
      { kind: 'screws', id: 'none', say: 'None', joint: 'no_such', carries: 'push' },
      { kind: 'stand', id: 'none', say: 'None', parts: ['no_such'], carries: 'pots', seat: [] },
    ];
    expect(holdRows(USUAL, inputs({ roles, floor: { kind: 'ground' } }))).toEqual([]);
  });
});

describe('a seat that reaches past its feet', () => {
  // The bench with its front feet taken 6 in back: everybody who sits on the front edge is 6 in outside.
  const tucked: Model = {
    ...USUAL,
    parts: USUAL.parts.map(part => {
      if (part.path !== 'front_foot') return part;
      const { min, max } = part.box;
      const box = {
        min: { ...min, y: min.y + inches(6) },
        max: { ...max, y: max.y + inches(6) },
      };
      return { ...part, box, solid: [box] };
    }),
  };

  test('tips when people sit on its edge', () => {
    const tip = row(holdRows(tucked, inputs()), 'bench/tip');
    expect(toInches(tip.value.value)).toBeCloseTo(6, 6);
    expect(tip.verdict).toBe('does not hold by this sum');
    expect(tip.better).toContain('feet');
  });
});
