import { describe, expect, test } from 'vitest';
import type { Plan } from '../../../src/plan/plan.js';
import { toolsOf } from '../../../src/plan/tool-rows.js';
import type { Context } from '../../../src/ui/screen.js';
import { stepScreen } from '../../../src/ui/screens/step/screen.js';
import type { Event } from '../../../src/workbook/events.js';
import {
  benchPlan,
  buildAfter,
  contextWith,
  MINUTE_MS,
  ROOM,
  TUESDAY_MS,
  usedWith,
} from '../../support/open-build.js';
import { screenPage, viewLines } from '../../support/screen-page.js';
import { smallPlan } from '../../support/small-plan.js';

/** The small bench with the tools of the trade and what is told about them. */
const PLAN: Plan = { ...smallPlan(), tools: toolsOf(smallPlan().steps) };
const CUTTING: readonly Event[] = [
  { kind: 'build-started', atMs: TUESDAY_MS },
  { kind: 'step-done', atMs: TUESDAY_MS, step: 'measure' },
  { kind: 'tools-briefed', atMs: TUESDAY_MS, tools: ['tape'] },
];
/** October 20, two weeks before. */
const OCTOBER_MS = TUESDAY_MS - 14 * 24 * 60 * MINUTE_MS;
const CAME: Event = {
  kind: 'helper-came',
  atMs: TUESDAY_MS,
  tools: [
    { tool: 'miter-saw', atMs: OCTOBER_MS },
    { tool: 'tape', atMs: OCTOBER_MS },
  ],
  alone: 3,
  together: 12,
};

function at(events: readonly Event[], plan: Plan = PLAN, rest: Partial<Context> = {}) {
  return usedWith(stepScreen, contextWith(buildAfter(events, plan), rest));
}

function pressed(keys: string, events: readonly Event[], plan: Plan = PLAN) {
  const used = at(events, plan);
  for (const key of keys.split(' ')) used.wait(400).press(key);
  return used;
}

function recorded({ asks }: ReturnType<typeof pressed>) {
  return asks.flatMap(ask => (ask.kind === 'record' ? ask.events : []));
}

describe('before a tool is first used', () => {
  test('it is told, then asked back, then signed off by the lead: each on disk', () => {
    expect(recorded(pressed('space space', CUTTING))).toEqual([
      { kind: 'briefed', atMs: TUESDAY_MS + 400, caution: 'miter-saw' },
      { kind: 'tools-briefed', atMs: TUESDAY_MS + 800, tools: ['miter-saw'] },
    ]);
  });

  /** Set up the saw: miter saw read and asked back, square and stop block shown, and one card for the rest. */
  test('before the first cut four cards are told, and the lead sees how many there are', () => {
    const bench = benchPlan();
    const used = at(
      [
        { kind: 'tools-briefed', atMs: TUESDAY_MS, tools: ['tape', 'pencil'] },
        { kind: 'briefed', atMs: TUESDAY_MS, caution: 'lifting' },
        { kind: 'step-done', atMs: TUESDAY_MS, step: 'buy' },
        { kind: 'step-visited', atMs: TUESDAY_MS, step: 'set-up' },
      ],
      bench,
      { size: { columns: 80, rows: 40 } },
    );
    const cards: string[] = [];
    for (;;) {
      const [title = ''] = viewLines(stepScreen, used.state, used.at);
      if (!title.startsWith('Before: ')) break;
      cards.push(title.replace(/^Before: .*? {2,}/, ''));
      used.wait(400).press('space');
    }
    expect(cards).toEqual(['1 of 4 to tell', '2 of 4 to tell', '3 of 4 to tell', '4 of 4 to tell']);
    expect(used.at.build?.progress.briefed).toEqual(
      new Set(['lifting', 'miter-saw', 'electric', 'noise', 'dust']),
    );
  });

  test('what was told at the miter saw is not told, nor counted, at the jigsaw', () => {
    const bench = benchPlan();
    const told: readonly Event[] = [
      ...['miter-saw', 'electric', 'noise', 'dust'].map(
        (caution): Event => ({ kind: 'briefed', atMs: TUESDAY_MS, caution }),
      ),
      { kind: 'step-done', atMs: TUESDAY_MS, step: 'set-up' },
      { kind: 'step-visited', atMs: TUESDAY_MS, step: 'test-notch' },
    ];
    const lines = viewLines(stepScreen, at(told, bench).state, at(told, bench).at);
    // Jigsaw and chisel are read and asked back, pencil, square, mallet and clamps shown.
    expect(lines[0]).toMatch(/^Before: .* 1 of 5 to tell$/);
  });

  test('no piece is counted and no check ticked before that', () => {
    expect(recorded(pressed('+ 1 space + 1', CUTTING)).map(({ kind }) => kind)).toEqual([
      'briefed',
    ]);
  });

  test('undo asks it again', () => {
    const used = pressed('space space u u', CUTTING);
    expect(used.at.build?.progress.toolsBriefed.has('miter-saw')).toBe(false);
    expect(used.at.build?.progress.briefed.has('miter-saw')).toBe(true);
  });

  test('tools that hardly hurt are told on one page', () => {
    const used = at([{ kind: 'build-started', atMs: TUESDAY_MS }], benchPlan());
    for (let press = 0; press < 3; press += 1) used.wait(400).press('space');
    expect(recorded(used)[0]).toMatchObject({
      kind: 'tools-briefed',
      tools: ['tape', 'level', 'pencil'],
    });
  });

  test('a build from before tools were signed off asks once, and goes on', () => {
    const old: readonly Event[] = [
      { kind: 'build-started', atMs: TUESDAY_MS },
      { kind: 'step-done', atMs: TUESDAY_MS, step: 'measure' },
      ...['miter-saw', 'dust'].map(
        (caution): Event => ({ kind: 'briefed', atMs: TUESDAY_MS, caution }),
      ),
    ];
    const used = pressed('space space', old);
    expect(recorded(used).map(({ kind }) => kind)).toEqual(['tools-briefed', 'tools-briefed']);
    expect(recorded(used.wait(400).press('space')).at(-1)?.kind).toBe('piece-done');
  });

  test('who builds alone reads cautions and is asked nothing', () => {
    const alone = { ...PLAN, time: { ...PLAN.time, people: 1 } };
    const kinds = recorded(pressed('space space space', CUTTING, alone)).map(({ kind }) => kind);
    expect(kinds).toEqual(['briefed', 'briefed', 'piece-done', 'piece-done']);
  });
});

