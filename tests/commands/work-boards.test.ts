import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { workCommand } from '../../src/commands/work/work.js';
import { inches } from '../../src/measure/inch.js';
import { parsed } from '../../src/measure/parsed.js';
import { referenceRows } from '../support/reference-rows.js';

type Board = { length_mm: number; on_hand: boolean; cuts_mm: number[]; offcut_mm: number };
type Told = { cost: number | null; proof: string; lower_bound: number | null; boards: Board[] };

function run(line: string, file = '') {
  const textOf = () => parsed(file);
  return workCommand(['boards', ...line.split(' ')], { textOf, ascii: false });
}

/** What the JSON form says; a problem fails the test. */
function told(line: string, file = ''): Told {
  const { out, err, code } = run(`${line} --as json`, file);
  expect(err).toBe('');
  expect(code).toBe(0);
  return JSON.parse(out);
}

/** What standard error says of a question that has no answer. */
function refused(line: string, file = ''): string {
  const { out, err, code } = run(line, file);
  expect(out).toBe('');
  expect(code).toBe(2);
  return err;
}

function lengths({ boards }: Told): readonly number[] {
  return boards.map(board => board.length_mm);
}

const FOUR_AND_SIX =
  '--piece 21in*4 --piece 34.5in*6 --board 8ft@7.48 --board 10ft@9.98 --on-hand 52in --kerf 1/8in --trim 1/4in';

describe('the JSON form', () => {
  // Source: sum on paper. After squaring and its cut an 8 ft board has 95-5/8 in; 2 x 34-1/2 + 21 and two
  // cuts are 90-1/4 in, so 5-3/8 in are left, 5-1/4 in behind the parting cut. 3 x 7.48 = 22.44.
  test('holds the cost in cents, the proof, the bound, and every board with its cuts', () => {
    const whole = {
      length_mm: 2438.4,
      on_hand: false,
      cuts_mm: [876.3, 876.3, 533.4],
      offcut_mm: 133.35,
    };
    expect(told(FOUR_AND_SIX)).toEqual({
      cost: 2244,
      proof: 'search',
      lower_bound: 2244,
      boards: [
        whole,
        whole,
        whole,
        { length_mm: 1320.8, on_hand: true, cuts_mm: [533.4], offcut_mm: 774.7 },
      ],
    });
  });

  test('says no cost where no price was given', () => {
    const found = told('--piece 21in*4 --board 8ft');
    expect([found.cost, found.lower_bound]).toEqual([null, null]);
  });
});

describe('field cases at the lumber rack', () => {
  // Source: field case F07: 3 x 1000 + 2 x 3 = 3006; cut anyway the third is 3000 - 2000 - 6 = 994;
  // 3 x 998 + 6 = 3000.
  test('F07: three pieces of 1 m from one 3 m stick are refused, with what is lacking and what fits', () => {
    const words = refused('--piece 100cm*3 --on-hand 300cm --kerf 3mm --trim 0 --units metric');
    expect(words).toContain('1 of A, 1000 mm: no board is left.');
    expect(words).toContain('6 mm more than the board of 3 m has');
    expect(words).toContain('the last one is 994 mm');
    expect(words).toContain('998 mm each would fit');
    expect(words).toContain('A board of 3006 mm or longer would do.');
  });

  test('F07: three of 998 mm fit to the last millimeter, and the store may have more sticks', () => {
    const fits = told('--piece 998mm*3 --on-hand 3m --kerf 3mm --trim 0');
    expect(fits.boards).toEqual([
      { length_mm: 3000, on_hand: true, cuts_mm: [998, 998, 998], offcut_mm: 0 },
    ]);
    expect(lengths(told('--piece 1m*3 --board 3m --kerf 3mm --trim 0'))).toEqual([3000, 3000]);
    expect(lengths(told('--piece 1m*3 --board 3m --board 3.3m --kerf 3mm --trim 0'))).toEqual([
      3300,
    ]);
  });

  // Source: field case F08: 96 - 48 - 1/8 = 47-7/8 in; with 1/4 in of squaring and its cut 47-1/2 in.
  test('F08: two of 48 in do not come out of 8 ft, with and without squaring', () => {
    const squared = refused('--piece 48in*2 --board 8ft*1');
    expect(squared).toContain('the last one is 47-1/2 in');
    expect(squared).toContain('47-3/4 in each would fit');
    expect(squared).toContain('A board of 96-1/2 in or longer would do.');
    const square = refused('--piece 48in*2 --board 8ft*1 --trim 0');
    expect(square).toContain('the last one is 47-7/8 in');
  });

  // Source: field case F08: 120 - 1/4 - 1/8 - 96 - 1/8 = 23-1/2 in, one more cut frees 23-3/8 in.
  test('F08: one 10 ft board does what two of 8 ft would', () => {
    const found = told('--piece 48in*2 --board 8ft --board 10ft');
    expect(lengths(found)).toEqual([inches(120)]);
    expect(found.boards[0]?.offcut_mm).toBeCloseTo(inches(23.375), 6);
  });

  // Source: field case F09: 4 x 21 + 4 x 1/8 = 84-1/2 in, so the first cut may fall 11-1/2 in from the end.
  test('F09: four fronts of 21 in leave 11-1/2 in of slack in 8 ft, 11-1/4 in beyond the squaring', () => {
    expect(run('--piece 21in*4 --board 8ft --trim 0').out).toContain('slack 11-1/2 in');
    expect(run('--piece 21in*4 --board 8ft --trim 1/4in').out).toContain('slack 11-1/4 in');
  });

  // Source: field case F10: 72 - 2 x 1-1/2 = 69 in between the walls; 72 + 69 + 1/8 + 3/8 = 141-1/2 in.
  test('F10: long and short laps of a 72 in box pair up on 12 ft boards, each by its name', () => {
    const { out } = run('--piece long=72in*2 --piece short=69in*2 --board 12ft');
    expect(out).toContain('2 x 12 ft: 1 x long 72 in, 1 x short 69 in; waste 2-3/8 in, slack');
    expect(out).toContain('2 of long, 72 in, take 144-1/2 in');
  });
});

