import { describe, expect, test } from 'vitest';
import { partNames } from '../../src/drawing/part-names.js';
import { drawStepCorner } from '../../src/drawing/step-drawing.js';
import { BLANK, type Drawing } from '../../src/drawing/strokes.js';
import { setInCells } from '../../src/ui/canvas.js';
import { bestSight, pictureOf } from '../../src/ui/pictures.js';
import { subjectOf } from '../../src/ui/screens/step/subject.js';
import { benchPlan } from '../support/open-build.js';

const plan = benchPlan();
const ROOMS = [
  { columns: 80, rows: 16 },
  { columns: 140, rows: 37 },
];

/** Steps that put boards together, where a mark tells which board goes where. */
const STEPS = plan.steps.filter(
  ({ bright, phase }) => bright.length > 0 && (phase === 'assemble' || phase === 'dry-fit'),
);

describe('marks on the pictures of steps', () => {
  test.each(STEPS.map(step => [step.id, step] as const))(
    '%s: every mark of the boards in sight once, plain and not',
    (_, step) => {
      const drawing = drawStepCorner(plan, step, 'corner-right');
      const wanted = drawing.marks.map(({ text }) => text).toSorted();
      for (const room of ROOMS) {
        for (const ascii of [false, true]) {
          const { lines } = setInCells(drawing, room, { ascii });
          const found = lines.flatMap(({ text }) => text.match(/[A-Z]+/g) ?? []).toSorted();
          expect(found).toEqual(wanted);
        }
      }
    },
  );

  test.each(STEPS.map(step => [step.id, step] as const))(
    '%s: a bare mark stands in its own part, between fill or lines of wood',
    (_, step) => {
      const subject = subjectOf(step, plan);
      for (const room of ROOMS) {
        const frame = { ...room, ascii: false };
        const { lines } = pictureOf(subject, bestSight(subject, frame), frame);
        const marks = new Set(partNames(plan).values());
        for (const { text } of lines) {
          for (const match of text.matchAll(/(^|[^[A-Za-z])([A-Z])([^\]A-Za-z]|$)/g)) {
            expect(marks.has(match[2] ?? '')).toBe(true);
            expect(`${match[1]}${match[3]}`).toMatch(/^[▒│_.'\-·┤├┬┴]{2}$/);
          }
        }
      }
    },
  );
});

/** A frame 10 cells wide of nothing but lines, with a board in it too thin to be filled. */
function thin(): Drawing {
  const [left, right, low, high] = [0, 900, 0, 600];
  const corner = (u: number, v: number) => ({ u, v });
  const stroke = (from: { u: number; v: number }, to: { u: number; v: number }) =>
    ({ from, to, kind: 'visible', bright: true }) as const;
  return {
    ...BLANK,
    square: false,
    title: 'A thin board',
    inWords: 'A thin board.',
    width: 2000,
    height: 1000,
    strokes: [
      stroke(corner(left, low), corner(left, high)),
      stroke(corner(right, low), corner(right, high)),
    ],
    marks: [
      {
        text: 'Q',
        part: 'thin',
        on: corner(right, 300),
        room: { width: 1, height: 1 },
        bright: true,
      },
    ],
  };
}

describe('a mark that has no room on its part', () => {
  test.each([
    [false, /●-+\[Q\]/],
    [true, /o=+\[Q\]/],
  ])('stands beside it with a leader that ends on it, plain: %s', (ascii, leader) => {
    const { lines } = setInCells(thin(), { columns: 60, rows: 12 }, { ascii });
    const text = lines.map(line => line.text);
    expect(text.filter(line => leader.test(line))).toHaveLength(1);
    // The end lies in the column of the board, which goes on above and below.
    const row = text.findIndex(line => leader.test(line));
    const column = text[row]?.search(leader) ?? -1;
    expect(text[row - 1]?.[column]).toBe(ascii ? '|' : '│');
    expect(text[row + 1]?.[column]).toBe(ascii ? '|' : '│');
  });
});
