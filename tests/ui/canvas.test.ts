import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cornersOf } from '../../src/drawing/sight.js';
import {
  BLANK,
  type DimensionLine,
  type Drawing,
  type Patch,
  type Stroke,
  type SquareView as View,
} from '../../src/drawing/strokes.js';
import { allParts, drawView } from '../../src/drawing/view.js';
import { MILLIMETERS } from '../../src/measure/displays.js';
import { type CellPicture, setInCells } from '../../src/ui/canvas.js';
import { scene } from '../support/scenes.js';

const UNICODE = { ascii: false };
const ASCII = { ascii: true };

type Ends = readonly [number, number, number, number];

function strokesOf(
  ends: readonly Ends[],
  weight: 'plain' | 'bright' | 'hidden' = 'plain',
): Stroke[] {
  return ends.map(([u, v, toU, toV]) => ({
    from: { u, v },
    to: { u: toU, v: toV },
    kind: weight === 'hidden' ? 'hidden' : 'visible',
    bright: weight !== 'plain',
  }));
}

function frame(width: number, height: number): Ends[] {
  return [
    [0, 0, width, 0],
    [0, height, width, height],
    [0, 0, 0, height],
    [width, 0, width, height],
  ];
}

function drawingOf(
  strokes: readonly Stroke[],
  rest: Partial<Pick<Drawing, 'patches' | 'dimensions'>> = {},
): Drawing {
  const points = strokes.flatMap(stroke => [stroke.from, stroke.to]);
  return {
    ...BLANK,
    title: 'Front view',
    width: Math.max(0, ...points.map(point => point.u)),
    height: Math.max(0, ...points.map(point => point.v)),
    strokes,
    patches: rest.patches ?? [],
    dimensions: rest.dimensions ?? [],
    inWords: 'Front view: 20 mm wide and 10 mm high.',
  };
}

function dimension(
  along: 'u' | 'v',
  [from, to]: readonly [number, number],
  rest: Partial<DimensionLine> = {},
): DimensionLine {
  const side = along === 'u' ? 'below' : 'left';
  return { along, from, to, side, row: 0, text: `${to - from} mm`, bright: false, ...rest };
}

/** A face being added, from here to there along u and along v. */
function addedPatch(
  part: string,
  [fromU, toU]: readonly [number, number],
  [fromV, toV]: readonly [number, number],
): Patch {
  const corners = cornersOf({ u: { from: fromU, to: toU }, v: { from: fromV, to: toV } });
  return { part, corners, look: 'added', lean: 'right' };
}

function textOf(picture: CellPicture): string[] {
  return picture.lines.map(line => line.text);
}

describe('lines in cells', () => {
  test('a cell is twice as high as wide: 20 by 10 mm fill 21 columns and 6 rows, to scale', () => {
    const picture = setInCells(
      drawingOf(strokesOf(frame(20, 10))),
      { columns: 21, rows: 6 },
      UNICODE,
    );
    expect(textOf(picture)).toEqual([
      '┌───────────────────┐',
      '│                   │',
      '│                   │',
      '│                   │',
      '│                   │',
      '└───────────────────┘',
    ]);
    expect(picture.toScale).toBe(true);
    expect(picture.note).toBe(undefined);
  });

  test('lines that meet are joined, in every way that they can meet', () => {
    const cross: Ends[] = [...frame(20, 10), [10, 0, 10, 10], [0, 4, 20, 4]];
    const room = { columns: 21, rows: 6 };
    expect(textOf(setInCells(drawingOf(strokesOf(cross)), room, UNICODE))).toEqual([
      '┌─────────┬─────────┐',
      '│         │         │',
      '│         │         │',
      '├─────────┼─────────┤',
      '│         │         │',
      '└─────────┴─────────┘',
    ]);
    expect(textOf(setInCells(drawingOf(strokesOf(cross)), room, ASCII))).toEqual([
      '+---------+---------+',
      '|         |         |',
      '|         |         |',
      '+---------+---------+',
      '|         |         |',
      '+---------+---------+',
    ]);
  });

  test('two boards with a gap between them are not joined', () => {
    const apart: Ends[] = [
      ...frame(8, 10),
      [12, 0, 20, 0],
      [12, 10, 20, 10],
      [12, 0, 12, 10],
      [20, 0, 20, 10],
    ];
    expect(
      textOf(setInCells(drawingOf(strokesOf(apart)), { columns: 21, rows: 6 }, UNICODE)),
    ).toEqual([
      '┌───────┐   ┌───────┐',
      '│       │   │       │',
      '│       │   │       │',
      '│       │   │       │',
      '│       │   │       │',
      '└───────┘   └───────┘',
    ]);
  });

  test('a thin board keeps a cell of its own, and the picture says that it is not to scale', () => {
    // Ten boards 6 thick, 6 apart, before a panel 1200 wide: at 40 columns 6 mm are a fifth of a cell.
    const boards = Array.from({ length: 10 }, (_, i): Ends[] => {
      const u = 300 + i * 12;
      return [
        [u, 100, u, 400],
        [u + 6, 100, u + 6, 400],
        [u, 400, u + 6, 400],
        [u, 100, u + 6, 100],
      ];
    });
    const drawing = drawingOf(strokesOf([...frame(1200, 500), ...boards.flat()]));
    const picture = setInCells(drawing, { columns: 40, rows: 8 }, UNICODE);
    const tops = textOf(picture).find(line => line.includes('┌┐')) ?? '';
    expect(tops.match(/┌┐/g)?.length).toBe(10);
    expect(picture.toScale).toBe(false);
    expect(picture.note).toBe('Not to scale: thin boards are drawn wider.');
  });

  test('what is the same from both ends looks the same from both ends', () => {
    const slats = Array.from({ length: 7 }, (_, i): Ends[] => {
      const u = 100 + i * 110;
      return [
        [u, 300, u, 340],
        [u + 90, 300, u + 90, 340],
        [u, 340, u + 90, 340],
      ];
    });
    const drawing = drawingOf(strokesOf([...frame(950, 300), ...slats.flat()]));
    for (const columns of [40, 57, 76, 101]) {
      const lines = textOf(setInCells(drawing, { columns, rows: 20 }, UNICODE));
      const width = Math.max(...lines.map(line => line.length));
      const turned = lines.map(line =>
        [...line.padEnd(width)]
          .reverse()
          .map(
            sign => ({ '┌': '┐', '┐': '┌', '└': '┘', '┘': '└', '├': '┤', '┤': '├' })[sign] ?? sign,
          )
          .join('')
          .trimEnd(),
      );
      expect(turned).toEqual(lines);
    }
  });
});

