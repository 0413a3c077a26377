import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { CAUTIONS } from '../../src/materials/cautions.js';
import { sectionNames } from '../../src/materials/section.js';
import { TOOLS } from '../../src/materials/tools.js';
import { PLAN_WORDS } from '../../src/plan/plan-scope.js';
import { checkRecipe } from '../../src/recipe/check-recipe.js';
import { problemLine } from '../../src/recipe/problem-words.js';
import { usualAnswers } from '../../src/recipe/questions.js';
import { marked, recipeOf, STOOL, stool } from './support/recipes.js';

const KNOWN = {
  tools: ['miter-saw', 'tape'],
  cautions: ['dust'],
  sections: sectionNames(),
  words: ['glue.open'],
};

function found(text: string): readonly string[] {
  return checkRecipe(recipeOf(text), KNOWN).map(problem => problemLine(problem, '').slice(1));
}

const PROJECTS = new URL('../../projects/', import.meta.url);
const projects = readdirSync(PROJECTS, { withFileTypes: true })
  .filter(entry => entry.isDirectory())
  .map(({ name }) => name);

describe('projects that come with the program hold together', () => {
  const known = {
    tools: TOOLS.map(({ id }) => id),
    cautions: Object.keys(CAUTIONS),
    sections: sectionNames(),
    words: PLAN_WORDS,
  };
  test.each(projects)('%s', name => {
    const recipe = recipeOf(readFileSync(new URL(`${name}/recipe.yaml`, PROJECTS), 'utf8'));
    expect(checkRecipe(recipe, known).map(problem => problemLine(problem, name))).toEqual([]);
  });
});

const PANEL: readonly [string, string] = [
  'joints:\n',
  `assemblies:
  panel:
    takes: { width: length }
    parts:
      rail: { name: Rail, board: leg, length: = width, runs: x, face: y, at: [0, 0, 0] }
      post: { name: Post, board: leg, length: = leg_height, runs: z, face: y, at: [0, 0, 0] }
    notches:
      tongue: { name: Tongue, cut: rail, over: post, share: all }
    joints:
      corner: { name: Corner, from: rail, into: post, with: screw, each: 1, glue: no }
places:
  side: { use: panel, width: = seat, stands: { left: { at: [0, 0, 0] } } }
joints:
`,
];

const WITH_PANEL: readonly (readonly [string, string])[] = [
  PANEL,
  ['cuts: [slat, leg]', 'cuts: [slat, leg, side]\n    notches: [side.tongue]'],
  ['joins: [seat_fix]', 'joins: [seat_fix, side.corner]'],
];

test('a recipe that holds together has no problem', () => {
  expect(found(STOOL)).toEqual([]);
  expect(found(stool(...WITH_PANEL))).toEqual([]);
});

