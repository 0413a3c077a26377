import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkRecipe } from '../../src/recipe/check-recipe.js';
import { formulaNames } from '../../src/recipe/formula-names.js';
import { problemLine } from '../../src/recipe/problem-words.js';
import { rangeCorners } from '../../src/recipe/range-corners.js';
import { readRecipe } from '../../src/recipe/read.js';
import { complaints, marked, recipeOf, STOOL, stool } from './support/recipes.js';

const PROJECTS = new URL('../../projects/', import.meta.url);
const projects = readdirSync(PROJECTS, { withFileTypes: true })
  .filter(entry => entry.isDirectory())
  .map(
    ({ name }) => [name, readFileSync(new URL(`${name}/recipe.yaml`, PROJECTS), 'utf8')] as const,
  );

describe('projects that come with the program read well', () => {
  test.each(projects)('%s', (id, text) => {
    expect(recipeOf(text).id).toBe(id);
  });
});

describe('the stool as it is read', () => {
  const recipe = recipeOf(STOOL);

  test('knows what it is and asks in order', () => {
    expect(recipe).toMatchObject({ format: 1, id: 'stool', title: 'Stool' });
    expect(recipe.groups.map(({ id, questions }) => [id, questions.map(q => q.id)])).toEqual([
      ['size', ['seat', 'look']],
    ]);
  });

  test('a length stands in mm, with the text it was written as', () => {
    const [seat] = recipe.groups[0]?.questions ?? [];
    // 18 in x 25.4
    expect(seat?.usual).toMatchObject({ text: '18 in', node: { kind: 'length', value: 457.2 } });
  });

  test('at of a part is its corner, and what is not written is usual', () => {
    const [slat, leg] = recipe.whole.parts;
    expect(slat).toMatchObject({ id: 'slat', loose: false, runs: 'x', face: 'z' });
    expect(slat).not.toHaveProperty('when');
    expect(slat?.corner[2].text).toBe('leg_height');
    expect(leg?.repeat).toMatchObject({ kind: 'count', count: { node: { value: 2 } } });
  });

  test('a name has its place, inside quotes and in a hole of a text too', () => {
    const { text, places } = marked(stool(['if(look', 'if(‸look'], ['Cut {leg', 'Cut {‸leg']));
    const { boards, steps } = recipeOf(text);
    const names = boards.flatMap(({ section }) => formulaNames(section.node));
    const [, hole] = steps[0]?.title.pieces ?? [];
    const found = [names[0]?.at, typeof hole === 'object' ? hole.at : undefined];
    expect(found.map(at => `${at?.line}:${at?.column}`)).toEqual(places);
  });

  test('a step keeps its words and its empty lists', () => {
    expect(recipe.steps[1]).toMatchObject({
      id: 'join',
      joins: ['seat_fix'],
      tools: [],
      timers: [],
      look: [],
    });
  });
});

