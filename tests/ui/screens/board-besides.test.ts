import { describe, expect, test } from 'vitest';
import { inches } from '../../../src/measure/inch.js';
import { settingsNow } from '../../../src/plan/cut-step-now.js';
import { makePlan } from '../../../src/plan/make-plan.js';
import { onDay } from '../../../src/plan/on-day.js';
import { boardsPage } from '../../../src/plan/pages/boards-page.js';
import type { Answers } from '../../../src/recipe/values.js';
import { benchOf } from '../../../src/ui/bench-of.js';
import { openBuild } from '../../../src/ui/build.js';
import type { Build } from '../../../src/ui/screen.js';
import { pauseScreen } from '../../../src/ui/screens/pause/screen.js';
import { planScreen } from '../../../src/ui/screens/plan/screen.js';
import { resumeScreen } from '../../../src/ui/screens/resume/screen.js';
import type { Event } from '../../../src/workbook/events.js';
import { fromSaved, toSaved } from '../../../src/workbook/saved.js';
import { ANSWERS, benchBuild } from '../../support/measured-build.js';
import { contextWith, ROOM, TUESDAY_MS, usedWith } from '../../support/open-build.js';
import { viewLines } from '../../support/screen-page.js';

const PLANNER = { plan: makePlan, onDay };

/** Made-up prices: 10 ft of 2x4 for 9.35, 6 ft for 5.61. */
const PRICED: Answers = {
  ...ANSWERS,
  offers: {
    kind: 'offers',
    value: [
      { section: '2x4', length: inches(120), cents: 935 },
      { section: '2x4', length: inches(72), cents: 561 },
    ],
  },
};

const PLANNED = buildOf([]);

/** The end panels stand an inch farther apart than planned: longer rails, and a stretcher in the middle that no board has room for. */
const LONGER: Event = {
  kind: 'size-measured',
  atMs: TUESDAY_MS + 1000,
  step: PLANNED.plan.steps[0]?.id ?? '',
  what: 'seat',
  readings: [inches(49)],
  value: inches(49),
  isTaken: true,
  cut: [],
};
const BOUGHT: Event = {
  kind: 'board-added',
  atMs: TUESDAY_MS + 2000,
  section: '2x4',
  length: inches(72),
  count: 1,
};
const UNDONE: Event = { kind: 'taken-back', atMs: TUESDAY_MS + 3000 };

function buildOf(events: readonly Event[]): Build {
  const { workbook, recipe } = benchBuild(events);
  const priced = { ...workbook, answers: PRICED };
  const opened = openBuild({ ok: true, workbook: priced, recipe }, PLANNER);
  if (!opened.ok) throw new Error(opened.problem);
  return opened.build;
}

const TO_BUY = '1 x 6 ft of 2x4, 5.61';

function at(build: Build) {
  return contextWith(build, { size: ROOM[80] ?? { columns: 80, rows: 18 } });
}

function onPause(build: Build): string {
  const used = usedWith(pauseScreen, at(build)).press('enter');
  return viewLines(pauseScreen, used.state, { ...used.at, size: { columns: 120, rows: 40 } }).join(
    '\n',
  );
}

function onBoardsPage(build: Build): string {
  const used = usedWith(planScreen, at(build)).press('5');
  return viewLines(planScreen, used.state, used.at).join('\n');
}

function onReturn(build: Build): string {
  return viewLines(resumeScreen, resumeScreen.open(at(build)), at(build)).join('\n');
}

/** What the stops say that cut from 2x4. */
function atTheStops(build: Build): string {
  return build.plan.steps
    .filter(({ phase, id }) => phase === 'cut' && id.includes('/2x4@'))
    .flatMap(step => settingsNow(step, benchOf(build)).map(({ text }) => text))
    .join('\n');
}

describe('a board that a measured length asks for once the others are bought', () => {
  test('has to be bought wherever boards to buy are told, with its price', () => {
    const build = buildOf([LONGER]);
    expect(onPause(build)).toContain(`Buy before next time: ${TO_BUY}.`);
    expect(onBoardsPage(build)).toContain(`STILL TO BUY: ${TO_BUY}.`);
    expect(onBoardsPage(build)).toContain('Measured lengths ask for 1 board more than was bought.');
    expect(onReturn(build)).toContain(TO_BUY);
  });

  test('is not sent for to the saw without a word', () => {
    expect(atTheStops(buildOf([LONGER]))).toContain(
      '1 x stretcher: from a new 6 ft board (to buy)',
    );
    expect(atTheStops(PLANNED)).not.toContain('to buy');
  });

  // What was paid before is still what was paid: ten boards of 9.35 are 93.50, and 5.61 with them 99.11.
  test('is not among the boards that were bought, and its price is told beside theirs', () => {
    const page = onBoardsPage(buildOf([LONGER]));
    expect(page).toContain('Planned: 10 boards, 93.50. Now: 11 boards, 99.11.');
    const table = boardsPage(buildOf([LONGER]).plan).blocks.find(({ kind }) => kind === 'table');
    expect(table).toEqual(boardsPage(PLANNED.plan).blocks.find(({ kind }) => kind === 'table'));
  });

  test('is not told any more once it is entered as bought; the stops name it', () => {
    const build = buildOf([LONGER, BOUGHT]);
    expect(onPause(build)).not.toContain('Buy before next time');
    expect(onBoardsPage(build)).not.toContain('STILL TO BUY');
    expect(onBoardsPage(build)).toContain('1 board of 6 ft came to the rack.');
    expect(onReturn(build)).not.toContain('Buy first');
    expect(atTheStops(build)).toContain('1 x stretcher: from the added 6 ft board');
    expect(atTheStops(build)).not.toContain('to buy');
  });

  test('goes with the measured length when that is taken back', () => {
    const build = buildOf([LONGER, UNDONE]);
    expect(onPause(build)).not.toContain('Buy before next time');
    expect(onBoardsPage(build)).not.toContain('STILL TO BUY');
    expect(atTheStops(build)).toBe(atTheStops(PLANNED));
  });

  test('is asked for again after the build was closed and opened', () => {
    const { workbook, recipe } = buildOf([LONGER]);
    const read = fromSaved(toSaved(workbook));
    if (!read.ok) throw new Error('damaged');
    const opened = openBuild({ ok: true, workbook: read.workbook, recipe }, PLANNER);
    expect(opened.ok && onPause(opened.build)).toContain(TO_BUY);
  });

  test('is told only once where a slip asks for a board too that serves both', () => {
    const slip: Event = {
      kind: 'board-spoiled',
      atMs: TUESDAY_MS + 1500,
      section: '2x4',
      place: 2,
      board: 'board 3',
      from: inches(90),
      to: inches(120),
      then: '',
      buy: '',
    };
    const told = onBoardsPage(buildOf([LONGER, slip]));
    expect(told.match(/STILL TO BUY: 1 x \d+ ft of 2x4/g)).toHaveLength(1);
    expect(told).toContain('Now: 11 boards');
  });
});
