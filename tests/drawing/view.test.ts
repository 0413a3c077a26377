import { describe, expect, test } from 'vitest';
import type {
  DimensionLine,
  Drawing,
  Stroke,
  SquareView as View,
} from '../../src/drawing/strokes.js';
import { allParts, drawView } from '../../src/drawing/view.js';
import { MILLIMETERS, SIXTEENTHS } from '../../src/measure/displays.js';
import { inches } from '../../src/measure/inch.js';
import type { Model } from '../../src/model/part.js';
import { type BoardInTest, boxOf, pieceOf } from '../support/boards.js';

/** Strokes as text, `u,v u,v weight`, sorted, so that expected drawings can be written by hand. */
function told(strokes: readonly Stroke[]): string[] {
  return strokes
    .map(
      ({ from, to, kind, bright }) =>
        `${from.u},${from.v} ${to.u},${to.v} ${kind === 'hidden' ? kind : bright ? 'bright' : 'plain'}`,
    )
    .sort();
}

function draw(
  model: Model,
  how: { view?: View; bright?: readonly string[]; standing?: readonly string[] } = {},
): Drawing {
  return drawView({
    model,
    view: how.view ?? 'front',
    bright: new Set(how.bright ?? []),
    standing: how.standing === undefined ? allParts(model) : new Set(how.standing),
    display: MILLIMETERS,
    dimensions: how.bright === undefined ? 'overall' : 'added',
  });
}

function dimensionsOf(drawing: Drawing): string[] {
  return drawing.dimensions.map(
    ({ along, from, to, side, text }: DimensionLine) =>
      `${side} ${along} ${from} to ${to}: ${text}`,
  );
}

/** Two posts with a rail 600 long before them, 20 thick. */
const GOAL: readonly BoardInTest[] = [
  { id: 'rail', name: 'Rail', from: [0, 0, 300], to: [600, 20, 390] },
  { id: 'post/1', name: 'Post', from: [0, 20, 0], to: [90, 65, 390] },
  { id: 'post/2', name: 'Post', from: [510, 20, 0], to: [600, 65, 390] },
];

describe('a view of boards', () => {
  test('shows the rail in front and the posts below it', () => {
    const drawing = draw(pieceOf(GOAL));
    expect([drawing.width, drawing.height]).toEqual([600, 390]);
    expect(told(drawing.strokes)).toEqual(
      [
        '0,0 90,0 plain',
        '510,0 600,0 plain',
        '0,300 600,300 plain',
        '0,390 600,390 plain',
        '0,0 0,390 plain',
        '90,0 90,300 plain',
        '510,0 510,300 plain',
        '600,0 600,390 plain',
      ].sort(),
    );
  });

  test('is the right end with the front at the left, as in third-angle drawings', () => {
    const drawing = draw(pieceOf(GOAL), { view: 'end' });
    // The rail's end is 20 deep at the left, the post 45 deep behind it; both ends lie in one plane.
    expect(told(drawing.strokes)).toEqual(
      [
        '0,300 20,300 plain',
        '20,0 65,0 plain',
        '0,390 65,390 plain',
        '0,300 0,390 plain',
        '20,0 20,390 plain',
        '65,0 65,390 plain',
      ].sort(),
    );
  });

  test('from above has the front at the bottom', () => {
    const drawing = draw(pieceOf(GOAL), { view: 'above' });
    expect(drawing.strokes).toContainEqual({
      from: { u: 0, v: 0 },
      to: { u: 600, v: 0 },
      kind: 'visible',
      bright: false,
    });
    expect([drawing.width, drawing.height]).toEqual([600, 65]);
  });

  test('has no line across a notched board where its wood goes through', () => {
    // A rail 100 high, its left end notched away to half its height: two boxes, one board.
    const notched: BoardInTest = {
      id: 'rail',
      from: [0, 0, 0],
      to: [400, 40, 100],
      solid: [boxOf([0, 0, 50], [400, 40, 100]), boxOf([90, 0, 0], [400, 40, 50])],
    };
    expect(told(draw(pieceOf([notched])).strokes)).toEqual(
      [
        '0,50 90,50 plain',
        '0,100 400,100 plain',
        '90,0 400,0 plain',
        '0,50 0,100 plain',
        '90,0 90,50 plain',
        '400,0 400,100 plain',
      ].sort(),
    );
  });

  test('keeps the joint line between two boards that lie flush', () => {
    const flush: readonly BoardInTest[] = [
      { id: 'a', from: [0, 0, 0], to: [100, 20, 50] },
      { id: 'b', from: [100, 0, 0], to: [200, 20, 50] },
    ];
    expect(told(draw(pieceOf(flush)).strokes)).toContain('100,0 100,50 plain');
  });

  test('takes edges a millionth of a millimeter apart for one', () => {
    const flush: readonly BoardInTest[] = [
      { id: 'a', from: [0, 0, 0], to: [100, 20, 50] },
      { id: 'b', from: [100 + 1e-9, 1e-9, 0], to: [200, 20, 50 + 1e-9] },
    ];
    const strokes = draw(pieceOf(flush)).strokes;
    expect(strokes.length).toBe(5);
  });

  test('leaves out boards that are neither standing nor being added', () => {
    const drawing = draw(pieceOf(GOAL), { standing: ['post/1'] });
    expect([drawing.width, drawing.height]).toEqual([90, 390]);
  });

  test('fills what is seen of a board being added, and draws its edges bright', () => {
    const drawing = draw(pieceOf(GOAL), { bright: ['post/1'] });
    const corners = [
      { u: 0, v: 0 },
      { u: 90, v: 0 },
      { u: 90, v: 300 },
      { u: 0, v: 300 },
    ];
    expect(drawing.patches).toEqual([{ part: 'post/1', corners, look: 'added', lean: 'right' }]);
    // The lower edge of the rail is nearer and belongs to the rail.
    expect(told(drawing.strokes.filter(one => one.bright))).toEqual([
      '0,0 0,300 bright',
      '0,0 90,0 bright',
      '90,0 90,300 bright',
    ]);
  });

  test('outlines none where one of its kind is seen: that one tells where they go', () => {
    const strips: readonly BoardInTest[] = [
      { id: 'strip/1', name: 'Strip', from: [200, 20, 320], to: [400, 40, 360] },
      { id: 'strip/2', name: 'Strip', from: [200, 20, 500], to: [400, 40, 540] },
    ];
    const drawing = draw(pieceOf([...GOAL, ...strips]), { bright: ['strip/1', 'strip/2'] });
    expect(drawing.strokes.filter(one => one.kind === 'hidden')).toEqual([]);
    expect(drawing.inWords).toContain('One of the boards being added is hidden behind other wood');
  });

  test('outlines a board being added that cannot be seen, and says so', () => {
    const behind: BoardInTest = { id: 'strip', from: [200, 20, 320], to: [400, 40, 360] };
    const drawing = draw(pieceOf([...GOAL, behind]), { bright: ['strip'] });
    expect(told(drawing.strokes.filter(one => one.kind === 'hidden'))).toEqual([
      '200,320 400,320 hidden',
      '200,360 200,320 hidden',
      '400,320 400,360 hidden',
      '400,360 200,360 hidden',
    ]);
    expect(drawing.inWords).toContain('One of the boards being added is hidden behind other wood');
  });

  test('is empty, in words, before the first board', () => {
    const drawing = draw(pieceOf(GOAL), { standing: [] });
    expect(drawing.strokes).toEqual([]);
    expect(drawing.inWords).toBe('Front view: no board stands here yet.');
  });
});

