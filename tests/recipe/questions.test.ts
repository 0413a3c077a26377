import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SAWS } from '../../src/materials/saws.js';
import { SPECIES } from '../../src/materials/species.js';
import { MILLIMETERS, SIXTEENTHS } from '../../src/measure/displays.js';
import {
  answerScope,
  answerText,
  askedQuestions,
  parseAnswer,
  questionsOf,
  usualAnswers,
} from '../../src/recipe/questions.js';
import { rangeCorners } from '../../src/recipe/range-corners.js';
import type { Question } from '../../src/recipe/recipe.js';
import type { Answer } from '../../src/recipe/values.js';
import { recipeOf, stool } from './support/recipes.js';

const ASKING = recipeOf(
  stool([
    '    look:\n',
    `    means:
      kind: choice
      say: Which length is it?
      usual: seat
      options:
        seat: { say: Clear seat }
        overall: { say: Outside to outside }
    overall:
      kind: length
      say: How long over all?
      usual: = seat + 6 in
      from: = seat
      to: 40 in
      when: = means = "overall"
    slats: { kind: count, say: How many slats?, usual: 5, from: 3, to: 9 }
    armrest: { kind: yes, say: Armrests?, usual: no }
    name: { kind: text, say: Whose is it? }
    pots:
      kind: items
      say: Which pots?
      fields: [height, diameter]
      usual: 11-1/2 in x 10-3/4 in, 9in x 10in
    species: standard
    saw: standard
    offers: standard
    on_hand: standard
    people: standard
    session_hours: standard
    look:
`,
  ]),
);

const SCOPE = answerScope(ASKING, {});

function question(id: string): Question {
  const found = questionsOf(ASKING).find(known => known.id === id);
  if (found === undefined) throw new Error(`no question ${id}`);
  return found;
}

function read(id: string, text: string, display = SIXTEENTHS): Answer['value'] | string {
  const answer = parseAnswer(question(id), text, { display, scope: SCOPE });
  return answer.ok ? answer.value.value : `${answer.problem} ${answer.hint}`.trim();
}

// Lengths: 1 in is 25.4 mm exactly, 1 ft 304.8 mm.
describe('an answer is taken as people write it', () => {
  test.each([
    ['seat', '18 in', 457.2],
    ['seat', '18', 457.2],
    ['seat', '1\'6"', 457.2],
    ['seat', '24 in', 609.6],
    ['seat', '500 mm', 500],
    ['slats', ' 7 ', 7],
    ['armrest', 'Yes', true],
    ['armrest', 'n', false],
    ['name', '  Ann\u001b[31m & Bo ', 'Ann & Bo'],
    ['means', 'overall', 'overall'],
    ['means', 'outside to outside', 'overall'],
    ['species', 'Western red-cedar', 'western-redcedar'],
    ['people', 'ALONE', 'alone'],
    ['session_hours', '2', 2],
    ['session_hours', '2,5', 2.5],
    ['session_hours', '90 min', 1.5],
    ['session_hours', '1:30', 1.5],
  ])('%s: %s', (id, text, value) => {
    expect(read(id, text)).toEqual(value);
  });

  test('a bare number is mm for who works in mm', () => {
    expect(read('seat', '500', MILLIMETERS)).toBe(500);
  });

  test('things with their sizes, in the order of the fields', () => {
    const pots = [
      { height: 292.1, diameter: 273.05 },
      { height: 228.6, diameter: 254 },
    ];
    expect(read('pots', '11-1/2 in x 10-3/4 in, 9in x 10in')).toEqual(pots);
    expect(read('pots', '11 1/2 x 10 3/4; 9" × 10"')).toEqual(pots);
    expect(read('pots', '0,3 m x 0,25 m, 20 cm x 1,5 cm')).toEqual([
      { height: 300, diameter: 250 },
      { height: 200, diameter: 15 },
    ]);
  });

  test('store lengths with or without their price', () => {
    expect(read('offers', '2x4 8ft @ 7.48, 2 x 4 10 ft @ $9.98; 1x3 6ft')).toEqual([
      { section: '2x4', length: 2438.4, cents: 748 },
      { section: '2x4', length: 3048, cents: 998 },
      { section: '1x3', length: 1828.8 },
    ]);
    expect(read('offers', '45x95 2,4 m @ 6,20')).toEqual([
      { section: '45x95', length: 2400, cents: 620 },
    ]);
  });

  test('boards that are there, and how many of each', () => {
    expect(read('on_hand', '2x4 52in *2, 5/4x4 6 ft')).toEqual([
      { section: '2x4', length: 1320.8, count: 2 },
      { section: '5/4x4', length: 1828.8, count: 1 },
    ]);
  });

  test.each(['', 'none', ' - '])('"%s" is an empty list', text => {
    for (const id of ['pots', 'offers', 'on_hand']) expect(read(id, text)).toEqual([]);
  });
});

