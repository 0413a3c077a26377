import { describe, expect, test } from 'vitest';
import type { Context } from '../../../src/ui/screen.js';
import { stepScreen } from '../../../src/ui/screens/step/screen.js';
import type { Event } from '../../../src/workbook/events.js';
import {
  allTold,
  benchPlan,
  buildAfter,
  contextWith,
  MINUTE_MS,
  TUESDAY_MS,
  usedWith,
} from '../../support/open-build.js';
import { viewLines } from '../../support/screen-page.js';

const BENCH = benchPlan();
const TOLD = allTold(BENCH);
const CUT = BENCH.steps.find(({ phase, tally }) => phase === 'cut' && tally?.count === 25);
const CUT_ID = CUT?.id ?? '';

/** What the helper reads at a step, from the top. */
function forTheHelper(step: string, events: readonly Event[], rest: Partial<Context> = {}) {
  const visited: Event = { kind: 'step-visited', atMs: TUESDAY_MS, step };
  const build = buildAfter([...TOLD, visited, ...events], BENCH);
  const used = usedWith(stepScreen, contextWith(build, rest)).wait(400).press('h');
  return viewLines(stepScreen, used.state, used.at).join('\n');
}

describe('the first page for the helper, at 80 by 24, has what the work needs', () => {
  const half: readonly Event[] = [
    { kind: 'piece-done', atMs: TUESDAY_MS, step: CUT_ID, count: 7 },
    { kind: 'check-made', atMs: TUESDAY_MS, step: CUT_ID, check: 0 },
    { kind: 'note-written', atMs: TUESDAY_MS, step: CUT_ID, text: 'two for spare' },
  ];

  test('the figure, the count, the checks with their numbers, and the note', () => {
    const text = forTheHelper(CUT_ID, half);
    expect(text).toMatch(/^18 in: /m);
    expect(text).toMatch(/^7 of 25 pieces {2}█{7}░{18}$/m);
    expect(text).toMatch(/^\[x\] 1 /m);
    expect(text).toMatch(/^\[ \] 2 /m);
    expect(text).toContain('Note: two for spare');
  });

  test('the timer of the step as it runs', () => {
    const started: Event = {
      kind: 'timer-started',
      atMs: TUESDAY_MS,
      timer: 'seal/soak',
      name: 'Sealer soaking in',
      lastsMinutes: 15,
      then: 'Wipe it.',
      step: 'seal',
    };
    const timer = BENCH.steps.find(({ id }) => id === 'seal')?.timers[0];
    const own = { ...started, timer: timer?.id ?? '', name: timer?.name ?? '' };
    const nowMs = TUESDAY_MS + 5 * MINUTE_MS;
    expect(forTheHelper('seal', [own], { nowMs })).toMatch(/^Timer .*: 10 min left$/m);
  });

  test("whose it is, and that the saw is not the helper's", () => {
    const text = forTheHelper(CUT_ID, half);
    expect(text).toContain('You two do this together. Only the lead holds: miter saw.');
    expect(text).toContain('Say it: "Hands stay 6-3/8 in from the blade');
  });

  test('where the lead saws alone no tool is told as what the helper holds', () => {
    const size = { columns: 80, rows: 90 };
    expect(forTheHelper(CUT_ID, half, { size })).toMatch(/^What you hold$/m);
    const text = forTheHelper('notch-posts', [], { size });
    expect(text).toContain('The lead does this.');
    expect(text).not.toMatch(/What you hold|^- jigsaw/m);
  });
});

describe('all of it', () => {
  test('at 120 by 40 has the why, the figures, the words and the picture beside', () => {
    const text = forTheHelper('seat-rails', [], { size: { columns: 120, rows: 34 } });
    for (const part of ['Why  ', 'Figures', 'Words']) expect(text).toContain(part);
    expect(text).toMatch(/[┌│└]/);
  });

  test('at 80 by 24 the picture is the last page, and told in words to those who listen', () => {
    const build = buildAfter(
      [...TOLD, { kind: 'step-visited', atMs: TUESDAY_MS, step: 'seat-rails' }],
      BENCH,
    );
    const used = usedWith(stepScreen, contextWith(build)).wait(400).press('h').press('end');
    const lines = viewLines(stepScreen, used.state, used.at);
    expect(lines.join('\n')).toContain('(v: larger, and turned)');
    expect(lines.slice(5).join('')).toMatch(/[┌│└]/);
  });
});
