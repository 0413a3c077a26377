import { describe, expect, test } from 'vitest';
import { usualAnswers } from '../../src/recipe/questions.js';
import type { Event } from '../../src/workbook/events.js';
import { forecast } from '../../src/workbook/forecast.js';
import { forecastWords } from '../../src/workbook/forecast-words.js';
import { minutesByStep, paceOf } from '../../src/workbook/pace.js';
import { progressOf } from '../../src/workbook/progress.js';
import { build, clampsOn, HOUR, MINUTE, step, TUESDAY_14 } from '../support/journal.js';
import { planOf, project } from '../support/projects.js';

const at = (minutes: number) => TUESDAY_14 + minutes * MINUTE;
const done = (id: string, minutes: number): Event => ({
  kind: 'step-done',
  atMs: at(minutes),
  step: id,
});

/** Each step is planned at 10 min. */
const STEPS = [step('cut'), step('notch', { phase: 'notch' }), step('glue', { phase: 'assemble' })];

describe('what the journal says about time', () => {
  test('the time up to each entry belongs to its step', () => {
    const spent = minutesByStep(
      [
        { kind: 'build-started', atMs: at(0) },
        { kind: 'piece-done', atMs: at(5), step: 'cut', count: 1 },
        done('cut', 20),
        done('notch', 30),
      ],
      STEPS,
    );
    expect([...spent]).toEqual([
      ['cut', 20],
      ['notch', 10],
    ]);
  });

  test('a pause is no work, nor is a silence of more than an hour and a half', () => {
    const spent = minutesByStep(
      [
        { kind: 'build-started', atMs: at(0) },
        done('cut', 10),
        { kind: 'paused', atMs: at(15), step: 'notch', note: '' },
        { kind: 'resumed', atMs: at(75) },
        done('notch', 85),
        done('glue', 185),
      ],
      STEPS,
    );
    // 15 to 75 is the pause and belongs to nobody; 10 to 15 was looking at the next step.
    expect(spent.get('notch')).toBe(15);
    expect(spent.get('glue')).toBe(0);
  });

  test('waiting for clamps is not the time of the step that waits', () => {
    const steps = [step('glue'), step('stand', { after: ['clamp'] })];
    const spent = minutesByStep(
      [
        { kind: 'build-started', atMs: at(0) },
        clampsOn(at(0), 60, { timer: 'clamp', step: 'glue' }),
        done('glue', 0),
        done('stand', 70),
      ],
      steps,
    );
    expect(spent.get('stand')).toBe(10);
  });
});

describe('what the helper does beside the lead', () => {
  const steps = [step('notch'), step('sand', { who: 'helper' }), step('glue')];
  const journal: readonly Event[] = [
    { kind: 'build-started', atMs: at(0) },
    done('sand', 8),
    done('notch', 10),
    done('glue', 20),
  ];
  const turns = [
    { step: 'notch', who: 'lead', from: 0, to: 10 },
    { step: 'sand', who: 'helper', from: 0, to: 8 },
    { step: 'glue', who: 'both', from: 10, to: 20 },
  ] as const;

  // By hand: notching went from 0 to 10, the sanding in the same minutes; each step is planned at 10.
  test('takes no time from the step of the lead', () => {
    const spent = minutesByStep(journal, steps, new Set(['sand']));
    expect([...spent]).toEqual([
      ['notch', 10],
      ['glue', 10],
    ]);
  });

  test('and makes nobody look faster than planned', () => {
    expect(paceOf(journal, steps, new Set(['notch', 'sand', 'glue']), [{ turns }]).all).toBe(1);
  });
});

describe('the pace that is learned', () => {
  const journal: readonly Event[] = [{ kind: 'build-started', atMs: at(0) }, done('cut', 80)];
  const pace = paceOf(journal, STEPS, new Set(['cut']));

  // By hand: (80 taken + 60 of trust) / (10 planned + 60 of trust) = 2.
  test('80 min in place of 10, with an hour of trust in the plan, is twice as long', () => {
    expect(pace.of('cut')).toBe(2);
    expect(pace.learnedFrom).toBe(10);
  });

  test('a kind of work not yet done goes at the pace of the rest', () => {
    expect(pace.of('assemble')).toBe(2);
  });

  test('with nothing done it is the plan', () => {
    expect(paceOf([], STEPS, new Set()).of('cut')).toBe(1);
  });
});

describe('when the bench will likely be done', () => {
  const BENCH = project('planter-bench');
  const plan = planOf(BENCH);
  const answers = usualAnswers(BENCH);
  /** Tuesday, November 24, 2026, 18:00 in Greenwich. */
  const evening = TUESDAY_14 + 4 * HOUR;
  const talked: readonly Event[] = plan.steps
    .filter(({ phase }) => phase === 'plan' || phase === 'buy')
    .map(({ id }) => ({ kind: 'step-done', atMs: evening, step: id }));

  function likely(events: readonly Event[], nowMs: number) {
    const workbook = build([{ kind: 'build-started', atMs: evening }, ...events], { answers });
    return forecast({ workbook, plan, progress: progressOf(workbook.events) }, nowMs, 'UTC');
  }

  test('before the first cut it is the plan, from today on', () => {
    const found = likely(talked, evening);
    expect(found?.sessions.length).toBe(plan.time.sessions.length);
    // One evening after the other from Tuesday, November 24 on.
    const last = new Date(Date.UTC(2026, 10, 23 + plan.time.sessions.length));
    expect(found?.day).toBe(last.toISOString().slice(0, 10));
  });

  test('somebody who saws half as fast is done later, and is told so', () => {
    const cuts = plan.steps.filter(({ phase }) => phase === 'cut');
    const slow = cuts.map(({ id }, number): Event => {
      return { kind: 'step-done', atMs: evening + (number + 1) * 30 * MINUTE, step: id };
    });
    const found = likely([...talked, ...slow], evening + cuts.length * 30 * MINUTE);
    const fast = likely(talked, evening);
    if (found === undefined || fast === undefined) throw new Error('no forecast');
    expect(found.pace.all).toBeGreaterThan(1.5);
    expect(`${found.day} ${found.clock}` > `${fast.day} ${fast.clock}`).toBe(true);
    expect(forecastWords(found)).toMatch(
      /^by \w{3} \w{3} \d+, about \d+:\d\d: \d+ more sessions, in \d\.\d x the time$/,
    );
  });

  test('sealer that dries since yesterday holds the last evening up only as long as it needs', () => {
    const upTo = plan.steps.findIndex(({ id }) => id === 'place');
    const events: readonly Event[] = [
      ...plan.steps
        .slice(0, upTo)
        .map(({ id }): Event => ({ kind: 'step-done', atMs: evening, step: id })),
      clampsOn(evening, 24 * 60, { timer: 'seal/dry', step: 'seal' }),
    ];
    const found = likely(events, evening + HOUR);
    expect(found?.day).toBe('2026-11-25');
    expect(found?.sessions[0]?.turns[0]?.from).toBe(18 * 60);
  });

  test('when all is done there is nothing to forecast', () => {
    const all = plan.steps.map(({ id }): Event => ({ kind: 'step-done', atMs: evening, step: id }));
    expect(likely(all, evening)).toBeUndefined();
  });
});