describe('prices, limits and boards on hand', () => {
  // Source: sums on paper, kerf 1/8 in and 3/8 in for squaring.
  test.each(
    referenceRows('sum on paper: boards to buy', [
      // 2 x 7.48 against 9.98.
      ['--piece 48in*2 --board 8ft@7.48 --board 10ft@9.98', 998, [120]],
      // The same where the store has no 10 ft left but dear 12 ft ones: 14.96 against 15.50.
      ['--piece 48in*2 --board 8ft@7.48 --board 12ft@15.50', 1496, [96, 96]],
      // Only one 8 ft board left: 7.48 + 9.98.
      ['--piece 90in*2 --board 8ft@7.48*1 --board 10ft@9.98', 1746, [96, 120]],
      // 52 - 3/8 holds 40; nothing is bought.
      ['--piece 40in --board 8ft@7.48 --on-hand 52in', 0, [52]],
      // 14 to 96 in: 82 in hold 2 x 40 + 1/8, the cut at the knot falls into the knot.
      ['--piece 40in*2 --board 8ft@7.48 --on-hand 96in:10in-14in', 0, [82]],
      // 2 x 41 would fill the 82 in but for the blade; one 8 ft board takes both, with 96 - 82-1/2.
      ['--piece 41in*2 --board 8ft@7.48 --on-hand 96in:10in-14in', 748, [96]],
      // Squared at both ends the 8 ft board has 95-1/4 in.
      ['--piece 95.25in --board 8ft@7.48 --board 10ft@9.98 --trim-both 1/4in', 748, [96]],
      ['--piece 95.5in --board 8ft@7.48 --board 10ft@9.98 --trim-both 1/4in', 998, [120]],
      ['--piece 95.5in --board 8ft@7.48 --board 10ft@9.98 --trim 1/4in', 748, [96]],
      // Square already: nothing is cut off, and the last piece ends where the board does.
      ['--piece 47-15/16in*2 --board 8ft@7.48 --trim 0', 748, [96]],
    ] as const),
  )('%s', (line, cost, boards) => {
    const found = told(line);
    expect(found.cost).toBe(cost);
    const sorted = (all: readonly number[]) => [...all].sort((a, b) => a - b);
    expect(sorted(lengths(found))).toEqual(sorted(boards.map(inches)));
  });

  // Source: sum on paper: 3 x 30 and two cuts are 90-1/4 in; six pieces are 180-5/8 in on one 16 ft board.
  test('without prices the least length, then the fewest boards', () => {
    expect(lengths(told('--piece 30in*6 --board 8ft --board 16ft'))).toEqual([inches(192)]);
  });

  test('a half-priced store is refused', () => {
    expect(refused('--piece 40in --board 8ft@7.48 --board 10ft')).toContain('has no price');
  });
});

test('a problem in inches and the same in millimeters give the same boards', () => {
  const metric =
    '--piece 533.4mm*4 --piece 876.3mm*6 --board 2438.4mm@7.48 --board 3048mm@9.98 --on-hand 1320.8mm --kerf 3.1750mm --trim 6.35mm --units metric';
  expect(told(metric)).toEqual(told(FOUR_AND_SIX));
});