describe('an answer that cannot be is refused with what could', () => {
  test.each([
    ['seat', '20ft', '20 ft is more than 2 ft (24 in). From 12 in to 24 in.'],
    ['seat', '11 in', '11 in is less than 1 ft (12 in). From 12 in to 24 in.'],
    ['seat', '24-1/16 in', '24-1/16 in is more than 2 ft (24 in). From 12 in to 24 in.'],
    [
      'seat',
      'long',
      '"long" is not a length: it has no number. Write a number and a unit, such as 46-1/2 in or 5 ft 3 in.',
    ],
    ['overall', '17 in', '17 in is less than 18 in. From 18 in to 40 in.'],
    ['slats', '10', '10 is more than 9. From 3 to 9.'],
    ['slats', '3.5', '"3.5" is not a whole number. Write a number such as 2.'],
    ['armrest', 'maybe', '"maybe" is not yes or no. Write yes or no.'],
    [
      'means',
      'overal',
      '"overal" is none of the choices. Did you mean overall (Outside to outside)? It can be seat, overall.',
    ],
    ['means', '', '"" is none of the choices. It can be seat, overall.'],
    ['session_hours', '12', '12 h is more than 10 h. From 1 h to 10 h.'],
    ['session_hours', '20 min', '0.33 h is less than 1 h. From 1 h to 10 h.'],
    [
      'pots',
      '11 in',
      '"11 in" has one size, not 2. Write height x diameter of each, such as 11-1/2 in x 10-3/4 in.',
    ],
    ['pots', '11 in x 0', 'In "11 in x 0" the diameter is zero. Measure it and write it.'],
    [
      'offers',
      '2x5 8ft',
      'No section is sold as "2x5". There are 2x2, 2x3, 2x4, 2x6, 2x8, 2x10, 2x12.',
    ],
    [
      'offers',
      '2x4 8',
      'The length in "2x4 8" has no unit. Write section, length and price, such as 2x4 8 ft @ 7.48.',
    ],
    [
      'offers',
      '2x4 8ft @ free',
      '"free" is not a price. Write the price with at most two decimals, such as 7.48.',
    ],
    [
      'offers',
      '2x4 8ft @ 7 2x4 10ft @ 9',
      '"2x4 8ft @ 7 2x4 10ft @ 9" has two prices. Put a comma and a space between boards.',
    ],
    [
      'offers',
      'eight feet',
      '"eight feet" is not a board. Write section, length and price, such as 2x4 8 ft @ 7.48.',
    ],
    [
      'on_hand',
      '2x4 52in *0',
      '"0" boards is not from 1 to 500. Write section, length and how many, such as 2x4 52 in *2.',
    ],
  ])('%s: %s', (id, text, said) => {
    expect(read(id, text)).toBe(said);
  });

  test('in mm the range is told in mm', () => {
    expect(read('seat', '2 m', MILLIMETERS)).toBe(
      '2000 mm is more than 609.6 mm. From 304.8 mm to 609.6 mm.',
    );
  });
});