describe('each mistake is told at its mark', () => {
  test.each([
    [
      'a mistyped name in a formula',
      [['length: = seat', 'length: = ‸seet']],
      ['Nothing here is called "seet". Did you mean seat?'],
    ],
    [
      'a mistyped side of a board',
      [['- slat.thickness', '- ‸slat.thicknes']],
      ['Nothing here is called "slat.thicknes". Did you mean slat.thickness?'],
    ],
    [
      'a length and a plain number',
      [['= seat - leg.thickness', '= seat ‸- 2']],
      ['A length and a plain number cannot be subtracted. Give the number its unit, such as 2 in.'],
    ],
    [
      'a branch that is never taken',
      [['length: = leg_height', "length: '= if(1 = 1, leg_height, leg_height ‸+ 2)'"]],
      ['A length and a plain number cannot be added. Give the number its unit, such as 2 in.'],
    ],
    [
      'two branches of different kinds',
      [['length: = leg_height', "length: '= ‸if(1 = 1, leg_height, 3)'"]],
      [
        'A length and a plain number cannot be the two answers of one if. Give the number its unit, such as 2 in.',
      ],
    ],
    [
      'an area where a length belongs',
      [['length: = leg_height', 'length: = ‸leg_height * seat']],
      ['This place needs a length and gets an area.'],
    ],
    [
      'a length where a count belongs',
      [['count: 2', 'count: = ‸seat']],
      ['This place needs a plain number and gets a length.'],
    ],
    [
      'an option that the question does not have',
      [['look = "heavy"', 'look ‸= "hevy"']],
      ['That question has no option "hevy". Did you mean heavy?'],
    ],
    [
      'a division by a written zero',
      [['length: = leg_height', 'length: = ‸leg_height / 0']],
      ['This divides by "0", which is zero. Keep it from being zero with max, or with if.'],
    ],
    [
      'a section that nobody sells, in a branch that is not usual',
      [['\'= if(look = "heavy", "4x4", "2x4")\'', '\'= ‸if(look = "heavy", "4x5", "2x4")\'']],
      [
        'There is no section of wood "4x5". Did you mean 4x4? Write it as it is sold, such as 2x4 or 45x95.',
      ],
    ],
    [
      'a kind of board that there is not',
      [['  leg:\n    name: Leg\n    board: leg', '  ‸leg:\n    name: Leg\n    board: lag']],
      ['There is no kind of board "lag". Did you mean leg?'],
    ],
    [
      'a part that a joint does not find',
      [['into: leg', 'into: ‸legs']],
      ['There is no part "legs". Did you mean leg? Write use.part for a part inside an assembly.'],
    ],
    [
      'a layout that there is not',
      [
        ['  leg:\n    name', '  ‸leg:\n    name'],
        ['repeat: { count: 2, step: [= seat - leg.thickness, 0, 0] }', 'repeat: { layout: legs }'],
      ],
      ['There is no layout "legs".'],
    ],
    [
      'a size to measure that there is not',
      [['who: lead', 'who: lead\n    measure: [‸{ size: leg_hight, say: Under the slat }]']],
      [
        'There is no named size "leg_hight". Did you mean leg_height? Write use.size for a size inside an assembly.',
      ],
    ],
    [
      'a size to measure that no tape can',
      [
        ['leg_height: {', 'ratio: = seat / leg_height\n  leg_height: {'],
        ['at: [0, 0, 0]\n', 'at: [= 0 in * ratio, 0, 0]\n'],
        ['who: lead', 'who: lead\n    measure: [‸{ size: ratio, say: How slender it is }]'],
      ],
      [
        '"ratio" is a plain number: only a length can be measured with a tape. Name a size that is a length.',
      ],
    ],
    [
      'a joint that a step does not find',
      [
        ['  - id: join', '  - ‸id: join'],
        ['joins: [seat_fix]', 'joins: [seat_fix, seat_fox]'],
      ],
      ['There is no joint "seat_fox". Did you mean seat_fix?'],
    ],
    [
      'a size in the plain words for a helper that has no such name',
      [
        [
          'say: [Drive the screws.]',
          'say: [Drive the screws.]\n    plain: ["We turn {‸screwz} in."]',
        ],
      ],
      ['Nothing here is called "screwz".'],
    ],
    [
      'a tool and a caution that nobody knows',
      [
        ['- id: cut', '- ‸‸id: cut'],
        ['who: lead', 'who: lead\n    tools: [mitre-saw]\n    care: [dusk]'],
      ],
      [
        'There is no tool "mitre-saw". Did you mean miter-saw?',
        'There is no caution "dusk". Did you mean dust?',
      ],
    ],
    [
      'a word of the plan that there is not',
      [['Cut {leg.count} legs', 'Cut within {‸glue.opened}']],
      ['Nothing here is called "glue.opened". Did you mean glue.open?'],
    ],
    [
      'sizes that wait for each other',
      [
        [
          'leg_height: { is: = 17 in - slat.thickness, why: the slat lies on the legs }',
          '‸leg_height: = other + 1 in\n  other: = leg_height',
        ],
      ],
      [
        'These sizes wait for each other: leg_height, other. Work one of them out without the others.',
      ],
    ],
    [
      'a board that waits for a size that waits for the board',
      [
        ['leg_height: {', '‸leg_height: {'],
        ['slat: 2x6', 'slat: \'= if(leg_height > 1 in, "2x6", "1x6")\''],
      ],
      [
        'These sizes wait for each other: leg_height, slat.thickness. Work one of them out without the others.',
      ],
    ],
    [
      'a size that nothing uses',
      [['  leg_height:', '  ‸spare: 3 in\n  leg_height:']],
      ['The named size "spare" is never used. Remove it, or use it.'],
    ],
    [
      'a kind of board that nothing uses',
      [['slat: 2x6', 'slat: 2x6\n  ‸rail: 2x4']],
      ['The kind of board "rail" is never used. Remove it, or use it.'],
    ],
    [
      'a part that no step cuts',
      [
        ['  leg:\n    name', '  ‸leg:\n    name'],
        ['cuts: [slat, leg]', 'cuts: [slat]'],
      ],
      ['No step cuts "leg". Add it to cuts of a step.'],
    ],
    [
      'a joint that no step closes',
      [
        ['  seat_fix:', '  ‸seat_fix:'],
        ['joins: [seat_fix]\n    ', ''],
      ],
      ['No step closes the joint "seat_fix". Add it to joins of a step.'],
    ],
    [
      'a step that needs what only a later one cuts',
      [
        ['cuts: [slat, leg]', 'cuts: [slat]'],
        ['- id: join', '- ‸id: join'],
        [
          'say: [Drive the screws.]\n',
          `say: [Drive the screws.]
  - id: late
    phase: cut
    title: Cut the legs
    who: lead
    cuts: [leg]
    say: [Cut them.]
`,
        ],
      ],
      ['This step needs "leg", which is only cut in the step late. Cut it first.'],
    ],
    [
      'a step that an earlier one is to wait for',
      [
        ['- id: join', '- ‸id: join'],
        ['say: [Drive the screws.]\n', 'say: [Drive the screws.]\n    before: [cut]\n'],
      ],
      [
        '"cut" is to wait for the step "join", which does not come before it. Move this step up, or take the other one out of before.',
      ],
    ],
    [
      'a step whose own timer it is to wait for',
      [
        ['- id: join', '- ‸id: join'],
        [
          'say: [Drive the screws.]\n',
          'say: [Drive the screws.]\n    timers: [{ id: set, name: Glue, lasts: 60, before: [join], then: Go on. }]\n',
        ],
      ],
      [
        '"join" is to wait for the step "join", which does not come before it. Move this step up, or take the other one out of before.',
      ],
    ],
    [
      'a range upside down',
      [['from: 12 in', 'from: ‸40 in']],
      ['The range goes from 40 in to 2 ft (24 in). Put the smaller one first.'],
    ],
    [
      'a usual answer outside of its range',
      [['usual: 18 in', 'usual: ‸8 in']],
      [
        'The usual answer 8 in is not between 1 ft (12 in) and 2 ft (24 in). Move the range or the usual answer.',
      ],
    ],
    [
      'a usual answer that is no option',
      [['usual: plain', 'usual: ‸plane']],
      [
        'The usual answer cannot be read. "plane" is none of the choices. Did you mean plain (Plain)? It can be plain, heavy.',
      ],
    ],
    [
      'a question that looks ahead',
      [['to: 24 in', 'to: 24 in\n      when: = ‸look = "plain"']],
      ['"look" is asked later, so it is not known here yet. Put that question first.'],
    ],
    [
      'a face that looks out of the end',
      [
        ['  slat:\n    name', '  ‸slat:\n    name'],
        ['face: z', 'face: x'],
      ],
      [
        'The wide face looks along the same axis as the length runs. Choose one of the two other axes for face.',
      ],
    ],
  ] as const)('%s', (_, changes, said) => {
    const { text, places } = marked(stool(...changes));
    expect(found(text)).toEqual(said.map((words, at) => `${places[at]}: ${words}`));
  });
});