describe('the boards to scale', () => {
  // The sum: 75 columns hold 96 in from sign to sign in 73 steps, so a piece of 21 in and a cut take 16.
  test('every cut stands in its column, in the order of the cuts', () => {
    expect(run('--piece 21in*4 --board 8ft --trim 0').out.split('\n').slice(4, 6)).toEqual([
      '1  8 ft: 4 x A 21 in; waste 11-1/2 in, slack 11-1/2 in',
      '   ├─── A 21 in ───┼─── A 21 in ───┼─── A 21 in ────┼─── A 21 in ───┤░░░░░░░░░',
    ]);
  });

  test('a knot is crossed out, what lies before it is dotted, and boards cut alike stand together', () => {
    const { out } = run(
      '--piece 21in*4 --piece seat=34.5in*6 --board 8ft --board 10ft --on-hand 96in:10in-14in --trim-both 1/4in',
    );
    expect(out.split('\n').slice(4, 10)).toEqual([
      '1-2  2 x 10 ft: 2 x seat 34-1/2 in, 2 x A 21 in; waste 7-3/4 in, slack',
      '     7-7/8 in each',
      '     ├── seat 34-1/2 in ──┼── seat 34-1/2 in ──┼─ A 21 in ─┼─ A 21 in ──┤░░░░░',
      '3    8 ft on hand (14 in to 96 in): 2 x seat 34-1/2 in; offcut 12-3/8 in,',
      '     slack 12-1/2 in',
      '     ······╳╳├── seat 34-1/2 in ──┼── seat 34-1/2 in ──┤░░░░░░░░',
    ]);
  });

  test('plain characters on request are as wide', () => {
    const drawn = run(FOUR_AND_SIX).out.split('\n');
    const plain = run(`${FOUR_AND_SIX} --ascii`).out.split('\n');
    expect(plain.join('\n')).toMatch(/^[\x00-\x7f]*$/);
    expect(plain.map(line => line.length)).toEqual(drawn.map(line => line.length));
    expect(plain.join('\n')).toContain('+------ A 34-1/2 in ------+');
  });

  test('no line of a drawing is wider than 78 columns', () => {
    const { out } = run(
      '--piece very-long-name-of-a-piece=61-13/16in*7 --piece 3in*40 --board 8ft@7.48 --board 12ft@12.20',
    );
    const drawing = out.split('\n').slice(4, -6);
    expect(Math.max(...drawing.map(line => line.length))).toBeLessThanOrEqual(78);
  });
});

describe('the sum that proves it', () => {
  // Source: sum on paper: 6 x 2.992 + 4 x 1.496 = 23.936; the board on hand holds one A, 2.992, so 20.944.
  test('is written so that a person can do it again', () => {
    const { out } = run(`${FOUR_AND_SIX} --because`);
    for (const line of [
      '  6 x A 34-1/2 in at 2.992 = 17.952',
      '  4 x B 21 in at 1.496 = 5.984',
      '  52 in on hand: 1 x A = 2.992, costs 0.00; 2.992 over, and there are only 1',
      '  8 ft: 2 x A + 1 x B = 7.480, costs 7.48',
      '  10 ft: 3 x A = 8.976, costs 9.98',
      'So all pieces together cost at least 23.936 - 1 x 2.992 = 20.944. Between that',
    ])
      expect(out.split('\n')).toContain(line);
  });

  test('is left out unless asked for', () => {
    expect(run(FOUR_AND_SIX).out).not.toContain('at least');
  });
});

