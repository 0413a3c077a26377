import { describe, expect, test } from 'vitest';
import type { Plan } from '../../../src/plan/plan.js';
import type { Ask } from '../../../src/ui/screen.js';
import { stepScreen } from '../../../src/ui/screens/step/screen.js';
import type { Event } from '../../../src/workbook/events.js';
import {
  benchPlan,
  buildAfter,
  contextWith,
  keyOf,
  MINUTE_MS,
  TUESDAY_MS,
  usedWith,
} from '../../support/open-build.js';
import { viewLines } from '../../support/screen-page.js';

/** A quarter second is a bounce; people take longer. */
const BREATH_MS = 400;

/** The cautions of the small plan, heard before. */
const HEARD: readonly Event[] = ['miter-saw', 'dust', 'glue', 'rags'].map(caution => ({
  kind: 'briefed',
  atMs: TUESDAY_MS,
  caution,
}));

function at(step: string, before: readonly Event[] = HEARD) {
  const visited: Event = { kind: 'step-visited', atMs: TUESDAY_MS, step };
  return usedWith(stepScreen, contextWith(buildAfter([...before, visited]))).wait(BREATH_MS);
}

function pressed(step: string, keys: string, before: readonly Event[] = HEARD) {
  const used = at(step, before);
  for (const key of keys.split(' ').filter(name => name !== '')) used.press(key).wait(BREATH_MS);
  return used;
}

/** Events in short: `piece`, `check 1`, `done cut/2x4@45`. */
function told(asks: readonly Ask[]): readonly string[] {
  return asks.flatMap(ask => {
    if (ask.kind === 'go') return [`go ${ask.to}`];
    return ask.kind === 'record' ? ask.events.map(eventWords) : [ask.kind];
  });
}

function eventWords(event: Event): string {
  switch (event.kind) {
    case 'piece-done':
      return `piece of ${event.step}`;
    case 'check-made':
      return `check ${event.check + 1} of ${event.step}`;
    case 'step-done':
      return `done ${event.step}`;
    case 'step-visited':
      return `at ${event.step}`;
    case 'timer-started':
      return `timer ${event.timer}, ${event.lastsMinutes} min`;
    case 'note-written':
      return `note "${event.text}"`;
    case 'briefed':
      return `heard ${event.caution}`;
    default:
      return event.kind;
  }
}

describe('the big key does what comes next', () => {
  const whole = [
    'heard miter-saw',
    'heard dust',
    'piece of cut/2x4@45',
    'piece of cut/2x4@45',
    'check 1 of cut/2x4@45',
    'check 2 of cut/2x4@45',
    'done cut/2x4@45',
    'at ends',
  ];

  test.each(['space', 'enter', 'page-down'])('%s goes through a whole step', key => {
    expect(told(pressed('cut/2x4@45', `${key} `.repeat(6), []).asks)).toEqual(whole);
  });

  test('a caution that was read once in this build is not read again', () => {
    expect(told(pressed('cut/2x4@45', 'space', HEARD.slice(0, 1)).asks)).toEqual(['heard dust']);
    expect(told(pressed('cut/2x4@45', 'space', HEARD).asks)).toEqual(['piece of cut/2x4@45']);
  });

  test('a timer that nobody started is started before the step is done', () => {
    expect(told(pressed('ends', 'space space space').asks)).toEqual([
      'check 1 of ends',
      'timer ends/clamp, 30 min',
      'done ends',
      'at rails',
    ]);
  });

  test('a step with two waits does not go on until the first one is over', () => {
    const used = pressed('seal', 'space space space');
    expect(told(used.asks)).toEqual(['timer seal/dwell, 15 min']);
    used.wait(15 * MINUTE_MS);
    for (const key of ['space', 'space', 'space']) used.press(key).wait(BREATH_MS);
    expect(told(used.asks).slice(1)).toEqual([
      'check 1 of seal',
      'timer seal/dry, 1440 min',
      'done seal',
      'at hand-over',
    ]);
  });

  test('a timer that was stopped on purpose is not started again by the big key', () => {
    const stopped: readonly Event[] = [
      ...HEARD,
      {
        kind: 'timer-started',
        atMs: TUESDAY_MS,
        timer: 'ends/clamp',
        name: 'Clamps',
        lastsMinutes: 30,
        then: '',
        step: 'ends',
      },
      { kind: 'timer-stopped', atMs: TUESDAY_MS, timer: 'ends/clamp' },
    ];
    expect(told(pressed('ends', 'space space', stopped).asks)).toEqual([
      'check 1 of ends',
      'done ends',
      'at rails',
    ]);
  });

  test('a glove that bounces does not count a piece of the step that has just come up', () => {
    const used = pressed('ends', 'space space');
    used.press('space').press('space');
    expect(told(used.asks).at(-1)).toBe('at rails');
    used.wait(BREATH_MS).press('space');
    expect(told(used.asks).at(-1)).toBe('piece of rails');
  });

  test('after the last open step the build is finished, and says so', () => {
    const others = ['measure', 'cut/2x4@45', 'ends', 'rails', 'seal'].map(
      (step): Event => ({ kind: 'step-done', atMs: TUESDAY_MS, step }),
    );
    const used = pressed('hand-over', 'space', [...HEARD, ...others]);
    expect(used.state.step).toBeUndefined();
    expect(stepScreen.title(used.state, used.at)).toBe('Finished');
    expect(told(used.press('space').asks).at(-1)).toBe('go pause');
  });

  test('a step that was left out comes back before the end', () => {
    const used = pressed('hand-over', 'space');
    expect(used.state.step).toBe('measure');
  });
});