describe('a name that stands for two things is told with the line of the first', () => {
  test.each([
    [
      'two questions in two groups',
      'seat',
      [
        ['    seat:\n', '    ‸seat:\n'],
        ['let:\n', '  more:\n    title: More\n    ‸seat: { kind: yes, say: Again? }\nlet:\n'],
      ],
    ],
    [
      'a question and a size',
      'look',
      [
        ['    look:\n', '    ‸look:\n'],
        ['  leg_height: { is: = 17 in', '  ‸look: = 3 in\n  leg_height: { is: = 17 in'],
      ],
    ],
    [
      'a part and a use of an assembly',
      'slat',
      [
        ['  slat:\n    name', '  ‸slat:\n    name'],
        [
          'joints:\n',
          'assemblies:\n  inside: {}\nplaces:\n  ‸slat: { use: inside, stands: {} }\njoints:\n',
        ],
      ],
    ],
    [
      'two steps',
      'cut',
      [
        ['- id: cut', '- ‸id: cut'],
        ['- id: join', '- ‸id: cut'],
      ],
    ],
  ] as const)('%s', (_, id, changes) => {
    const { text, places } = marked(stool(...changes));
    const [first = '', second = ''] = places;
    expect(found(text)).toContain(
      `${second}: The name "${id}" is taken: see line ${first.split(':')[0]}. Choose another name.`,
    );
  });
});