describe('every mistake is told at once, each at its mark', () => {
  test.each([
    [
      'a mistyped word',
      [
        ['name: Slat\n', '‸name: Slat\n'],
        ['runs: x', '‸rnus: x'],
      ],
      [
        'A part needs the word runs. Add a line runs: ...',
        '"rnus" is not a word that can stand here. Did you mean runs?',
      ],
    ],
    [
      'a mistyped axis',
      [['face: z', 'face: ‸up']],
      ['"up" cannot stand here. It can be x, y or z.'],
    ],
    [
      'a length without a unit',
      [['usual: 18 in', 'usual: ‸18']],
      ['"18" has no unit. Write 18 in or 18 mm.'],
    ],
    [
      'a mistyped unit',
      [['from: 12 in', 'from: ‸12 inhces']],
      [
        '"inhces" is not a unit of length. Did you mean inches? Units are ft, in, m, cm and mm, as in 5 ft 3-1/2 in or 1180 mm.',
      ],
    ],
    [
      'a broken formula',
      [['= 17 in - slat.thickness', '= 17 in - ‸* slat.thickness']],
      ['The formula needs a name, a number or a length here and has "*".'],
    ],
    [
      'a broken formula inside quotes',
      [['"4x4", "2x4")', '"4x4", "2x4"‸']],
      ['The formula needs a comma or a closing parenthesis here and has the end of the formula.'],
    ],
    [
      'a broken formula in a text',
      [['{seat} long', '{seat +‸} long']],
      ['The formula needs a name, a number or a length here and has the end of the formula.'],
    ],
    [
      'a hole that is not closed',
      [['{seat} long', '‸{seat long']],
      ['A { begins a formula here, and no } ends it. Close it, or write {{ for the brace itself.'],
    ],
    [
      'a brace that closes nothing',
      [['{seat} long', '{seat}‸} long']],
      ['This } closes nothing. Write }} for the brace itself.'],
    ],
    [
      'a name that cannot be one',
      [['  leg:\n    name', '  ‸Leg-2:\n    name']],
      [
        '"Leg-2" cannot be a name. Use small letters, digits and underscores, beginning with a letter, such as seat_rail.',
      ],
    ],
    [
      'a name that means something else',
      [['leg_height: {', '‸mm: {']],
      ['"mm" means something else in a formula. Choose another name.'],
    ],
    [
      'a comma in a text that has no quotes',
      [['why: the slat lies on the legs', 'why: it lies on them, ‸flat']],
      [
        'The comma before "flat" ends the text. Put a text that has a comma in quotes: { why: "red, not blue" }.',
      ],
    ],
    [
      'two numbers where three belong',
      [['[0, 0, = leg_height]', '‸[0, = leg_height]']],
      ['Here should be three lengths in brackets, for x, y and z; it is a list of 2.'],
    ],
    [
      'a list where one value belongs',
      [['board: slat', 'board: ‸[slat]']],
      ['Here should be a name; it is a list.'],
    ],
    [
      'nothing where something belongs',
      [['title: Stool', 'title:‸']],
      ['Nothing is written here. Write it, or leave the word out.'],
    ],
    [
      'a question of no known kind',
      [['kind: length', 'kind: ‸lenght']],
      [
        '"lenght" cannot stand here. Did you mean length? It can be length, count, hours, clock, date, days, choice, yes, text, items, offers or boards.',
      ],
    ],
    [
      'a range for a choice',
      [['say: Which look?', 'say: Which look?\n      ‸from: plain']],
      [
        '"from" is not a word that can stand here. It can be kind, say, why, when, usual or options.',
      ],
    ],
    [
      'a standard question that there is not',
      [['look:\n      kind', 'specis: ‸standard\n    look:\n      kind']],
      [
        '"specis" cannot stand here. Did you mean species? It can be species, dryness, climate, exposure, metal, saw, offers, on_hand, left_over, people, first_day, session_days, session_from, session_hours or noise_until.',
      ],
    ],
    [
      'four at once',
      [
        ['id: stool', 'id: ‸My Stool'],
        ['with: screw', 'with: ‸screws'],
        ['who: lead', 'who: ‸all'],
        ['{ count: 2,', '{ count: ‸two,'],
      ],
      [
        '"My Stool" cannot be a name. Use small letters, digits, hyphens and underscores.',
        '"two" is not a number. Write a number such as 2.',
        '"screws" cannot stand here. Did you mean screw? It can be screw, brad or glue.',
        '"all" cannot stand here. It can be lead, helper or both.',
      ],
    ],
  ] as const)('%s', (_, changes, said) => {
    const { text, places } = marked(stool(...changes));
    expect(complaints(text)).toEqual(said.map((words, at) => `${places[at]}: ${words}`));
  });

  test('a word that stands twice, with the line of the first', () => {
    const { text, places } = marked(stool(['runs: x', '‸runs: x\n    ‸runs: y']));
    const [first = '', second = ''] = places;
    expect(complaints(text)).toEqual([
      `${second}: "runs" stands here a second time. It is in line ${first.split(':')[0]} already; rename or remove one of them.`,
    ]);
  });

  test('another format is named', () => {
    expect(complaints('recipe: 2\ntitle: x\n')).toEqual([
      '1:9: This recipe is written in format "2", and format 1 is read here. Write recipe: 1, or use the release that the file was made for.',
    ]);
  });

  test('a file that is no recipe is told so', () => {
    expect(complaints('title: Shopping\n')).toEqual([
      '1:1: This is not a recipe: it does not say which format it is in. Begin the file with the line recipe: 1.',
    ]);
    expect(complaints('')).toEqual([
      '1:1: Here should be a recipe: words with values; it is nothing.',
    ]);
  });

  test('slips in YAML are told in plain words', () => {
    expect(complaints('recipe: 1\n\tid: x\n')[0]).toBe(
      '2:1: This line is indented with a tab. Indent with spaces, two for each level.',
    );
    expect(complaints('recipe: 1\nabout: two things: a saw\n')[0]).toBe(
      '2:8: A colon with a space stands inside a text. Put the whole text in quotes, such as say: "Two things: a saw and a square."',
    );
  });
});

describe('places stay exact where the text is not written on one plain line', () => {
  test.each([
    "'= 17 in - (slat.thickness‸'",
    '"= 17 in - (slat.thickness‸"',
    '"= 17 in \\x2d (slat.thickness‸"',
    '"= 17 in - (slat\\u002ethickness‸"',
    `'= if(1 = 2, "it''s", ‸)'`,
    '>-\n    = 17 in -\n    (slat.thickness\n    + ‸* 2',
  ])('%s', formula => {
    const { text, places } = marked(
      stool([
        '  leg_height: { is: = 17 in - slat.thickness, why: the slat lies on the legs }',
        `  leg_height: ${formula}`,
      ]),
    );
    expect(complaints(text).map(line => line.split(': ')[0])).toEqual(places);
  });

  test('in a folded text of a step', () => {
    const { text, places } = marked(
      stool(['- Cut the slat {seat} long.', '- >-\n        Cut the\n        slat {seat +‸} long.']),
    );
    expect(complaints(text).map(line => line.split(': ')[0])).toEqual(places);
  });
});