describe('a helper who was there before', () => {
  const again: readonly Event[] = [...CUTTING.slice(0, 2), CAME];

  test('hears it in short, and one key signs it off', () => {
    const events = recorded(pressed('space', again));
    expect(events.map(({ kind }) => kind)).toEqual(['briefed', 'tools-briefed']);
  });

  test('another one hears all of it, and undo takes that back', () => {
    const used = pressed('f', again);
    expect(recorded(used).map(({ kind }) => kind)).toEqual(['helper-changed']);
    expect(used.at.build?.progress.helperBefore).toBe(undefined);
    used.wait(400).press('u').wait(400).press('u');
    expect(used.at.build?.progress.helperBefore?.tools.size).toBe(2);
  });

  test('f does nothing where nobody is asked', () => {
    expect(pressed('f', CUTTING).asks).toEqual([]);
  });
});

describe("the helper's view", () => {
  test.each(['h h', 'h escape', 'g g', 'h g escape', 'w h c g g'])('%s leads back', keys => {
    expect(pressed(keys, CUTTING).state.pane.kind).toBe('work');
  });

  test('a clicker reads it to its end, and then it is closed', () => {
    const used = pressed('h space', CUTTING);
    expect(used.state.pane).toMatchObject({ kind: 'helper' });
    expect(used.state.pane).not.toMatchObject({ top: 0 });
    for (let page = 0; page < 5 && used.state.pane.kind === 'helper'; page += 1) {
      used.wait(400).press('space');
    }
    expect(used.state.pane.kind).toBe('work');
    expect(used.at.build?.progress.tallies.size).toBe(0);
  });

  test.each(['h v', 'h v space'])('the picture is one key from it: %s', keys => {
    expect(pressed(keys, CUTTING).state.pane.kind).toBe(keys === 'h v' ? 'picture' : 'work');
  });

  test('words are one key from it', () => {
    expect(pressed('h g', CUTTING).state.pane.kind).toBe('words');
  });
});

describe.each([80, 60])('pages in a window of %i columns', columns => {
  const size = ROOM[columns] ?? { columns, rows: 14 };
  const bench = benchPlan();
  const seen = (id: string): readonly Event[] => [
    { kind: 'build-started', atMs: TUESDAY_MS },
    { kind: 'step-visited', atMs: TUESDAY_MS, step: id },
  ];
  const cutStep = bench.steps.find(({ title }) => title.startsWith('Cut 2 at 48 in'))?.id ?? '';

  async function page(name: string, events: readonly Event[], keys: string, plan = PLAN) {
    const used = at(events, plan, { size }).wait(400);
    for (const key of keys.split(' ').filter(it => it !== '')) used.press(key).wait(400);
    const text = screenPage(stepScreen, used.state, used.at);
    await expect(text).toMatchFileSnapshot(`../../pages/${name}-${columns}.txt`);
  }

  test('a tool that can hurt is read aloud', () => page('brief-read', CUTTING, ''));

  test('and asked back', () =>
    page(
      'brief-ask',
      [...CUTTING, { kind: 'briefed', atMs: TUESDAY_MS, caution: 'miter-saw' }],
      '',
    ));

  test('quiet tools on one page', () =>
    page('brief-tell', [{ kind: 'build-started', atMs: TUESDAY_MS }], '', bench));

  test('in short, to somebody who knows it', () =>
    page('brief-refresh', [...CUTTING.slice(0, 2), CAME], ''));

  test('the helper has the step in plain words', () =>
    page('helper-view', seen(cutStep), 'h', bench));

  test('and scrolls to the words', () => page('helper-words', seen(cutStep), 'h end', bench));

  test('all words of the build', () => page('words', seen(cutStep), 'g', bench));
});