describe('what is being added', () => {
  const bright = strokesOf(frame(20, 10), 'bright');
  const patches = [addedPatch('rail', [0, 20], [0, 10])];

  test('is filled, and emphasized from its first cell to its last', () => {
    const picture = setInCells(drawingOf(bright, { patches }), { columns: 21, rows: 4 }, UNICODE);
    expect(textOf(picture)).toEqual([
      '┌───────────┐',
      '│▒▒▒▒▒▒▒▒▒▒▒│',
      '│▒▒▒▒▒▒▒▒▒▒▒│',
      '└───────────┘',
    ]);
    expect(picture.lines.map(line => line.bright)).toEqual([
      [[0, 13]],
      [[0, 13]],
      [[0, 13]],
      [[0, 13]],
    ]);
  });

  test('is filled with colons in ASCII', () => {
    const picture = setInCells(drawingOf(bright, { patches }), { columns: 21, rows: 4 }, ASCII);
    expect(textOf(picture)[1]).toBe('|:::::::::::|');
  });

  test('gets an inside to be filled even where it is thin', () => {
    const thin = [addedPatch('slat', [600, 604], [0, 300])];
    const strokes = [
      ...strokesOf(frame(1200, 300)),
      ...strokesOf(
        [
          [600, 0, 600, 300],
          [604, 0, 604, 300],
        ],
        'bright',
      ),
    ];
    const picture = setInCells(
      drawingOf(strokes, { patches: thin }),
      { columns: 60, rows: 10 },
      UNICODE,
    );
    expect(textOf(picture)[1]).toContain('│▒│');
    const [run] = picture.lines[1]?.bright ?? [];
    expect(picture.lines[1]?.text.slice(...(run ?? [0, 0]))).toBe('│▒│');
  });

  test('is a row of dots where it is hidden behind other wood', () => {
    const strokes = [...strokesOf(frame(20, 10)), ...strokesOf([[4, 6, 16, 6]], 'hidden')];
    expect(textOf(setInCells(drawingOf(strokes), { columns: 21, rows: 6 }, UNICODE))[2]).toBe(
      '│   ·············   │',
    );
  });
});

describe('dimension lines', () => {
  test('stand a row below and a column beside the wood, numbers in the middle', () => {
    const drawing = drawingOf(strokesOf(frame(20, 10)), {
      dimensions: [dimension('u', [0, 20]), dimension('v', [0, 10])],
    });
    expect(textOf(setInCells(drawing, { columns: 27, rows: 8 }, UNICODE))).toEqual([
      '    ┬ ┌───────────────────┐',
      '    │ │                   │',
      '    │ │                   │',
      '10 mm │                   │',
      '    │ │                   │',
      '    ┴ └───────────────────┘',
      '',
      '      ├────── 20 mm ──────┤',
    ]);
  });

  test('make a chain where they touch, and keep a short one readable beside its line', () => {
    const dimensions = [
      dimension('u', [0, 12], { side: 'above' }),
      dimension('u', [12, 14], { side: 'above' }),
    ];
    const drawing = drawingOf(strokesOf([...frame(20, 10), [12, 0, 12, 10], [14, 0, 14, 10]]), {
      dimensions,
    });
    expect(textOf(setInCells(drawing, { columns: 21, rows: 8 }, UNICODE)).slice(0, 3)).toEqual([
      '├── 12 mm ──┼─┤ 2 mm',
      '',
      '┌───────────┬─┬─────┐',
    ]);
  });

  test('of the least interest go first when there is little room, and boards stay', () => {
    const drawing = drawingOf(strokesOf(frame(20, 10)), {
      dimensions: [dimension('u', [0, 20]), dimension('v', [0, 10])],
    });
    const inRows = (rows: number) =>
      textOf(setInCells(drawing, { columns: 16, rows }, UNICODE)).join('\n');
    expect(inRows(8)).toContain('20 mm');
    expect(inRows(8)).toContain('10 mm');
    expect(inRows(4)).toContain('┌');
  });
});

