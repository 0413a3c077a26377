import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { icsText, type Occasion } from '../../src/print/calendar/ics-text.js';
import { occasions } from '../../src/print/calendar/occasions.js';
import { progressOf } from '../../src/workbook/progress.js';
import { build, TUESDAY_14 } from '../support/journal.js';
import { PRINTED_MS } from '../support/paper.js';
import { planOf, project } from '../support/projects.js';

const BENCH = project('planter-bench');
const DATED = planOf(BENCH, { first_day: { kind: 'date', value: '2026-12-04' } });

/** Events as ical.js reads them: a general library that knows nothing of how they were written. */
function events(text: string): readonly ICAL.Event[] {
  const calendar = new ICAL.Component(ICAL.parse(text));
  return calendar.getAllSubcomponents('vevent').map(one => new ICAL.Event(one));
}

function ofPlan(plan = DATED) {
  return icsText(
    plan.title,
    occasions({ plan, build: undefined, madeAtMs: PRINTED_MS, base: 'bench' }),
    PRINTED_MS,
  );
}

const whole: Occasion = {
  uid: 'one@notchbook',
  title: '',
  about: '',
  from: { kind: 'day', day: '2026-12-04' },
  ringsBefore: 0,
};

describe('the calendar, as a general library reads it', () => {
  test('has each session that has a day, from its first move to its last, wherever the garage is', () => {
    const sessions = events(ofPlan()).filter(({ summary }) => /session \d+$/.test(summary));
    expect(sessions.length).toBe(DATED.time.sessions.length);
    for (const [at, { startDate, endDate }] of sessions.entries()) {
      const session = DATED.time.sessions[at];
      expect(startDate.zone.tzid).toBe('floating');
      expect(startDate.toString().slice(0, 10)).toBe(session?.date);
      const begins = Math.min(...(session?.turns.map(({ from }) => from) ?? []));
      expect(startDate.hour * 60 + startDate.minute).toBe(begins);
      const minutes = (endDate.toUnixTime() - startDate.toUnixTime()) / 60;
      expect(minutes).toBe(Math.round(session?.minutes ?? 0));
    }
  });

  test('tells when a wait that ends on another day is over, and no other', () => {
    const [first] = DATED.time.sessions;
    if (first === undefined) throw new Error('no session');
    const stands = [
      { timer: 'glue', name: 'Clamps', until: 22 * 60 },
      { timer: 'seal/dry', name: 'Sealer drying', until: 30 * 60 },
    ];
    const time = { ...DATED.time, sessions: [{ ...first, date: '2026-12-31', stands }] };
    const waits = events(ofPlan({ ...DATED, time })).filter(it => it.summary.endsWith(': over'));
    expect(waits.map(({ summary }) => summary)).toEqual(['Sealer drying: over']);
    expect(waits[0]?.startDate.toString()).toBe('2027-01-01T06:00:00');
  });

  test('reminds of care: after four weeks, and every spring again', () => {
    const last = DATED.time.sessions.at(-1)?.date ?? '';
    const found = events(ofPlan());
    const tighten = found.find(({ summary }) => summary.includes('tighten'));
    const fourWeeks = new Date(`${last}T00:00:00Z`).getTime() + 28 * 86_400_000;
    expect(tighten?.startDate.toString()).toBe(new Date(fourWeeks).toISOString().slice(0, 10));
    const spring = found.find(event => event.isRecurring());
    const [first, second] = [spring?.iterator(), spring?.iterator()].map((it, at) => {
      for (let skip = 0; skip < at; skip += 1) it?.next();
      return it?.next()?.toString();
    });
    expect([first, second]).toEqual(['2027-04-01', '2028-04-01']);
  });

  // RFC 5545, 3.6.1: UID and DTSTAMP in each event, UID once; 3.8.6.3: a trigger in each alarm.
  test('gives each event a name of its own, a stamp and an alarm', () => {
    const found = events(ofPlan());
    expect(new Set(found.map(({ uid }) => uid)).size).toBe(found.length);
    for (const { component } of found) {
      expect(component.getFirstPropertyValue('dtstamp')?.toString()).toBe('2026-11-29T12:00:00Z');
      const alarm = component.getFirstSubcomponent('valarm');
      expect(alarm?.getFirstPropertyValue('action')).toBe('DISPLAY');
      expect(alarm?.getFirstProperty('trigger')).not.toBeNull();
    }
  });

  test('has a timer of a build that still runs, at the instant at which it rings', () => {
    const workbook = build([
      { kind: 'build-started', atMs: TUESDAY_14 },
      {
        kind: 'timer-started',
        atMs: TUESDAY_14,
        timer: 'seal/dry',
        name: 'Sealer drying',
        lastsMinutes: 24 * 60,
        then: 'Turn it over; then seal the other side.',
        step: 'seal',
      },
    ]);
    const so = { workbook, progress: progressOf(workbook.events) };
    const plan = planOf(BENCH);
    const made = occasions({ plan, build: so, madeAtMs: TUESDAY_14 + 60_000, base: 'bench' });
    const [timer, ...others] = events(icsText('Bench', made, TUESDAY_14));
    expect(others).toEqual([]);
    expect(timer?.startDate.toUnixTime()).toBe(TUESDAY_14 / 1000 + 24 * 3600);
    expect(timer?.description).toBe('Turn it over; then seal the other side.');
    const later = occasions({ plan, build: so, madeAtMs: TUESDAY_14 + 25 * 3_600_000, base: 'b' });
    expect(later).toEqual([]);
  });
});

describe('any words in a calendar', () => {
  const anyText = fc.string({ unit: 'grapheme', maxLength: 300 });

  // RFC 5545, 3.1: lines end in CRLF and are at most 75 octets long; 3.3.11: what is escaped.
  test('come back as they were, in lines of at most 75 octets', () => {
    fc.assert(
      fc.property(anyText, anyText, (title, about) => {
        const text = icsText('x', [{ ...whole, title, about: `${about}.` }], PRINTED_MS);
        const lines = text.split('\r\n');
        expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
        expect(Math.max(...lines.map(line => Buffer.byteLength(line)))).toBeLessThanOrEqual(75);
        const [event] = events(text);
        expect(event?.description).toBe(kept(`${about}.`));
        expect(event?.summary ?? '').toBe(kept(title));
      }),
    );
  });

  /** Line ends become one kind; other controls have no place in a calendar. */
  function kept(text: string): string {
    return text.replace(/\r\n?/g, '\n').replace(/[\x00-\x08\x0b-\x1f\x7f]/g, '');
  }

  // The care sheet says from the last coat, so the calendar does: sealed on the 24th, handed over two days later.
  test('the day to seal again is counted from the last coat, not from the hand-over', () => {
    const stepOf = (wanted: (step: (typeof DATED.steps)[number]) => boolean) =>
      DATED.steps.find(wanted)?.id ?? '';
    const seal = stepOf(({ care }) => care.includes('sealer'));
    const over = stepOf(({ phase }) => phase === 'hand-over');
    const journal = build([
      { kind: 'step-done', atMs: TUESDAY_14, step: seal },
      { kind: 'step-done', atMs: TUESDAY_14 + 2 * 24 * 3_600_000, step: over },
    ]);
    const made = { workbook: journal, progress: progressOf(journal.events) };
    const all = occasions({ plan: DATED, build: made, madeAtMs: PRINTED_MS, base: 'bench' });
    const day = all.find(({ title }) => title.includes('seal again'))?.from;
    const year = 2026 + DATED.sealer.lasts.from;
    expect(day).toEqual({ kind: 'day', day: `${year}-11-24` });
  });
});
