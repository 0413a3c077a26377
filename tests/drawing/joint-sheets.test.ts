import { describe, expect, test } from 'vitest';
import { hatchStrokes } from '../../src/drawing/hatch.js';
import {
  jointDrawings,
  screwDrawings,
  templateDrawings,
} from '../../src/drawing/joint/joint-drawings.js';
import { drawJoint } from '../../src/drawing/joint/joint-sheet.js';
import { squeeze } from '../../src/drawing/joint/squeeze.js';
import { drawTemplate } from '../../src/drawing/joint/template.js';
import type { Drawing } from '../../src/drawing/strokes.js';
import { MILLIMETERS } from '../../src/measure/displays.js';
import { COMPUTED } from '../../src/measure/figure.js';
import type { Box, Part } from '../../src/model/part.js';
import { solidOf } from '../../src/model/solid.js';
import type { CutRow } from '../../src/plan/plan.js';
import { boardOf, boxOf } from '../support/boards.js';
import { benchPlan } from '../support/open-build.js';

/** A piece 1200 long, 100 wide, 40 thick, lying along x with its face to y. */
function piece(...holes: readonly Box[]): Part {
  const notches = holes.map((box, at) => ({ rule: `notch${at}`, box, for: 'post' }));
  const part = boardOf({ id: 'rail', name: 'Rail', from: [0, 0, 0], to: [1200, 40, 100] });
  return { ...part, notches, solid: solidOf(part.box, notches) };
}

function rowOf(mark: string, otherHand?: string): CutRow {
  const none = { value: 0, unit: 'mm' as const, because: '', source: COMPUTED };
  return {
    mark,
    name: 'Rail',
    uses: [],
    pieces: ['rail'],
    section: '40x100',
    width: none,
    thickness: none,
    length: none,
    count: 2,
    turn: 1,
    notches: [],
    ...(otherHand === undefined ? {} : { otherHand }),
  };
}

function sheet(part: Part, row = rowOf('A')): Drawing {
  return drawJoint({ row, part, named: ['Lap'], display: MILLIMETERS });
}

function dimensionsOf({ dimensions }: Drawing): string[] {
  return dimensions.map(({ side, text }) => `${side} ${text}`);
}

/** A lap 90 long and 50 deep in the upper edge at both ends; 50 stays below. */
const LAPPED = piece(boxOf([0, 0, 50], [90, 40, 100]), boxOf([1110, 0, 50], [1200, 40, 100]));

describe('a joint sheet', () => {
  test('gives how long, how deep and what stays, once for two ends alike, then the board', () => {
    expect(dimensionsOf(sheet(LAPPED))).toEqual([
      'above 90 mm',
      'left 50 mm',
      'left 50 mm',
      'below 1200 mm',
      'right 100 mm',
      'right 40 mm',
    ]);
  });

  test('numbers the cuts of every kind of notch through, each number once on the drawing and below', () => {
    // A lap 50 deep at one end; at the other one 40 long, half as deep.
    const uneven = piece(boxOf([0, 0, 50], [90, 40, 100]), boxOf([1160, 0, 75], [1200, 40, 100]));
    const { labels, notes } = sheet(uneven);
    expect(labels.map(({ text }) => text)).toEqual(['1', '2', '3', '4']);
    const cuts = notes.filter(note => note.startsWith('Cut '));
    expect(cuts.map(note => note.slice(0, 6))).toEqual(['Cut 1:', 'Cut 2:', 'Cut 3:', 'Cut 4:']);
    // As it lies, its far end is at the left.
    expect(cuts[0]).toContain('40 mm from the end, 25 mm deep');
    expect(cuts[2]).toContain('90 mm from the end, 50 mm deep');
    // The third cut is marked where the second notch is.
    const third = labels[2]?.at.u ?? 0;
    expect(third).toBeGreaterThan((labels[0]?.at.u ?? 0) + 90);
    expect(notes.filter(note => note.startsWith('Hold the board'))).toHaveLength(1);
  });

  test('numbers a notch that goes through the width where its depth is seen: on the edge', () => {
    const halved = piece(boxOf([0, 20, 0], [90, 40, 100]));
    const { labels } = sheet(halved);
    // The edge view lies over the face: 100 of face, a board's thickness of 40 between.
    expect(labels.map(({ text }) => text)).toEqual(['1', '2']);
    for (const { at } of labels) expect(at.v).toBeGreaterThan(140);
  });

  test('hatches all the waste from both sides, and only that', () => {
    const areas = sheet(LAPPED).patches.map(({ corners, look }) => {
      const us = corners.map(({ u }) => u);
      const vs = corners.map(({ v }) => v);
      const area = (Math.max(...us) - Math.min(...us)) * (Math.max(...vs) - Math.min(...vs));
      return `${look} ${area}`;
    });
    // By hand: on the face 90 x 50, on the edge 90 x 40, at either end.
    expect(areas.sort()).toEqual(['waste 3600', 'waste 3600', 'waste 4500', 'waste 4500']);
  });

  test('lays a piece whose notches are below so that they are above, without mirroring it', () => {
    // One notch at the left end below; turned over end for end it is at the right end above, or turned
    // about its length at the left above with the other face up.
    const below = piece(boxOf([0, 0, 0], [90, 40, 50]));
    const [patch] = sheet(below).patches;
    expect(patch?.corners[0]?.v).toBe(50);
    expect(Math.min(...(patch?.corners ?? []).map(({ u }) => u))).toBe(0);
  });

  test('keeps a left hand and a right hand apart', () => {
    // A notch at one end, 30 into the edge and 15 into the face: no turn makes it its mirror image.
    const left = piece(boxOf([0, 0, 70], [90, 15, 100]));
    const right = piece(boxOf([0, 25, 70], [90, 40, 100]));
    const [a, b] = [sheet(left, rowOf('A', 'B')), sheet(right, rowOf('B', 'A'))];
    expect(a.strokes).not.toEqual(b.strokes);
    expect(a.notes.at(-1)).toContain('A is the left hand. B is its mirror image');
    expect(b.notes.at(-1)).toContain('B is the right hand. A is its mirror image');
  });

  test('says the order of cuts, marking first, the shoulder before the bottom', () => {
    const notes = sheet(LAPPED).notes;
    expect(notes[0]).toMatch(/^Hold the board .*mark from it/);
    expect(notes[1]).toMatch(
      /^Cut 1: Saw the shoulder, 90 mm from the end, 50 mm deep, on the waste side/,
    );
    expect(notes[2]).toMatch(/^Cut 2: Saw in from the end/);
  });

  test('breaks a long board where nothing is cut, and draws the ends true', () => {
    const drawing = sheet(LAPPED);
    expect(drawing.width).toBeLessThan(500);
    const breaks = drawing.strokes.filter(({ kind }) => kind === 'break');
    expect(breaks.length).toBe(4);
    const shoulder = drawing.dimensions[0];
    expect((shoulder?.to ?? 0) - (shoulder?.from ?? 0)).toBe(90);
  });
});