describe('an answer written out', () => {
  test.each([
    ['seat', '17-1/2 in', '17-1/2 in'],
    ['means', 'overall', 'Outside to outside'],
    ['armrest', 'y', 'yes'],
    ['session_hours', '90 min', '1.5 h'],
    ['pots', '9in x 10in', '9 in x 10 in'],
    ['offers', '2x4 8ft @ 7.5, 1x3 92-5/8in', '2x4 8 ft @ 7.50, 1x3 92-5/8 in'],
    ['on_hand', '2x4 52in *2, 1x3 6ft', '2x4 52 in *2, 1x3 6 ft'],
    ['on_hand', '', 'none'],
  ])('%s: %s is %s', (id, text, written) => {
    const answer = parseAnswer(question(id), text, { display: SIXTEENTHS, scope: SCOPE });
    if (!answer.ok) throw new Error(answer.problem);
    expect(answerText(question(id), answer.value, SIXTEENTHS)).toBe(written);
  });

  test('reads back as the same answer, on the tape of inches and on that of mm', () => {
    const length = fc.integer({ min: 1, max: 4000 });
    const section = fc.constantFrom('2x4', '5/4x6', '45x95');
    for (const display of [SIXTEENTHS, MILLIMETERS]) {
      const size = length.map(n => (n * 127) / 5 / 16);
      const snapped = display.system === 'inch' ? size : length;
      const answer: fc.Arbitrary<readonly [string, Answer]> = fc.oneof(
        fc
          .array(fc.record({ height: snapped, diameter: snapped }), { maxLength: 4 })
          .map(value => ['pots', { kind: 'items', value }] as const),
        fc
          .array(fc.record({ section, length: snapped, cents: fc.nat(99_999) }), { maxLength: 4 })
          .map(value => ['offers', { kind: 'offers', value }] as const),
        fc
          .array(fc.record({ section, length: snapped, count: fc.integer({ min: 1, max: 500 }) }), {
            maxLength: 4,
          })
          .map(value => ['on_hand', { kind: 'boards', value }] as const),
        fc
          .constantFrom(...SPECIES)
          .map(({ id }) => ['species', { kind: 'choice', value: id }] as const),
        fc.constantFrom(...SAWS).map(({ id }) => ['saw', { kind: 'choice', value: id }] as const),
      );
      fc.assert(
        fc.property(answer, ([id, given]) => {
          const text = answerText(question(id), given, display);
          const again = parseAnswer(question(id), text, { display, scope: SCOPE });
          expect(rounded(again)).toEqual(rounded({ ok: true, value: given }));
        }),
        { numRuns: 60 },
      );
    }
  });
});

function rounded(value: unknown): unknown {
  return JSON.parse(
    JSON.stringify(value, (_, part) =>
      typeof part === 'number' ? Math.round(part * 1e6) / 1e6 : part,
    ),
  );
}

test('no text makes reading an answer throw', () => {
  const pieces = fc.constantFrom(
    '2x4',
    ' 8ft',
    ' @ ',
    '7,48',
    ', ',
    'x',
    '*',
    '1/2',
    '-',
    '"',
    '\u001b[2J',
    ';',
    '0',
  );
  const text = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 80 }),
    fc.array(pieces, { maxLength: 30 }).map(all => all.join('')),
  );
  fc.assert(
    fc.property(fc.constantFrom(...questionsOf(ASKING)), text, (asked, given) => {
      const answer = parseAnswer(asked, given, { display: SIXTEENTHS, scope: SCOPE });
      if (!answer.ok) expect(`${answer.problem}${answer.hint}`).not.toMatch(/\p{Cc}/u);
    }),
    { numRuns: 400 },
  );
});

