import { describe, expect, test } from 'vitest';
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
const CUT = BENCH.steps.find(({ phase, tally }) => phase === 'cut' && tally?.count === 25);
const ID = CUT?.id ?? '';

/** Everything was told, the steps before are done, and the cutting at this stop is begun. */
const SAWING: readonly Event[] = [
  ...BENCH.steps
    .slice(
      0,
      BENCH.steps.findIndex(({ id }) => id === ID),
    )
    .map(({ id }): Event => ({ kind: 'step-done', atMs: TUESDAY_MS, step: id })),
  ...allTold(BENCH),
  { kind: 'piece-done', atMs: TUESDAY_MS, step: ID, count: 4 },
];

function note(text: string): Event {
  return { kind: 'note-written', atMs: TUESDAY_MS, step: ID, text };
}

const LONG =
  'the fence creeps when the clamp is bumped: look at the pencil line before every tenth piece, and blow the dust off the stop block as well, it had packed up once';

function seen(events: readonly Event[], keys = '') {
  const used = usedWith(stepScreen, contextWith(buildAfter([...SAWING, ...events], BENCH)));
  for (const key of keys.split(' ').filter(it => it !== '')) used.wait(400).press(key);
  return viewLines(stepScreen, used.state, used.at).join('\n');
}

describe('in a window of 80 by 24 the figure that the stop is set to stays large', () => {
  test.each([1, 2, 3, 6])('with %i long notes', count => {
    const text = seen(Array.from({ length: count }, (_, number) => note(`${number + 1} ${LONG}`)));
    expect(text).toContain('██');
    expect(text).toMatch(new RegExp(`^Note: ${count} the fence creeps.*n: all`, 'm'));
  });

  test('and n shows all of them above the line for the next', () => {
    const text = seen([note(`first, ${LONG}`), note(`second, ${LONG}`)], 'n').replace(/\s+/g, ' ');
    expect(text).toContain(`first, ${LONG} (14:00)`);
    expect(text).toContain(`second, ${LONG} (14:00)`);
  });

  test('a short note stands there whole', () => {
    expect(seen([note('stop at 18')])).toMatch(/^Note: stop at 18$/m);
  });
});

describe('a note left at the pause', () => {
  const paused: Event = { kind: 'paused', atMs: TUESDAY_MS, step: ID, note: 'blade is dull' };
  const back: Event = { kind: 'resumed', atMs: TUESDAY_MS + MINUTE_MS };
  const piece: Event = { kind: 'piece-done', atMs: TUESDAY_MS + MINUTE_MS, step: ID, count: 1 };

  test.each([
    ['before anybody is back', [paused]],
    ['after one look at it', [paused, back]],
    ['after more work', [paused, back, piece, piece]],
    ['after another pause without a note', [paused, back, { ...paused, note: '' }, back]],
  ])('stands at its step %s', (_, events) => {
    expect(seen(events)).toContain('Note: blade is dull');
  });
});

/** The label of a Type I glue: 8 to 10 min open. Whoever brushes has to see it without scrolling. */
test('how long the glue stays open is seen at 80 by 24 while joints are closed, the tape comes after', () => {
  const glue: readonly Event[] = [
    { kind: 'day-told', atMs: TUESDAY_MS, work: 'glue' },
    { kind: 'step-visited', atMs: TUESDAY_MS, step: 'end-corners' },
  ];
  const used = usedWith(stepScreen, contextWith(buildAfter([...SAWING, ...glue], BENCH)));
  expect(viewLines(stepScreen, used.state, used.at).join('\n')).toMatch(
    /^Open +8 min from first stroke; begin to clamp by minute 3/m,
  );
});