describe('assemblies', () => {
  test.each([
    [
      'one that is not there',
      [
        ['use: panel', 'use: pannel'],
        ['  side:', '  ‸side:'],
      ],
      'There is no assembly "pannel". Did you mean panel?',
    ],
    [
      'a size that it takes and is not given',
      [
        ['width: = seat, stands', 'stands'],
        ['  side:', '  ‸side:'],
      ],
      'The assembly panel takes width, and it is not given here. Add a line width: = ...',
    ],
    [
      'a size that it does not take',
      [['width: = seat, stands', 'width: = seat, heigth: = ‸seat, stands']],
      'That assembly takes no size "heigth".',
    ],
    [
      'one that nothing uses',
      [['  panel:\n', '  ‸spare: {}\n  panel:\n']],
      'The assembly "spare" is never used. Remove it, or use it.',
    ],
    [
      'one that stands inside itself',
      [
        [
          '  panel:\n',
          '  ‸panel:\n    places: { again: { use: panel, width: = width, stands: {} } }\n',
        ],
      ],
      'The assembly panel stands inside itself. Use another one here.',
    ],
    [
      'a part in a use that is not there',
      [['cuts: [slat, leg, side]', 'cuts: [slat, leg, side.rail, side.post, ‸side.pots]']],
      'There is no part "side.pots". Did you mean side.post? Write use.part for a part inside an assembly.',
    ],
    [
      'a part of one use that no step cuts',
      [
        ['cuts: [slat, leg, side]', 'cuts: [slat, leg, side.rail]'],
        ['      post:', '      ‸post:'],
      ],
      'No step cuts "side.post". Add it to cuts of a step.',
    ],
    [
      'a notch that no step cuts',
      [
        ['\n    notches: [side.tongue]', ''],
        ['      tongue:', '      ‸tongue:'],
      ],
      'No step cuts the notch "side.tongue". Add it to notches of a step.',
    ],
    [
      'a joint of one use that no step closes',
      [
        ['joins: [seat_fix, side.corner]', 'joins: [seat_fix]'],
        ['      corner:', '      ‸corner:'],
      ],
      'No step closes the joint "side.corner". Add it to joins of a step.',
    ],
    [
      'a notch that comes after the joint it is for',
      [
        ['cuts: [slat, leg, side]\n    notches: [side.tongue]', 'cuts: [slat, leg, side]'],
        ['- id: join', '- ‸id: join'],
        [
          'say: [Drive the screws.]\n',
          `say: [Drive the screws.]
  - id: late
    phase: notch
    title: Notch the rails
    who: lead
    notches: [side.tongue]
    say: [Notch them.]
`,
        ],
      ],
      'This step needs the notch "side.tongue", which is only cut in the step late. Notch it first.',
    ],
    [
      'a size that is only known to the assembly',
      [['length: = seat', 'length: = ‸width']],
      'Nothing here is called "width".',
    ],
  ] as const)('%s', (_, changes, said) => {
    const whole = stool(...WITH_PANEL);
    const changed = changes.reduce((text, [from, to]) => {
      expect(text).toContain(from);
      return text.replace(from, to);
    }, whole);
    const { text, places } = marked(changed);
    expect(found(text)).toContain(`${places[0]}: ${said}`);
  });

  test('uses within uses that no computer could walk are refused at once', () => {
    const levels = Array.from({ length: 30 }, (_, i) => {
      const uses = [0, 1, 2].map(n => `u${n}: { use: a${i + 1}, stands: {} }`).join(', ');
      return `  a${i}: { places: { ${uses} } }\n`;
    });
    const text = stool([
      'joints:\n',
      `assemblies:\n${levels.join('')}  a30: {}\nplaces: { top: { use: a0, stands: {} } }\njoints:\n`,
    ]);
    const started = process.hrtime.bigint();
    expect(found(text).join('')).toContain('parts in all uses, more than 1500');
    expect(Number(process.hrtime.bigint() - started) / 1e9).toBeLessThan(5);
  });
});

