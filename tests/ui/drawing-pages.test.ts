import { describe, expect, test } from 'vitest';
import { drawings } from '../../src/drawing/drawings.js';
import { setInCells } from '../../src/ui/canvas.js';
import { bestSight, closer, pictureOf } from '../../src/ui/pictures.js';
import { subjectOf } from '../../src/ui/screens/step/subject.js';
import { benchPlan } from '../support/open-build.js';

/**
 * The drawings of the bench as they stand on the screen, kept under tests/pages. Each was looked at before
 * it was kept: whoever changes how things are drawn looks again, as somebody in a garage who has to
 * know what goes where.
 */
const plan = benchPlan();

/** What a drawing has of a window: 80x24 leaves 16 rows under head, title and keys, 140x45 37. */
const ROOMS = { 80: { columns: 80, rows: 16 }, 140: { columns: 140, rows: 37 } } as const;
type Window = keyof typeof ROOMS;

const NAMED: readonly (readonly [string, Window, boolean])[] = [
  ['corner-right', 140, false],
  ['corner-back-left', 140, true],
  ['above', 80, false],
  ['end', 140, false],
  ['section-planter-box', 80, false],
  ['section-planter-box', 80, true],
  ['section-planter-box', 140, false],
  ['apart-end-panel', 140, false],
  ['joint-a', 80, false],
  ['joint-b', 80, true],
  ['joint-g', 140, false],
  ['screws-corner-1', 80, false],
  ['screws-bearer-rail-1', 80, false],
  ['screws-slat-hold-2', 80, true],
  ['screws-box-corner-1', 140, false],
  ['template-g', 80, false],
];

describe('a drawing of the bench', () => {
  test.each(NAMED)('%s in a window of %i columns, plain: %s', async (name, window, ascii) => {
    const drawing = drawings(plan)
      .find(one => one.name === name)
      ?.draw();
    if (drawing === undefined) throw new Error(`no drawing ${name}`);
    const picture = setInCells(drawing, ROOMS[window], { ascii });
    const note = picture.note === undefined ? [] : [picture.note];
    const lines = picture.lines.map(({ text }) => text);
    const page = [drawing.title, '', ...lines, '', ...note, ...drawing.notes, ''].join('\n');
    const file = `../pages/drawing-${name}-${window}${ascii ? '-ascii' : ''}.txt`;
    await expect(page).toMatchFileSnapshot(file);
  });
});

/** Steps by what they do, and how often the key for a closer look was pressed. */
const STEPS: readonly (readonly [string, number, Window, boolean])[] = [
  ['end-corners', 0, 80, false],
  ['end-corners', 0, 80, true],
  ['end-corners', 0, 140, false],
  ['end-corners', 1, 80, false],
  ['end-infill', 0, 140, false],
  ['stand', 0, 140, false],
  ['seat-rails', 0, 140, false],
  ['seat-rails', 1, 80, false],
  ['slats', 0, 80, false],
  ['slats', 0, 140, false],
  ['slats', 1, 80, true],
  ['box-close', 0, 140, false],
  ['floor', 0, 140, false],
  ['floor', 0, 140, true],
  ['place', 0, 140, false],
  ['pots', 0, 140, false],
  ['notch-seat-rails', 0, 80, false],
  ['notch-seat-rails', 1, 80, false],
];

describe('the picture of a step', () => {
  test.each(STEPS)('%s, closer %i times, in %i columns, plain: %s', async (...row) => {
    const [id, close, window, ascii] = row;
    const step = plan.steps.find(one => one.id === id);
    if (step === undefined) throw new Error(`no step ${id}`);
    const subject = subjectOf(step, plan);
    const frame = { ...ROOMS[window], ascii };
    let sight = bestSight(subject, frame);
    for (let i = 0; i < close; i += 1) sight = closer(sight, subject);
    const { title, lines, note, under } = pictureOf(subject, sight, frame);
    const page = [
      `${title}: ${step.title}`,
      '',
      ...lines.map(({ text }) => text),
      '',
      ...(note === undefined ? [] : [note]),
      ...under,
      '',
    ].join('\n');
    const name = `${id}${close > 0 ? `-closer-${close}` : ''}-${window}${ascii ? '-ascii' : ''}`;
    await expect(page).toMatchFileSnapshot(`../pages/picture-${name}.txt`);
  });
});

describe('what every drawing on the screen keeps to', () => {
  const rooms = [ROOMS[80], ROOMS[140], { columns: 40, rows: 12 }];

  test.each(drawings(plan).map(one => [one.name, one] as const))(
    '%s stays in its room',
    (_, one) => {
      const drawing = one.draw();
      for (const { columns, rows } of rooms) {
        for (const ascii of [false, true]) {
          const { lines } = setInCells(drawing, { columns, rows }, { ascii });
          expect(lines.length).toBeLessThanOrEqual(rows);
          for (const { text } of lines) {
            expect(text.length).toBeLessThanOrEqual(columns);
            if (ascii) expect(text).toMatch(/^[ -~]*$/);
          }
        }
      }
    },
  );
});
