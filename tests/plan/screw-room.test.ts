import { describe, expect, test } from 'vitest';
import { SIXTEENTHS } from '../../src/measure/displays.js';
import { inches } from '../../src/measure/inch.js';
import type { FastenerRow } from '../../src/plan/plan.js';
import { placesIn } from '../../src/plan/screw-lines.js';
import type { Answers } from '../../src/recipe/values.js';
import { planOf, project } from '../support/projects.js';

const BENCH = project('planter-bench');
const choice = (value: string) => ({ kind: 'choice', value }) as const;

function rows(joint: string, answers: Answers = {}): readonly FastenerRow[] {
  return planOf(BENCH, { dryness: choice('kiln-dried'), ...answers }).screws.filter(
    row => row.joint === joint,
  );
}

const where = (joint: string, answers?: Answers) => rows(joint, answers).flatMap(row => row.where);

describe('where the screws stand', () => {
  // Source: NDS commentary Table C12.1.5.7, from memory, bored first: a No. 10 of 0.19 in stands 2.5
  // diameters, 0.475 in, from an edge and 5 diameters, 0.95 in, from an end that is pushed, 10 diameters,
  // 1.9 in, apart along the grain: 0.95 and 3.5 - 0.475 = 3.025 in.
  test('two in a tongue over a post, along its grain', () => {
    expect(where('Rail over post')).toContain(
      '2 screws on 3-1/2 in x 1-1/2 in: 15/16 in and 3 in from the end, in the middle of its width',
    );
  });

  // By hand: equal shares of a 3-1/2 in slat, 7/8 and 2-5/8 in; (0.95 + 1.5 - 0.475) / 2 = 0.99 in.
  test('two side by side where a slat lies on a rail', () => {
    expect(where('Slat to seat rail')).toContain(
      '2 screws on 1-1/2 in x 3-1/2 in: 1 in from the end, 7/8 in and 2-5/8 in from one edge',
    );
  });

  // Common practice: a long overlap is held along its length, to and fro across it.
  test('a long overlap is held along its length', () => {
    expect(where('Bearer to side').join()).toMatch(
      /1\/2 in, 5-1\/2 in and 10-1\/2 in from one end of the overlap, in turn 7\/8 in and 2-5\/8 in/,
    );
  });

  // By hand: a foot is 3-1/2 in long; two No. 10 want 0.95 + 1.9 + 0.95 = 3.8 in, two No. 8 of 0.164 in want
  // 0.82 + 1.64 + 0.82 = 3.28 in.
  test('a foot is too short for two No. 10 and takes two No. 8', () => {
    const [row] = rows('Foot to side');
    expect(row?.what).toBe('No. 8 x 3 in');
    expect(row?.notes.join()).toContain('a lighter screw');
    expect(rows('Slat to seat rail')[0]?.what).toMatch(/^No. 10/);
  });

  test('all screws of the bench fit, short or long', () => {
    for (const seat of [30, 48, 66, 84]) {
      const { screws } = planOf(BENCH, { seat_length: { kind: 'length', value: inches(seat) } });
      for (const { joint, where: places, noRoom } of screws.filter(it => it.kind === 'screw')) {
        expect(places.length, `${joint}, seat ${seat} in`).toBeGreaterThan(0);
        expect(noRoom).toEqual([]);
      }
    }
  });

  // By hand: on 1-1/2 x 1-1/2 in there is room from 0.475 to 1.025 in across and from 0.95 to 1.025 in along: one.
  test('four screws on a crossing of two edges do not fit, and it is said why', () => {
    const crossing = { length: inches(1.5), width: inches(1.5), ends: 'one' } as const;
    const found = placesIn(crossing, { each: 4, gauge: 10 }, SIXTEENTHS);
    expect(found).toMatchObject({ kind: 'no-room', fits: 1 });
  });
});

describe('boards that work between their screws', () => {
  const notes = (species: string, dryness: string) =>
    rows('Slat to seat rail', { species: choice(species), dryness: choice(dryness) })
      .flatMap(row => row.notes)
      .join();

  // Source: USDA Wood Handbook Table 13-5: white oak 0.00365, western redcedar 0.00234 for each percent of
  // moisture; over 7/8 in from the middle, 12 to 19 %, oak moves 0.022 in and redcedar 0.014 in.
  test('oak wants a wider hole where redcedar does not', () => {
    const coast = { climate: choice('wet-coast') };
    const of = (species: string) =>
      rows('Slat to seat rail', { ...coast, species: choice(species) })
        .flatMap(row => row.notes)
        .join();
    expect(of('white-oak')).toContain('bore the clearance hole');
    expect(of('western-redcedar')).not.toContain('bore the clearance hole');
  });

  test('green boards want it, being set far from where they will be', () => {
    expect(notes('western-redcedar', 'green')).toContain('bore the clearance hole');
  });

  // Boards whose grain runs alike swell alike.
  test('a bearer along its side rail works with it', () => {
    const row = rows('Bearer to side', { species: choice('white-oak'), dryness: choice('green') });
    expect(row.flatMap(it => it.notes).join()).not.toContain('works across');
  });
});