describe('a file from a stranger', () => {
  test('entities inside entities are not opened', () => {
    const bomb = `recipe: 1\na: &a [x, x]\nb: &b [*a, *a, *a]\nc: &c [*b, *b, *b]\nd: [*c, *c, *c]\n`;
    const said = complaints(bomb);
    expect(said).toContain(
      '2:7: References with & and * are not read here. Write it out, or make an assembly and use it twice.',
    );
  });

  test.each([
    ['brackets', '['.repeat(60_000)],
    ['braces', '{a: '.repeat(20_000)],
    ['dashes', '- '.repeat(30_000)],
    ['questions', '? '.repeat(30_000)],
  ])('%s inside each other are refused', (_, text) => {
    expect(complaints(text)[0]).toContain('More than 20 levels lie inside each other.');
  });

  test('tags are not read', () => {
    const { text, places } = marked(stool(['title: Stool', 'title: !!js/function ‸"x"']));
    expect(complaints(text)).toEqual([
      `${places[0]}: The tag "!!js/function" is not read here. Leave it out, or put the whole text in quotes.`,
    ]);
  });

  test('a file of more than 256 KB is not read', () => {
    expect(complaints(`recipe: 1\n# ${'x'.repeat(256 * 1024)}`)).toEqual([
      '1:1: This file has 257 KB, more than 256 KB. A project file is a few pages of text; check that it is the right one.',
    ]);
  });

  test('escape sequences and unseen marks do not reach a terminal', () => {
    const text = stool([
      'title: Stool',
      'title: "\\e[31mSt\\u202eo\\u0007ol\\e]0;owned\\a \\u200b!"',
    ]);
    expect(recipeOf(text).title).toBe('Stool !');
  });

  test('they do not reach it through a message either', () => {
    const [said = ''] = complaints(stool(['runs: x', '"ru\\e[2Jns": x']));
    expect(complaints(stool(['runs: x', '"ru\\e[2Jns": x'])).join('')).not.toMatch(/\p{Cc}/u);
    expect(said).not.toBe('');
  });

  test('names of the language mean nothing', () => {
    for (const word of ['__proto__', 'constructor', 'toString', 'hasOwnProperty']) {
      expect(complaints(`${STOOL}${word}: x\n`).join('\n')).toContain(
        `"${word}" is not a word that can stand here.`,
      );
      expect(complaints(stool(['look = "heavy"', `${word} = "heavy"`])).join('')).not.toContain(
        'Error',
      );
    }
  });

  test.each([
    ['questions', 70, (i: number) => `    q${i}: { kind: yes, say: x }\n`, 'questions in a group'],
  ])('too many %s are refused', (_, count, line, what) => {
    const many = Array.from({ length: count }, (__, i) => line(i)).join('');
    expect(complaints(stool(['    seat:\n', `${many}    seat:\n`])).join('')).toContain(
      `There are ${count + 2} ${what}, more than 60.`,
    );
  });

  test('more parts and steps than anybody builds are refused', () => {
    const parts = Array.from({ length: 151 }, (_, i) => `  p${i}: {}\n`).join('');
    expect(complaints(stool(['parts:\n', `parts:\n${parts}`])).join('')).toContain(
      'There are 153 parts, more than 150.',
    );
    const steps = '  - {}\n'.repeat(151);
    expect(complaints(stool(['steps:\n', `steps:\n${steps}`])).join('')).toContain(
      'There are 153 entries here, more than 150.',
    );
  });

  test('nothing throws, whatever stands in the file', () => {
    const lines = STOOL.split('\n');
    const damage = fc.tuple(
      fc.nat(lines.length - 1),
      fc.nat(40),
      fc.oneof(
        fc.constantFrom(
          '[',
          ']',
          '{',
          '}',
          ': ',
          '- ',
          "'",
          '"',
          '=',
          '&a',
          '*a',
          '!x',
          '\t',
          '\n',
          '#',
          '|',
          '>',
          '\u0000',
          '\ud800',
          '%',
        ),
        fc.string({ unit: 'binary', maxLength: 6 }),
      ),
    );
    fc.assert(
      fc.property(fc.array(damage, { minLength: 1, maxLength: 4 }), all => {
        const broken = [...lines];
        for (const [at, column, text] of all) {
          const line = broken[at] ?? '';
          broken[at] = line.slice(0, column) + text + line.slice(column + 1);
        }
        const read = readRecipe(broken.join('\n'));
        if (read.ok) {
          checkRecipe(read.recipe, { tools: [], cautions: [], sections: [] });
          rangeCorners(read.recipe);
        }
        for (const problem of read.ok ? [] : read.problems) {
          expect(problemLine(problem, 'r')).toMatch(/^r:[1-9]\d*:[1-9]\d*: \S/);
          expect(problemLine(problem, 'r')).not.toMatch(/\p{Cc}/u);
        }
      }),
      { numRuns: 120 },
    );
  });
});
