import { describe, expect, test } from 'vitest';
import { careSheetPage } from '../../src/plan/pages/care-sheet-page.js';
import { pageLines } from '../../src/text/page-lines.js';
import { daysAtBench } from '../../src/workbook/days-at-bench.js';
import type { Event } from '../../src/workbook/events.js';
import { careDays } from '../../src/workbook/hand-over.js';
import { buildRecordPage } from '../../src/workbook/pages/build-record-page.js';
import { measuredRows } from '../../src/workbook/pages/measured-rows.js';
import { progressOf } from '../../src/workbook/progress.js';
import { build, HOUR, MINUTE, TUESDAY_14 } from '../support/journal.js';
import { benchPlan } from '../support/open-build.js';
import { smallPlan } from '../support/small-plan.js';

const PLAN = smallPlan();
const THURSDAY_14 = TUESDAY_14 + 48 * HOUR;

/** Tuesday's cutting with a spoiled piece, Thursday's gluing, sealing and hand-over. */
const BUILT: readonly Event[] = [
  { kind: 'build-started', atMs: TUESDAY_14 },
  { kind: 'step-visited', atMs: TUESDAY_14, step: 'measure' },
  { kind: 'check-made', atMs: TUESDAY_14 + 10 * MINUTE, step: 'measure', check: 0 },
  { kind: 'step-done', atMs: TUESDAY_14 + 10 * MINUTE, step: 'measure' },
  { kind: 'piece-done', atMs: TUESDAY_14 + 20 * MINUTE, step: 'cut/2x4@45', count: 2 },
  {
    kind: 'piece-spoiled',
    atMs: TUESDAY_14 + 25 * MINUTE,
    step: 'cut/2x4@45',
    section: '2x4',
    mark: 'A',
    what: 'short',
    left: 44 * 25.4,
    good: 1,
    then: 'Cut it from board 1 of the rack.',
    buy: '',
  },
  { kind: 'piece-done', atMs: TUESDAY_14 + 35 * MINUTE, step: 'cut/2x4@45', count: 1 },
  { kind: 'step-done', atMs: TUESDAY_14 + 40 * MINUTE, step: 'cut/2x4@45' },
  { kind: 'paused', atMs: TUESDAY_14 + 45 * MINUTE, step: 'ends', note: 'buy brads' },
  { kind: 'resumed', atMs: THURSDAY_14 },
  {
    kind: 'timer-started',
    atMs: THURSDAY_14 + 30 * MINUTE,
    timer: 'ends/clamp',
    name: 'Clamps on the end panels',
    lastsMinutes: 30,
    then: 'Take the clamps off.',
    step: 'ends',
  },
  { kind: 'step-done', atMs: THURSDAY_14 + 31 * MINUTE, step: 'ends' },
  { kind: 'step-done', atMs: THURSDAY_14 + 60 * MINUTE, step: 'rails' },
  { kind: 'step-done', atMs: THURSDAY_14 + 90 * MINUTE, step: 'seal' },
  {
    kind: 'note-written',
    atMs: THURSDAY_14 + 91 * MINUTE,
    step: 'seal',
    text: 'honey tone, 3 parts to 1',
  },
  { kind: 'step-done', atMs: THURSDAY_14 + 100 * MINUTE, step: 'hand-over' },
];

const RECORDED = { workbook: build(BUILT), plan: PLAN, progress: progressOf(BUILT) };

function record(): string {
  return pageLines(buildRecordPage(RECORDED, 'UTC'), 76).join('\n');
}

describe('days of the care sheet', () => {
  /** `date -d '2026-11-26 +28 days'`: Thursday, December 24, 2026. */
  test('screws are tightened four weeks after the hand-over', () => {
    expect(careDays(BUILT, PLAN, 'UTC')).toMatchObject({
      handedOver: 'Thu, Nov 26, 2026',
      tighten: 'Thu, Dec 24, 2026',
    });
  });

  test('sealing is due within the years that the coat usually lasts', () => {
    expect(careDays(BUILT, PLAN, 'UTC')).toMatchObject({
      sealFrom: 'November 2027',
      sealBy: 'November 2028',
    });
  });

  test('a piece that is not handed over has no days, and lines to write them on', () => {
    const early = BUILT.slice(0, -1);
    expect(careDays(early, PLAN, 'UTC')).toBe(undefined);
    const lines = pageLines(careSheetPage(PLAN), 76).join('\n');
    expect(lines).toContain('After four weeks, on ____________');
  });

  test('a hand-over that was taken back does not count', () => {
    const back: Event = { kind: 'taken-back', atMs: THURSDAY_14 + 101 * MINUTE };
    expect(careDays([...BUILT, back], PLAN, 'UTC')).toBe(undefined);
  });
});