describe('lists in a file', () => {
  const FILE = [
    '# Friday',
    'kind,length,count,price,name',
    'piece,21 in,4,,',
    'piece,"34-1/2 in",6,,seat',
    '',
    'board,8 ft,,7.48,',
    'board,10 ft,,9.98,',
    'hand,52 in,1,,',
  ].join('\n');

  test('give the same boards as the same on the line', () => {
    expect(told('--from list.csv', FILE)).toEqual(told(FOUR_AND_SIX));
  });

  test('and may be joined by more on the line', () => {
    const found = told('--from list.csv --piece 40in --on-hand 42in', FILE);
    expect(found.boards.filter(board => board.on_hand).length).toBe(2);
  });

  test('semicolons and decimal commas of a spreadsheet are read too', () => {
    const found = told(
      '--from list.csv --kerf 3mm --trim 0 --units metric',
      'length;kind;price;count\r\n1,5 m;piece;;2\r\n3,1 m;board;7,48;\r\n',
    );
    expect(found.cost).toBe(748);
  });

  test.each([
    ['kind,length\npiece,21xx', 'list.csv:2:7: "xx" is not a unit of length.'],
    ['kind,length\nplank,21in', 'list.csv:2:1: "plank" is no kind of row.'],
    ['kind,lenght\npiece,21in', 'list.csv:1:6: There is no column "lenght". Did you mean length?'],
    ['length,count\n21in,2', 'list.csv:1:1: The column kind is missing.'],
    ['kind,length,count\npiece,21in,2.5', 'list.csv:2:12: "2.5" is no number'],
    ['kind,length,price\nboard,8ft,-3', 'list.csv:2:11: "-3" is less than zero.'],
    ['kind,length,price\npiece,8ft,3', 'list.csv:2:11: Only a board for sale has a price.'],
    ['kind,length\nhand,96in:100in-104in', 'list.csv:2:6: The defect "100in-104in" lies beyond'],
    ['kind,length\n\n# x\npiece,"21in', 'list.csv:4:7: A quote is opened here and never closed.'],
    ['kind,length\npiece,"21in"x', 'list.csv:2:13: Behind the closing quote a comma'],
    ['kind,length\npiece,21in,7', 'list.csv:2:12: The row has more cells than there are titles.'],
    ['', 'list.csv:1:1: There is nothing in it.'],
  ])('%j is refused with the place', (file, words) => {
    expect(refused('--from list.csv', file)).toContain(words);
  });

  test('a file that cannot be read is told in words', () => {
    const { err, code } = workCommand(['boards', '--from', 'list.csv']);
    expect([code, err.startsWith('--from: ')]).toEqual([2, true]);
  });
});

describe('what is written as CSV and read again', () => {
  const sixteenths = (from: number, to: number) =>
    fc.integer({ min: from * 16, max: to * 16 }).map(n => `${n / 16}in`);
  const piece = fc
    .tuple(sixteenths(3, 60), fc.integer({ min: 1, max: 6 }))
    .map(([length, count]) => `--piece ${length}*${count}`);

  test('costs the same and uses the same boards, in inches and in millimeters', () => {
    const line = fc.tuple(
      fc.array(piece, { minLength: 1, maxLength: 5 }),
      fc.constantFrom('', ' --units metric'),
      fc.constantFrom('', ' --on-hand 96in:10in-14in:50in-52in*2', ' --on-hand 41in'),
      fc.constantFrom('', ' --trim 0', ' --trim-both 1/2in'),
    );
    fc.assert(
      fc.property(line, ([pieces, units, hand, trim]) => {
        const style = `${trim}${units}`;
        const asked = `${pieces.join(' ')} --board 8ft@7.48 --board 10ft@9.98${hand}${style}`;
        const first = told(asked);
        const { out } = run(`${asked} --as csv`);
        const again = told(`--from list.csv${style}`, out);
        expect(again.cost).toBe(first.cost);
        expect(cutsOf(again)).toEqual(cutsOf(first));
      }),
      { numRuns: 60 },
    );
  });

  function cutsOf({ boards }: Told): readonly number[] {
    return boards
      .flatMap(board => board.cuts_mm.map(cut => Math.round(cut * 1000)))
      .sort((a, b) => a - b);
  }

  test('begins with titles and lists each board with the pieces out of it', () => {
    const { out } = run('--piece seat=48in*2 --board 8ft@7.48 --board 10ft@9.98 --as csv');
    expect(out.split('\r\n')).toEqual([
      'kind,length,count,price,name,board,offcut,slack',
      'board,120 in,1,9.98,,1,23-3/8 in,23-1/2 in',
      'piece,48 in,2,,seat,1,,',
      '',
    ]);
  });
});

describe('slips of the keys', () => {
  test.each([
    ['--piece 21xx*4 --board 8ft', '--piece 21xx*4: "xx" is not a unit of length.'],
    ['--piece 21in*0 --board 8ft', '"0" is no number of pieces or boards.'],
    ['--piece 21in*2*3 --board 8ft', 'has two numbers of pieces'],
    ['--piece 21in --board 8ft@7.48@8', 'has two prices'],
    ['--piece 21in --board 8ft@seven', '"seven" is not a price.'],
    ['--piece 21in --on-hand 96in:10in', '"10in" does not say from where to where.'],
    ['--piece 21in --on-hand 96in:14in-10in', 'does not say from where to where'],
    ['--piece a=21in --piece a=22in --board 8ft', 'Two lengths are called a'],
    ['--board 8ft', 'No pieces are given'],
    ['--piece 21in', 'No boards are given'],
    ['--piece 21in --board 8ft --trim 0 --trim-both 1/4in', 'write one of them'],
    ['--piece 21in --board 8ft --as yaml', 'it can be text or json or csv'],
    ['--piece 21in --bord 8ft', 'Did you mean --board?'],
  ])('%s is refused in words', (line, words) => {
    expect(refused(line)).toContain(words);
  });

  // Source: sum on paper: 96 - 1/4 - 1/8 = 95-5/8 in; 100 + 3/8 in.
  test('a piece longer than every board is named with what would fit', () => {
    const words = refused('--piece leg=100in --piece 40in*2 --board 8ft');
    expect(words).toContain('1 of leg, 100 in: longer than every board.');
    expect(words).toContain('The longest piece that fits is 95-5/8 in.');
    expect(words).toContain('A board of 100-3/8 in or longer would do.');
  });
});