describe('usual answers', () => {
  test('there is one for every question, lists may be empty', () => {
    const usual = usualAnswers(ASKING);
    expect(Object.keys(usual)).toEqual(questionsOf(ASKING).map(({ id }) => id));
    expect(usual).toMatchObject({
      seat: { kind: 'length', value: 457.2 },
      overall: { kind: 'length', value: expect.closeTo(24 * 25.4, 6) },
      slats: { kind: 'count', value: 5 },
      armrest: { kind: 'yes', value: false },
      name: { kind: 'text', value: '' },
      offers: { kind: 'offers', value: [] },
      on_hand: { kind: 'boards', value: [] },
      people: { kind: 'choice', value: 'helper' },
      session_hours: { kind: 'hours', value: 3 },
    });
    expect(usual.pots?.value).toHaveLength(2);
  });

  test('a standard question has everything the trade tables know, and its usual is among it', () => {
    expect(question('species').options).toHaveLength(SPECIES.length);
    for (const { kind, options, usual } of questionsOf(ASKING)) {
      if (kind !== 'choice' || usual?.node.kind !== 'text') continue;
      expect(options.map(({ id }) => id)).toContain(usual.node.value);
    }
  });
});

describe('what formulas see of the answers', () => {
  const scope = answerScope(ASKING, {
    ...usualAnswers(ASKING),
    seat: { kind: 'length', value: 500 },
  });

  test.each([
    ['seat', 500],
    // 6 in more than the seat: the usual answer follows the one it looks at only while it is not given.
    ['overall', 24 * 25.4],
    ['slats', 5],
    ['pots.count', 2],
    ['pots.height.sum', 20.5 * 25.4],
    ['pots.height.most', 11.5 * 25.4],
    ['pots.diameter.least', 10 * 25.4],
    ['offers.count', 0],
  ])('%s', (name, value) => {
    expect(scope.find(name)).toMatchObject({ kind: 'number', value: expect.closeTo(value, 6) });
  });

  test.each([
    'pots',
    'pots.width.sum',
    'pots.height',
    'seat.count',
    'nobody',
    'constructor',
    '__proto__.count',
  ])('%s is nothing', name => {
    expect(scope.find(name)).toBeUndefined();
  });

  test('an empty list has sums of zero', () => {
    const empty = answerScope(ASKING, { pots: { kind: 'items', value: [] } });
    for (const how of ['sum', 'most', 'least']) {
      expect(empty.find(`pots.height.${how}`)).toEqual({ kind: 'number', value: 0, power: 1 });
    }
  });

  test('a usual answer follows another answer', () => {
    const longer = answerScope(ASKING, { seat: { kind: 'length', value: 508 } });
    expect(longer.find('overall')).toMatchObject({ value: expect.closeTo(508 + 152.4, 6) });
  });
});

test('a question whose condition does not hold is not asked', () => {
  const usual = usualAnswers(ASKING);
  expect(askedQuestions(ASKING, usual).map(({ id }) => id)).not.toContain('overall');
  const other = { ...usual, means: { kind: 'choice', value: 'overall' } } as const;
  expect(askedQuestions(ASKING, other).map(({ id }) => id)).toContain('overall');
});

describe('the corners of what may be asked', () => {
  const corners = rangeCorners(recipeOf(stool()));
  const short = corners.map(({ seat, look }) => [seat?.value, look?.value]);

  test('each end alone, each other option alone, then their pairs', () => {
    // 12, 18 and 24 in
    expect(short).toEqual([
      [457.2, 'plain'],
      [304.8, 'plain'],
      [609.6, 'plain'],
      [457.2, 'heavy'],
      [304.8, 'heavy'],
      [609.6, 'heavy'],
    ]);
  });

  test('a question that is only asked after another answer is tried with that answer', () => {
    const tried = rangeCorners(ASKING).filter(({ overall }) => overall?.value === 1016);
    expect(tried.length).toBeGreaterThan(0);
    for (const { means } of tried) expect(means?.value).toBe('overall');
  });

  test('each corner answers every question', () => {
    const ids = questionsOf(ASKING).map(({ id }) => id);
    for (const corner of rangeCorners(ASKING)) expect(Object.keys(corner)).toEqual(ids);
  });
});