describe('the care sheet of the bench', () => {
  const page = pageLines(careSheetPage(benchPlan()), 76).join(' ').replace(/\s+/g, ' ');

  /** 2010 ADA Standards, 903.6: a bench carries 250 lb at any point of the seat. */
  test('tells the load by its sum, with the standard', () => {
    expect(page).toMatch(/Seat rail: one heavy person .*: 250 lb in the middle of .*903\.6/);
  });

  test('says who decides where the sums end, and promises nothing', () => {
    expect(page).toMatch(/local building code and a licensed engineer/);
    expect(page).not.toMatch(/\bsafe\b/i);
  });

  test('tells soaked pots and soil apart, and that rags burn', () => {
    expect(page).toMatch(/soaked pots weigh about \d+ lb in each; filled with soil/);
    expect(page).toContain('Rags with this sealer catch fire by themselves');
  });
});

describe('the build record', () => {
  test('hours are those of the journal: 45 min and 1 h 40 min, the days between left out', () => {
    expect(daysAtBench(BUILT, 'UTC')).toEqual([
      {
        day: 'Tue, Nov 24, 2026',
        fromMs: TUESDAY_14,
        toMs: TUESDAY_14 + 45 * MINUTE,
        workedMs: 45 * MINUTE,
      },
      {
        day: 'Thu, Nov 26, 2026',
        fromMs: THURSDAY_14,
        toMs: THURSDAY_14 + 100 * MINUTE,
        workedMs: 100 * MINUTE,
      },
    ]);
    expect(record()).toContain('about 2 h 25 min at the bench by this journal');
  });

  test('a build that was only looked at has no day', () => {
    expect(daysAtBench(BUILT.slice(0, 2), 'UTC')).toEqual([]);
  });

  test('a mistake is told with how it was mended', () => {
    expect(record().replace(/\s+/g, ' ')).toContain(
      'Tue, Nov 24, 2026, "Cut the seat rails: 2 at 45 in": 1 x A (2x4) cut too short, 44 in of it left sound. Cut it from board 1 of the rack.',
    );
  });

  test('notes of work and of pauses are kept for next time', () => {
    expect(record()).toContain('"Seal": honey tone, 3 parts to 1');
    expect(record()).toContain('buy brads');
  });

  test('what was ticked off with checks open is told', () => {
    const open = record().replace(/\s+/g, ' ');
    expect(open).toContain('Seal: not ticked: No shiny patches after wiping.');
    expect(open).not.toContain('Measure the place: not ticked');
  });

  test('what was measured stands beside what was planned, with its readings', () => {
    const measured: readonly Event[] = [
      {
        kind: 'size-measured',
        atMs: TUESDAY_14,
        step: 'measure',
        what: '2x4.width',
        readings: [3.4375 * 25.4, 3.4375 * 25.4],
        value: 3.4375 * 25.4,
        isTaken: true,
        cut: [],
      },
      {
        kind: 'first-measured',
        atMs: TUESDAY_14,
        step: 'cut/2x4@45',
        planned: 45 * 25.4,
        measured: 44.9375 * 25.4,
        isRight: false,
        ticks: false,
      },
      {
        kind: 'diagonals-measured',
        atMs: THURSDAY_14,
        step: 'ends',
        number: 1,
        long: 17 * 25.4,
        wide: 15 * 25.4,
        one: 22.6875 * 25.4,
        other: 22.625 * 25.4,
      },
    ];
    const row = {
      id: '2x4.width',
      say: 'Width of the 2x4, on several boards',
      kind: 'board',
      take: 'average',
      steps: [],
      planned: { ...PLAN.overall.width, value: 3.5 * 25.4 },
    } as const;
    const plan = { ...PLAN, measures: [row] };
    expect(measuredRows({ plan, progress: progressOf(measured) }, 'UTC')).toEqual([
      'Tue, Nov 24, 2026: Width of the 2x4, on several boards: 3-7/16 in (readings 3-7/16 in, 3-7/16 in), planned 3-1/2 in; built by it.',
      'Tue, Nov 24, 2026: "Cut the seat rails: 2 at 45 in", first piece: 44-15/16 in, wanted 45 in; not right, the stop was set anew.',
      'Thu, Nov 26, 2026: "Glue and screw the end panels", frame 1: 22-11/16 in and 22-5/8 in from corner to corner.',
    ]);
  });

  test('glue is told by the clock', () => {
    expect(record()).toContain('Thu, Nov 26, 2026 14:30: Clamps on the end panels, 30 min');
  });
});
