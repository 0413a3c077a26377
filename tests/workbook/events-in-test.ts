import fc from 'fast-check';
import type { Event } from '../../src/workbook/events.js';
import { TUESDAY_14 } from '../support/journal.js';

const atMs = fc.integer({ min: TUESDAY_14, max: TUESDAY_14 + 7 * 24 * 3_600_000 });
const step = fc.constantFrom('cut-frame/1', 'cut-frame/2', 'notch-rails', 'seal');
const timer = fc.constantFrom('clamp', 'dwell', 'dry');
const text = fc.string({ maxLength: 12, unit: 'grapheme' });

const length = fc.double({ min: 1, max: 6000, noNaN: true });
const what = fc.constantFrom('2x4.width', 'seat', 'end_panel.opening_height');
const cut = fc.array(
  fc.record({
    mark: fc.constantFrom('A', 'B', 'AA'),
    length,
    pieces: fc.array(fc.constantFrom('rail/1', 'rail/2'), { maxLength: 2 }),
  }),
  { maxLength: 3 },
);

type Forms = { [Kind in Event['kind']]: fc.Arbitrary<Extract<Event, { readonly kind: Kind }>> };

/** One generator for each kind of entry: the compiler misses a new kind here. */
const FORMS: Forms = {
  'build-started': fc.record({ kind: fc.constant('build-started'), atMs }),
  'piece-done': fc.record({
    kind: fc.constant('piece-done'),
    atMs,
    step,
    count: fc.integer({ min: 1, max: 14 }),
  }),
  'check-made': fc.record({
    kind: fc.constant('check-made'),
    atMs,
    step,
    check: fc.integer({ min: 0, max: 3 }),
  }),
  'step-done': fc.record({ kind: fc.constant('step-done'), atMs, step }),
  'step-visited': fc.record({ kind: fc.constant('step-visited'), atMs, step }),
  'timer-started': fc.record({
    kind: fc.constant('timer-started'),
    atMs,
    timer,
    name: text,
    lastsMinutes: fc.double({ min: 0, max: 3000, noNaN: true }),
    then: text,
    step,
  }),
  'timer-silenced': fc.record({ kind: fc.constant('timer-silenced'), atMs, timer }),
  'timer-stopped': fc.record({ kind: fc.constant('timer-stopped'), atMs, timer }),
  'timer-snoozed': fc.record({
    kind: fc.constant('timer-snoozed'),
    atMs,
    timer,
    untilMs: fc.integer({ min: TUESDAY_14, max: TUESDAY_14 + 3_600_000 }),
  }),
  'day-told': fc.record(
    {
      kind: fc.constant('day-told'),
      atMs,
      work: fc.constantFrom('glue', 'seal'),
      now: fc.integer({ min: -20, max: 45 }),
      coldest: fc.integer({ min: -20, max: 45 }),
      humidityPercent: fc.integer({ min: 1, max: 100 }),
      sunsetMinutes: fc.integer({ min: 900, max: 1300 }),
    },
    { requiredKeys: ['kind', 'atMs', 'work'] },
  ),
  'clock-set-back': fc.record({
    kind: fc.constant('clock-set-back'),
    atMs,
    byMs: fc.integer({ min: 60_001, max: 86_400_000 }),
  }),
  'note-written': fc.record({ kind: fc.constant('note-written'), atMs, step, text }),
  paused: fc.record({ kind: fc.constant('paused'), atMs, step, note: text }),
  resumed: fc.record({ kind: fc.constant('resumed'), atMs }),
  'rags-laid': fc.record({ kind: fc.constant('rags-laid'), atMs }),
  briefed: fc.record({ kind: fc.constant('briefed'), atMs, caution: text }),
  'tools-briefed': fc.record({
    kind: fc.constant('tools-briefed'),
    atMs,
    tools: fc.array(fc.constantFrom('tape', 'miter-saw'), { minLength: 1, maxLength: 3 }),
  }),
  'helper-came': fc.record({
    kind: fc.constant('helper-came'),
    atMs,
    tools: fc.array(fc.record({ tool: fc.constantFrom('tape', 'chisel'), atMs }), { maxLength: 2 }),
    alone: fc.nat({ max: 40 }),
    together: fc.nat({ max: 40 }),
  }),
  'helper-changed': fc.record({ kind: fc.constant('helper-changed'), atMs }),
  'piece-spoiled': fc.record({
    kind: fc.constant('piece-spoiled'),
    atMs,
    step,
    section: fc.constantFrom('2x4', '45x95'),
    mark: fc.constantFrom('A', 'B', 'AA'),
    what: fc.constantFrom('short', 'wrong-side', 'split', 'other'),
    left: fc.double({ min: 0, max: 4000, noNaN: true }),
    good: fc.nat({ max: 14 }),
    then: text,
    buy: text,
  }),
  'size-measured': fc.record({
    kind: fc.constant('size-measured'),
    atMs,
    step,
    what,
    readings: fc.array(length, { maxLength: 4 }),
    value: length,
    isTaken: fc.boolean(),
    cut,
  }),
  'measure-dropped': fc.record({ kind: fc.constant('measure-dropped'), atMs, step, what, cut }),
  'first-measured': fc.record({
    kind: fc.constant('first-measured'),
    atMs,
    step,
    planned: length,
    measured: length,
    isRight: fc.boolean(),
    ticks: fc.boolean(),
  }),
  'diagonals-measured': fc.record({
    kind: fc.constant('diagonals-measured'),
    atMs,
    step,
    number: fc.integer({ min: 1, max: 8 }),
    long: length,
    wide: length,
    one: length,
    other: length,
  }),
  'board-added': fc.record({
    kind: fc.constant('board-added'),
    atMs,
    section: fc.constantFrom('2x4', '45x95'),
    length: fc.double({ min: 1, max: 6000, noNaN: true }),
    count: fc.integer({ min: 1, max: 9 }),
  }),
  'board-spoiled': fc.record({
    kind: fc.constant('board-spoiled'),
    atMs,
    section: text,
    place: fc.nat(20),
    board: text,
    from: fc.double({ min: 0, max: 3000, noNaN: true }),
    to: fc.double({ min: 1, max: 6000, noNaN: true }),
    then: text,
    buy: text,
  }),
  'taken-back': fc.record({ kind: fc.constant('taken-back'), atMs }),
};

export const anyEvent: fc.Arbitrary<Event> = fc.oneof(...Object.values(FORMS));
export const anyJournal: fc.Arbitrary<readonly Event[]> = fc.array(anyEvent, { maxLength: 40 });