describe('a length drawn shorter', () => {
  test('keeps what is kept and its order', () => {
    const { toPaper, length, breaks } = squeeze(
      1000,
      [
        { from: 0, to: 100 },
        { from: 900, to: 1000 },
      ],
      50,
    );
    expect([0, 100, 900, 1000].map(toPaper)).toEqual([0, 100, 150, 250]);
    expect(length).toBe(250);
    expect(breaks).toEqual([{ from: 100, to: 150 }]);
  });

  test('stays whole where a break would save nothing', () => {
    expect(
      squeeze(
        180,
        [
          { from: 0, to: 50 },
          { from: 130, to: 180 },
        ],
        50,
      ).breaks,
    ).toEqual([]);
  });
});

describe('a marking template', () => {
  const drawing = drawTemplate({ marks: 'A', part: LAPPED, display: MILLIMETERS });

  test('is at true size: the sides of the board, folded out', () => {
    expect(drawing.trueSize).toBe(true);
    // Face 100, edge 40, back 100; the lap of 90 and half a board's width past it.
    expect([drawing.width, drawing.height]).toEqual([90 + 50, 100 + 40 + 100]);
  });

  test('has the waste in one piece round the edge', () => {
    const vs = drawing.patches.flatMap(({ corners }) => corners.map(({ v }) => v));
    expect([Math.min(...vs), Math.max(...vs)]).toEqual([50, 190]);
  });

  test('folds along both borders of the edge', () => {
    const folds = drawing.strokes.filter(({ kind }) => kind === 'phantom');
    expect(folds.map(({ from }) => from.v)).toEqual([100, 140]);
  });
});

describe('hatching', () => {
  test('is at 45 degrees, as far apart as asked, and ends on the border', () => {
    const corners = [
      { u: 0, v: 0 },
      { u: 30, v: 0 },
      { u: 30, v: 20 },
      { u: 0, v: 20 },
    ];
    for (const lean of ['right', 'left'] as const) {
      const lines = hatchStrokes({ part: 'a', corners, look: 'waste', lean }, 5);
      // The diagonal of 30 + 20 in steps of 5 x root 2 holds seven lines.
      expect(lines.length).toBe(7);
      for (const { from, to } of lines) {
        expect(Math.abs(to.v - from.v)).toBeCloseTo(to.u - from.u, 9);
        expect(to.v > from.v).toBe(lean === 'right');
        for (const end of [from, to]) {
          const onBorder = [end.u, 30 - end.u, end.v, 20 - end.v].map(Math.abs);
          expect(Math.min(...onBorder)).toBeLessThan(1e-9);
        }
      }
    }
  });
});

describe('the sheets of the bench', () => {
  const plan = benchPlan();

  test('show each piece with a notch, and one template for each different notch', () => {
    expect(jointDrawings(plan).map(({ key }) => key)).toEqual(['A', 'B', 'E', 'G']);
    // Both panel rails, long and short, have the same notch at their ends.
    expect(templateDrawings(plan).map(({ key }) => key)).toEqual(['A', 'B-E', 'G']);
  });

  test('have the half-depth notch of a 2x4 over a 2x4: 3-1/2 in long, 1-3/4 in deep', () => {
    // Dressed 2x4 is 1-1/2 x 3-1/2 in (PS 20); half of 3-1/2 in is 1-3/4 in.
    const rail = jointDrawings(plan)
      .find(({ key }) => key === 'B')
      ?.draw();
    expect(rail && dimensionsOf(rail)).toEqual([
      'above 3-1/2 in',
      'left 1-3/4 in',
      'left 1-3/4 in',
      'below 18 in',
      'right 3-1/2 in',
      'right 1-1/2 in',
    ]);
  });

  test('draw every screw on both parts, measured from their own ends and edges', () => {
    const slat = screwDrawings(plan)
      .find(({ key }) => key === 'slat_hold 2')
      ?.draw();
    expect(slat?.rings.length).toBe(4);
    // Where a 3-1/2 in slat ends on a 1-1/2 in rail: 7/8 and 2-5/8 in across (quarters of its width);
    // 1 in from its end is 1-1/2 - 1 = 1/2 in from the inner edge of the rail.
    expect(slat && dimensionsOf(slat)).toEqual([
      'below 1 in',
      'left 7/8 in',
      'left 2-5/8 in',
      'below 1/2 in',
    ]);
  });
});