describe('dimension lines', () => {
  test('give width and height of what is shown', () => {
    expect(dimensionsOf(draw(pieceOf(GOAL)))).toEqual([
      'below u 0 to 600: 600 mm',
      'left v 0 to 390: 390 mm',
    ]);
  });

  test('give length, distance from the datum and the first gap of what is added', () => {
    expect(dimensionsOf(draw(pieceOf(GOAL), { bright: ['post/1', 'post/2'] }))).toEqual([
      'left v 0 to 390: 390 mm',
      'below u 90 to 510: 420 mm',
    ]);
    // The rail lies in the upper half: its length stands above it.
    expect(dimensionsOf(draw(pieceOf(GOAL), { bright: ['rail'] }))).toEqual([
      'above u 0 to 600: 600 mm',
      'left v 0 to 300: 300 mm',
    ]);
  });

  test('name equal boards once and are five at most, in rows that do not overlap', () => {
    const boards: BoardInTest[] = [1, 2, 3, 4].flatMap(kind =>
      [0, 1, 2].map(i => ({
        id: `kind${kind}/${i}`,
        name: `Kind ${kind}`,
        from: [100 * kind + i * 400, 0, 10 * kind],
        to: [100 * kind + 60 + i * 400, 20, 10 * kind + 200 + 10 * kind],
      })),
    );
    const drawing = draw(pieceOf(boards), { bright: boards.map(board => board.id) });
    expect(drawing.dimensions.length).toBe(5);
    for (const one of drawing.dimensions) {
      const meets = drawing.dimensions.filter(
        other =>
          other !== one &&
          other.side === one.side &&
          other.row === one.row &&
          other.from < one.to &&
          one.from < other.to,
      );
      expect(meets).toEqual([]);
    }
  });

  test('are told in words with what they measure', () => {
    const slats: BoardInTest[] = [0, 1, 2].map(i => ({
      id: `slat/${i}`,
      name: 'Seat slat',
      from: [inches(2 + i * 4), 0, 0],
      to: [inches(5.5 + i * 4), inches(17), inches(1.5)],
    }));
    const ledge: BoardInTest = {
      id: 'ledge',
      from: [0, 0, 0],
      to: [inches(1), inches(17), inches(1.5)],
    };
    const model = pieceOf([ledge, ...slats]);
    const bright = new Set(slats.map(slat => slat.id));
    const words = (view: View) =>
      drawView({
        model,
        view,
        bright,
        standing: new Set(['ledge']),
        display: SIXTEENTHS,
        dimensions: 'added',
      }).inWords;
    // By hand: 5-1/2 in + 2 x 4 in = 13-1/2 in wide; 4 in - 3-1/2 in = 1/2 in between slats.
    expect(words('above')).toBe(
      'View from above, front at the bottom: 13-1/2 in wide and 17 in deep. ' +
        'Being added: Seat slat, 3 of them, 17 in long, 2 in from the left, first gap 1/2 in. ' +
        'One board stands there already.',
    );
    expect(words('front')).toContain('seen on end, 2 in from the left, first gap 1/2 in');
  });
});