describe('keys at a step', () => {
  test.each([
    ['plus counts one piece', 'cut/2x4@45', '+', ['piece of cut/2x4@45']],
    [
      'plus stops when all are counted',
      'cut/2x4@45',
      '+ + +',
      ['piece of cut/2x4@45', 'piece of cut/2x4@45'],
    ],
    ['plus does nothing where nothing is counted', 'ends', '+', []],
    [
      'minus takes back the piece that was counted last',
      'cut/2x4@45',
      '+ -',
      ['piece of cut/2x4@45', 'taken-back'],
    ],
    [
      'minus asks first where something else came last',
      'cut/2x4@45',
      '+ 2 -',
      ['piece of cut/2x4@45', 'check 2 of cut/2x4@45'],
    ],
    ['a number ticks that check', 'cut/2x4@45', '2', ['check 2 of cut/2x4@45']],
    ['a check is not ticked twice', 'cut/2x4@45', '2 2', ['check 2 of cut/2x4@45']],
    ['undo alone only asks', 'cut/2x4@45', '+ u', ['piece of cut/2x4@45']],
    ['undo twice takes back', 'cut/2x4@45', '+ u u', ['piece of cut/2x4@45', 'taken-back']],
    ['any other key keeps it', 'cut/2x4@45', '+ u space', ['piece of cut/2x4@45']],
    ['done anyway alone only asks', 'cut/2x4@45', 'd', []],
    ['done anyway twice is done', 'cut/2x4@45', 'd d', ['done cut/2x4@45', 'at ends']],
    ['a note is kept', 'ends', 'n typed:brads enter', ['note "brads"']],
    ['an empty note is none', 'ends', 'n enter', []],
    ['a note can be thrown away', 'ends', 'n typed:brads escape', []],
    ['the list shows the step of that number and records nothing', 'measure', 'l 3 enter', []],
    ['the picture is closed by the big key', 'ends', 'v v space 1', ['check 1 of ends']],
    ['a timer is started by its number', 'seal', 't 2', ['timer seal/dry, 1440 min']],
    [
      'a running timer is started afresh only when asked twice',
      'seal',
      't 2 t 2',
      ['timer seal/dry, 1440 min'],
    ],
    [
      'asked twice it is',
      'seal',
      't 2 t 2 2',
      ['timer seal/dry, 1440 min', 'timer seal/dry, 1440 min'],
    ],
    ['where a step has no timer, all of them are shown', 'measure', 't', ['go timers']],
    ['pause', 'measure', 'p', ['go pause']],
    ['the plan', 'measure', 'b', ['go plan']],
    ['the keys', 'measure', '?', ['go keys']],
    ['out', 'measure', 'escape', ['leave']],
  ])('%s', (_, step, keys, expected) => {
    expect(told(pressed(step, keys).asks)).toEqual(expected);
  });

  test('looking back changes nothing, and the big key leads forward again', () => {
    const done: readonly Event[] = [
      ...HEARD,
      { kind: 'step-done', atMs: TUESDAY_MS, step: 'measure' },
    ];
    const used = pressed('cut/2x4@45', 'backspace', done);
    expect(used.state.step).toBe('measure');
    expect(used.asks).toEqual([]);
    expect(used.press('space').state.step).toBe('cut/2x4@45');
    expect(used.asks).toEqual([]);
  });

  test('taking back "done" shows that step again, and a return finds it', () => {
    const used = pressed('measure', 'space space u u');
    expect(used.state.step).toBe('measure');
    expect(used.at.build?.progress.done.size).toBe(0);
    expect(used.at.build?.progress.lastStep).toBe('measure');
  });

  test('no single key takes anything away', () => {
    const before = pressed('cut/2x4@45', '+ 1 n typed:brads enter').at;
    const keys = ['backspace', 'page-up', 'left', 'escape', 'u', 'd', 'home', 'x', 'tab', '-', '0'];
    for (const key of keys) {
      const { asks } = stepScreen.press(stepScreen.open(before), keyOf(key), before);
      expect(told(asks).filter(words => /taken-back|stopped|done/.test(words))).toEqual([]);
    }
  });
});