describe('every board added up again from the JSON form alone', () => {
  const UNIT = 25.4 / 16;
  const sixteenths = (from: number, to: number) => fc.integer({ min: from * 16, max: to * 16 });

  /** What the cuts take of a board in sixteenths: squaring with its cut, the pieces, a blade between each two. */
  function taken(cuts: readonly number[], { trim, kerf }: { trim: number; kerf: number }): number {
    const pieces = cuts.reduce((sum, cut) => sum + cut, 0);
    return (trim > 0 ? trim + kerf : 0) + pieces + (cuts.length - 1) * kerf;
  }

  test('nothing is too long, no piece is missing, and offcuts and cost are right', () => {
    const asked = fc.record({
      pieces: fc.array(fc.tuple(sixteenths(2, 90), fc.integer({ min: 1, max: 8 })), {
        minLength: 1,
        maxLength: 6,
      }),
      trim: fc.constantFrom(0, 4, 8),
      kerf: fc.constantFrom(0, 1, 2),
    });
    fc.assert(
      fc.property(asked, ({ pieces, trim, kerf }) => {
        const words = pieces.map(([length, count]) => `--piece ${length / 16}in*${count}`);
        const found = told(
          `${words.join(' ')} --board 8ft@7.48 --board 10ft@9.98 --trim ${trim / 16}in --kerf ${kerf / 16}in`,
        );
        const wanted = pieces.flatMap(([length, count]) => Array(count).fill(length) as number[]);
        const up = (a: number, b: number) => a - b;
        const cuts = found.boards.map(board => board.cuts_mm.map(cut => Math.round(cut / UNIT)));
        expect(cuts.flat().sort(up)).toEqual(wanted.sort(up));
        for (const [at, board] of found.boards.entries()) {
          const length = Math.round(board.length_mm / UNIT);
          const left = length - taken(cuts[at] ?? [], { trim, kerf });
          expect(left).toBeGreaterThanOrEqual(0);
          expect(board.offcut_mm / UNIT).toBeCloseTo(Math.max(0, left - kerf), 6);
        }
        const price = (board: Board) => (board.length_mm > 2500 ? 998 : 748);
        expect(found.cost).toBe(found.boards.reduce((sum, board) => sum + price(board), 0));
      }),
      { numRuns: 80 },
    );
  });
});

describe('what counts besides the cost', () => {
  const line =
    '--piece 21in*4 --piece 34.5in*6 --piece 48in*2 --board 8ft@7.48 --board 10ft@9.98 --board 6ft@5.50 --on-hand 52in';

  test('the last two wishes can be swapped, at the same cost', () => {
    expect(told(`${line} --first offcut`).cost).toBe(told(line).cost);
    expect(refused(`${line} --first cheap`)).toContain('--first');
  });

  // Source: sums on paper: five of 6 ft are 27.50; three of 10 ft are 29.94, 2.44 more.
  test('up to 5.00 more buys fewer boards, and it is said what it costs and brings', () => {
    expect(told(line).cost).toBe(2750);
    const dearer = told(`${line} --spend 5 --for boards`);
    expect([dearer.cost, dearer.lower_bound, dearer.proof]).toEqual([2994, 2750, 'none']);
    expect(run(`${line} --spend 5 --for boards`).out).toContain(
      '2.44 more than the cheapest plan, 27.50, brings 3 boards to buy instead of 5.',
    );
  });

  test('where it would bring nothing, the cheapest plan stays', () => {
    const same = run(`${line} --spend 1 --for boards`).out;
    expect(same).toContain('Nothing was found for up to 1.00 more that has fewer boards');
    expect(told(`${line} --spend 1 --for boards`).cost).toBe(2750);
  });

  test('money that is no money, or boards without a price, are refused', () => {
    expect(refused(`${line} --spend much`)).toContain('"much" is not a price');
    expect(refused('--piece 21in --board 8ft --spend 5')).toContain('give each --board a price');
  });
});
