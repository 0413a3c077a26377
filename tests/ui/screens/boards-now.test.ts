import { describe, expect, test } from 'vitest';
import { inches } from '../../../src/measure/inch.js';
import { planScreen } from '../../../src/ui/screens/plan/screen.js';
import { resumeScreen } from '../../../src/ui/screens/resume/screen.js';
import type { Event } from '../../../src/workbook/events.js';
import { buildAfter, contextWith, ROOM, TUESDAY_MS, usedWith } from '../../support/open-build.js';
import { rackPlan, stepAt } from '../../support/rack-plan.js';
import { screenPage, viewLines } from '../../support/screen-page.js';

const { plan: PLAN, setting: SETTING } = rackPlan({
  pieces: [
    ['A', 45, 4, 'Rail'],
    ['B', 30, 7, 'Slat'],
    ['C', 14, 4, 'Foot'],
  ],
  store: [[96, 748]],
});

const atMs = TUESDAY_MS;

/** Two rails are cut, then a split shows in board 4, then the second rail is cut too short. */
const SPOILED: readonly Event[] = [
  { kind: 'build-started', atMs },
  { kind: 'piece-done', atMs, step: stepAt(45), count: 2 },
  {
    kind: 'board-spoiled',
    atMs,
    section: '2x4',
    place: 3,
    board: 'board 4',
    from: inches(40),
    to: inches(96),
    then: '',
    buy: '1 x 8 ft of 2x4, 7.48',
  },
  {
    kind: 'piece-spoiled',
    atMs,
    step: stepAt(45),
    section: '2x4',
    mark: 'A',
    what: 'short',
    left: inches(44.5),
    good: 1,
    then: '',
    buy: '',
  },
];

function at(events: readonly Event[], columns = 80) {
  const build = buildAfter(events, PLAN);
  const answers = { offers: { kind: 'offers', value: SETTING.offers } } as const;
  return contextWith(
    { ...build, workbook: { ...build.workbook, answers } },
    { size: ROOM[columns] ?? { columns, rows: 18 } },
  );
}

describe('the boards as they are now', () => {
  test('are not told before the first cut', () => {
    const used = usedWith(planScreen, at([{ kind: 'build-started', atMs }])).press('5');
    const lines = viewLines(planScreen, used.state, used.at).join('\n');
    expect(lines).not.toContain('now');
    expect(lines).toContain('Boards to buy');
  });

  // By hand: 7.48 x 5 are 37.40. Board 4 keeps a slat in its 40 in; two slats take a sixth board, whose
  // 96 - 3/8 - 2 x 30-1/8 = 35-3/8 in are too short for a new rail of 45 in. The 44-1/2 in that are sound of the rail
  // become a slat, which frees 30-1/8 in of the sixth board: 65-1/2 in, and the new rail comes out of it.
  test('tell what happened, what was planned, and what is still to buy', () => {
    const used = usedWith(planScreen, at(SPOILED)).press('5');
    const lines = viewLines(planScreen, used.state, used.at).join('\n');
    expect(lines).toContain('Board 4 is bad from 40 in to 96 in.');
    expect(lines).toContain('Planned: 5 boards, 37.40. Now: 6 boards, 44.88.');
    expect(lines).toContain('STILL TO BUY: 1 x 8 ft of 2x4, 7.48.');
  });

  test('are in the recap: what to buy first, and how far the cutting is', () => {
    const context = at(SPOILED);
    const lines = viewLines(resumeScreen, resumeScreen.open(context), context).join('\n');
    expect(lines).toContain('Buy first  1 x 8 ft of 2x4, 7.48');
    expect(lines).toContain('2x4: 1 of 15 pieces cut');
  });

  test.each([80, 60])('as pages in a window of %i columns', async columns => {
    const used = usedWith(planScreen, at(SPOILED, columns)).press('5').wait(400);
    const top = screenPage(planScreen, used.state, used.at);
    used.press('page-down');
    const below = screenPage(planScreen, used.state, used.at);
    const recap = screenPage(resumeScreen, resumeScreen.open(used.at), used.at);
    await expect(`${top}\n${below}\n${recap}`).toMatchFileSnapshot(
      `../../pages/boards-now-${columns}.txt`,
    );
  });
});