describe('a list that blocks are stacked for', () => {
  const STACK: readonly (readonly [string, string])[] = [
    ['    look:\n', '    pots: { kind: items, say: Pots?, fields: [height] }\n    look:\n'],
    [
      'joints:\n',
      `stacks:
  riser: { name: Block, boards: [leg], length: 3 in, runs: x, each: pots, height: = 12 in - item.height - item.before.height * 0 + item.number * 0 in, at: [0, 0, 0] }
joints:
`,
    ],
    ['cuts: [slat, leg]', 'cuts: [slat, leg, riser]'],
  ];

  test('sees the thing it stands under', () => {
    expect(found(stool(...STACK))).toEqual([]);
  });

  test.each([
    ['each: pots', 'each: pot', 'There is no question "pot". Did you mean pots?'],
    [
      'each: pots',
      'each: seat',
      'The question "seat" is not a list of things. Name a question of kind items.',
    ],
    ['item.height', 'item.hight', 'Nothing here is called "item.hight". Did you mean item.height?'],
    [
      'runs: x, each',
      'runs: z, each',
      'The layers of a stack lie flat, so they cannot run upward. Write runs: x or runs: y.',
    ],
    ['boards: [leg]', 'boards: [lag]', 'There is no kind of board "lag". Did you mean leg?'],
  ])('%s written as %s', (from, to, said) => {
    const text = stool(...STACK);
    expect(text).toContain(from);
    expect(found(text.replace(from, to)).map(line => line.replace(/^\S+ /, ''))).toContain(said);
  });
});

test('the limits of a fit are of the same kind as its value', () => {
  const { text, places } = marked(
    stool([
      'steps:\n',
      'fit:\n  low: { say: Height, value: = leg_height, least: 0, most: ‸19, otherwise: Cut the legs., source: common practice }\nsteps:\n',
    ]),
  );
  expect(found(text)).toEqual([
    `${places[0]}: A length and a plain number cannot be compared. Give the number its unit, such as 2 in.`,
  ]);
});

test('a question whose usual answer looks at itself is told, and answered all the same', () => {
  const { text, places } = marked(stool(['usual: 18 in', 'usual: = ‸seat + 1 in']));
  expect(found(text)).toContain(
    `${places[0]}: "seat" is asked later, so it is not known here yet. Put that question first.`,
  );
  expect(usualAnswers(recipeOf(text)).seat).toEqual({ kind: 'length', value: 0 });
});