test('a count is shown only once it is recorded', () => {
  const used = at('cut/2x4@45');
  const context = used.at;
  const opened = used.state;
  const { state, asks } = stepScreen.press(opened, keyOf('space'), context);
  expect(told(asks)).toEqual(['piece of cut/2x4@45']);
  expect(viewLines(stepScreen, state, context)).toEqual(viewLines(stepScreen, opened, context));
});

test('a key that bounces on the way in does nothing', () => {
  const used = usedWith(stepScreen, contextWith(buildAfter(HEARD)));
  expect(used.press('enter').asks).toEqual([]);
});

test('the bench opens at the step that was seen last, else at the first open one', () => {
  expect(at('rails').state.step).toBe('rails');
  const done: Event = { kind: 'step-done', atMs: TUESDAY_MS, step: 'measure' };
  expect(usedWith(stepScreen, contextWith(buildAfter([done]))).state.step).toBe('cut/2x4@45');
});

/** A card for the caution of each tool, and one for all others that are new at a step. */
function cardsOfCautions({ steps, tools }: Plan): number {
  const heard = new Set<string>();
  let cards = 0;
  for (const { care, tools: ids } of steps) {
    const ofTools = tools.filter(({ id }) => ids.includes(id)).map(it => it.briefing?.caution);
    const fresh = care.filter(id => !heard.has(id));
    const own = fresh.filter(id => ofTools.includes(id)).length;
    cards += own + (fresh.length > own ? 1 : 0);
    for (const id of care) heard.add(id);
  }
  return cards;
}

test('a clicker alone, one key from the first step to the last, builds the whole bench', () => {
  const plan = benchPlan();
  const size = { columns: 80, rows: 34 };
  const used = usedWith(stepScreen, contextWith(buildAfter([], plan), { size }));
  const counted = plan.steps.reduce((sum, { tally }) => sum + (tally?.count ?? 0), 0);
  const checks = plan.steps.reduce((sum, { look }) => sum + look.length, 0);
  const timers = plan.steps.reduce((sum, step) => sum + step.timers.length, 0);
  const heard = cardsOfCautions(plan);
  const asked = plan.tools.filter(({ briefing }) => briefing?.caution !== undefined).length;
  const quiet = plan.tools.filter(({ briefing }) => briefing?.caution === undefined);
  const told = new Set(
    quiet.map(({ id }) => plan.steps.find(({ tools }) => tools.includes(id))?.id),
  ).size;
  const glueUps = plan.glueUps.reduce((sum, { count }) => sum + count.value, 0);
  // A press for each piece, check, timer, first stroke of glue, caution, page of questions and step; a day after each no
  // wait is left.
  const presses = counted + checks + timers + glueUps + heard + asked + told + plan.steps.length;
  for (let press = 0; press < presses - 1; press += 1) {
    used.wait(25 * 60 * MINUTE_MS);
    // Each day somebody says that nobody knows how warm it is: the screen for it takes page-down too.
    const work = plan.steps.find(({ id }) => id === used.state.step)?.day;
    if (work !== undefined) used.record([{ kind: 'day-told', atMs: used.at.nowMs, work }]);
    used.press('page-down');
  }
  expect(used.state.step).toBe('hand-over');
  expect(used.wait(MINUTE_MS).press('page-down').state.step).toBeUndefined();
  expect(used.at.build?.progress.done.size).toBe(plan.steps.length);
});