describe('a small room', () => {
  test('of less than 16 by 4 cells gets the drawing in words', () => {
    const picture = setInCells(
      drawingOf(strokesOf(frame(20, 10))),
      { columns: 15, rows: 6 },
      UNICODE,
    );
    expect(textOf(picture)).toEqual(['Front view:', '20 mm wide and', '10 mm high.']);
    expect(picture.note).toBe('Too little room to draw: it takes 16 columns by 4 rows.');
  });

  test('of no cells at all stays empty', () => {
    const picture = setInCells(
      drawingOf(strokesOf(frame(20, 10))),
      { columns: 0, rows: 0 },
      UNICODE,
    );
    expect(picture.lines).toEqual([]);
  });

  test('and an empty drawing are told in words too', () => {
    const picture = setInCells(drawingOf([]), { columns: 60, rows: 10 }, UNICODE);
    expect(textOf(picture)).toEqual(['Front view: 20 mm wide and 10 mm high.']);
  });
});

const view = fc.constantFrom<View>('front', 'end', 'above');
const room = fc.record({ columns: fc.nat(120), rows: fc.nat(45) });
const RUNS = { numRuns: 400, seed: 1848 };

const drawing = fc
  .tuple(scene, view, fc.constantFrom<'overall' | 'added'>('overall', 'added'))
  .map(([{ model, bright }, from, dimensions]) =>
    drawView({
      model,
      view: from,
      bright,
      standing: allParts(model),
      display: MILLIMETERS,
      dimensions,
    }),
  );

describe('any drawing in any room', () => {
  test('never goes beyond its room, and emphasizes only cells that it has', () => {
    fc.assert(
      fc.property(drawing, room, fc.boolean(), (one, within, ascii) => {
        const picture = setInCells(one, within, { ascii });
        expect(picture.lines.length).toBeLessThanOrEqual(within.rows);
        for (const line of picture.lines) {
          expect([...line.text].length).toBeLessThanOrEqual(within.columns);
          let last = -1;
          for (const [from, to] of line.bright) {
            expect(from).toBeGreaterThan(last);
            expect(to).toBeGreaterThan(from);
            expect(to).toBeLessThanOrEqual(line.text.length);
            last = to;
          }
        }
      }),
      RUNS,
    );
  });

  test('has the same layout in ASCII, sign for sign', () => {
    const plain: Record<string, string> = {
      '─': '-',
      '│': '|',
      '▒': ':',
      '·': '.',
      '▲': '^',
      '►': '>',
    };
    const inAscii = (text: string) =>
      [...text].map(sign => plain[sign] ?? ('┌┐└┘├┤┬┴┼'.includes(sign) ? '+' : sign)).join('');
    fc.assert(
      fc.property(drawing, room, (one, within) => {
        const unicode = setInCells(one, within, UNICODE);
        const ascii = setInCells(one, within, ASCII);
        expect(textOf(ascii)).toEqual(textOf(unicode).map(inAscii));
        expect(ascii.lines.map(line => line.bright)).toEqual(
          unicode.lines.map(line => line.bright),
        );
      }),
      RUNS,
    );
  });

  test('joins every arm of a corner or crossing to an arm of its neighbor', () => {
    const EAST = '─┌└├┬┴┼';
    const WEST = '─┐┘┤┬┴┼';
    const SOUTH = '│┌┐├┤┬┼';
    const NORTH = '│└┘├┤┴┼';
    fc.assert(
      fc.property(drawing, room, (one, within) => {
        const wood = { ...one, dimensions: [], patches: [] };
        fc.pre(within.columns >= 16 && within.rows >= 4);
        const lines = textOf(setInCells(wood, within, UNICODE));
        const at = (row: number, column: number) => lines[row]?.[column] ?? ' ';
        lines.forEach((line, row) => {
          [...line].forEach((sign, column) => {
            if (!'┌┐└┘├┤┬┴┼'.includes(sign)) return;
            const meets = (arms: string, facing: string, next: string) =>
              !arms.includes(sign) || facing.includes(next);
            expect(meets(EAST, WEST, at(row, column + 1))).toBe(true);
            expect(meets(WEST, EAST, at(row, column - 1))).toBe(true);
            expect(meets(SOUTH, NORTH, at(row + 1, column))).toBe(true);
            expect(meets(NORTH, SOUTH, at(row - 1, column))).toBe(true);
          });
        });
      }),
      RUNS,
    );
  });
});
