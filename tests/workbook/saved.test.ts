import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { HALF_MILLIMETERS } from '../../src/measure/displays.js';
import { fromSaved, lifted, toSaved } from '../../src/workbook/saved.js';
import { record, startWorkbook } from '../../src/workbook/start-workbook.js';
import type { Workbook } from '../../src/workbook/workbook.js';
import { isWorkbookId, workbookId } from '../../src/workbook/workbook-id.js';
import { build, TUESDAY_14 } from '../support/journal.js';
import { anyJournal } from './events-in-test.js';

const FULL: Workbook = build([], {
  answers: {
    seat_length: { kind: 'length', value: 1219.2 },
    people: { kind: 'count', value: 2 },
    session_hours: { kind: 'hours', value: 2.5 },
    session_from: { kind: 'clock', value: 1080 },
    first_day: { kind: 'date', value: '2026-12-04' },
    session_days: { kind: 'days', value: [{ on: 'tue' }, { on: 'sat', from: 540, to: 960 }] },
    timber: { kind: 'choice', value: 'inch' },
    place: { kind: 'text', value: 'the "sunny" side\n' },
    own_saw: { kind: 'yes', value: true },
    pots: { kind: 'items', value: [{ height: 292.1, diameter: 273.05 }] },
    offers: {
      kind: 'offers',
      value: [
        { section: '2x4', length: 2438.4, cents: 748 },
        { section: '1x3', length: 2438.4 },
      ],
    },
    on_hand: { kind: 'boards', value: [{ section: '2x4', length: 1320.8, count: 2 }] },
  },
});

describe('a build as text', () => {
  test('every kind of answer comes back as it was', () => {
    expect(fromSaved(toSaved(FULL))).toEqual({ ok: true, workbook: FULL });
  });

  test('every journal comes back as it was', () => {
    fc.assert(
      fc.property(anyJournal, events => {
        const workbook = { ...FULL, events };
        expect(fromSaved(toSaved(workbook))).toEqual({ ok: true, workbook });
      }),
    );
  });

  test('a newer format is refused by its number, whatever else is in it', () => {
    const newer = JSON.stringify({ format: 2, tree: 'oak' });
    expect(fromSaved(newer)).toEqual({ ok: false, why: 'newer', format: 2 });
  });

  const saved = JSON.parse(toSaved(FULL)) as Record<string, unknown>;
  const started = { kind: 'build-started', atMs: 1 };
  const rows: readonly (readonly [string, unknown, string])[] = [
    ['nothing', undefined, 'the format number'],
    ['null', null, 'the format number'],
    ['a list', [saved], 'the format number'],
    ['no format', { ...saved, format: undefined }, 'the format number'],
    ['format 0', { ...saved, format: 0 }, 'the format number'],
    ['format 1.5', { ...saved, format: 1.5 }, 'the format number'],
    ['no name', { ...saved, name: undefined }, 'name'],
    ['an unknown field', { ...saved, owner: 'me' }, 'its fields'],
    ['an id that is a path', { ...saved, id: '../bench' }, 'id'],
    ['a time that is text', { ...saved, createdAtMs: '2026' }, 'createdAtMs'],
    ['an unknown entry', { ...saved, events: [started, { kind: 'moved' }] }, 'events, entry 2'],
    [
      'an entry with one field too many',
      { ...saved, events: [{ ...started, by: 'me' }] },
      'events, entry 1',
    ],
    [
      'half a piece',
      { ...saved, events: [{ kind: 'piece-done', atMs: 1, step: 's', count: 0.5 }] },
      'events, entry 1, count',
    ],
    [
      'an answer of another kind',
      { ...saved, answers: { seat_length: { kind: 'length', value: '48' } } },
      'answers, seat_length, value',
    ],
  ];
  test.each(rows)('damaged: %s', (_, content, where) => {
    const reading = fromSaved(JSON.stringify(content) ?? '');
    expect(reading).toMatchObject({ ok: false, why: 'damaged' });
    expect(reading.ok || reading.why === 'newer' ? '' : reading.where).toMatch(
      new RegExp(`^${where}`),
    );
  });

  test('a text that is cut off anywhere is damaged, never half a build', () => {
    const text = toSaved(FULL);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: text.length - 1 }), end => {
        expect(fromSaved(text.slice(0, end))).toMatchObject({ ok: false, why: 'damaged' });
      }),
    );
  });

  test('an older one goes through the migrations that came after it, in order', () => {
    const migrations = ['to 2', 'to 3', 'to 4'].map(
      step => (older: unknown) => `${String(older)}, ${step}`,
    );
    expect(lifted('from 1', 1, migrations)).toBe('from 1, to 2, to 3, to 4');
    expect(lifted('from 3', 3, migrations)).toBe('from 3, to 4');
    expect(lifted('from 4', 4, migrations)).toBe('from 4');
  });
});

test('a new build holds one entry: that it was started', () => {
  const workbook = startWorkbook({
    id: 'bench',
    name: 'Bench',
    recipe: 'planter-bench',
    recipeText: 'recipe: 1',
    display: HALF_MILLIMETERS,
    answers: {},
    nowMs: TUESDAY_14,
    example: true,
  });
  expect(workbook.events).toEqual([{ kind: 'build-started', atMs: TUESDAY_14 }]);
  expect(workbook.createdAtMs).toBe(TUESDAY_14);
  expect('nowMs' in workbook).toBe(false);
  const more = record(workbook, { kind: 'resumed', atMs: TUESDAY_14 + 1 });
  expect(more.events).toHaveLength(2);
  expect(workbook.events).toHaveLength(1);
});

describe('a name as an id', () => {
  const rows: readonly (readonly [string, string])[] = [
    ['Garden bench', 'garden-bench'],
    ['  Oma’s  Bänkchen!! ', 'oma-s-bankchen'],
    ['../../etc/passwd', 'etc-passwd'],
    ['con', 'build-con'],
    ['LPT1', 'build-lpt1'],
    ['長椅', 'build'],
    ['', 'build'],
    ['taken', 'taken-3'],
    ['x'.repeat(90), 'x'.repeat(40)],
  ];
  test.each(rows)('%s', (name, id) => {
    expect(workbookId(name, new Set(['taken', 'taken-2']))).toBe(id);
  });

  test('every name gives an id that is one', () => {
    const taken = new Set(['build', 'a']);
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), name => isWorkbookId(workbookId(name, taken))),
    );
  });
});
