import * as z from 'zod/mini';
import { MEASURE_FORMS } from './measure-forms.js';

/**
 * What a saved build may hold, field by field. Every object is strict: an unknown field means damage
 * or a newer program, and nothing is ever dropped in silence.
 */
const atMs = z.number();
const step = z.string();
const length = z.number();

const event = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('build-started'), atMs }),
  z.strictObject({
    kind: z.literal('piece-done'),
    atMs,
    step,
    count: z.int().check(z.positive()),
  }),
  z.strictObject({
    kind: z.literal('check-made'),
    atMs,
    step,
    check: z.int().check(z.nonnegative()),
  }),
  z.strictObject({ kind: z.literal('step-done'), atMs, step }),
  z.strictObject({ kind: z.literal('step-visited'), atMs, step }),
  z.strictObject({
    kind: z.literal('timer-started'),
    atMs,
    timer: z.string(),
    name: z.string(),
    lastsMinutes: z.number().check(z.nonnegative()),
    then: z.string(),
    step,
  }),
  z.strictObject({ kind: z.literal('timer-silenced'), atMs, timer: z.string() }),
  z.strictObject({ kind: z.literal('timer-stopped'), atMs, timer: z.string() }),
  z.strictObject({
    kind: z.literal('timer-snoozed'),
    atMs,
    timer: z.string(),
    untilMs: z.number(),
  }),
  z.strictObject({
    kind: z.literal('day-told'),
    atMs,
    work: z.enum(['glue', 'seal']),
    now: z.exactOptional(z.number()),
    coldest: z.exactOptional(z.number()),
    slept: z.exactOptional(z.number()),
    moisturePercent: z.exactOptional(z.number()),
    humidityPercent: z.exactOptional(z.number()),
    sunsetMinutes: z.exactOptional(z.number()),
  }),
  z.strictObject({
    kind: z.literal('clock-set-back'),
    atMs,
    byMs: z.number().check(z.positive()),
  }),
  z.strictObject({ kind: z.literal('note-written'), atMs, step, text: z.string() }),
  z.strictObject({ kind: z.literal('paused'), atMs, step, note: z.string() }),
  z.strictObject({ kind: z.literal('resumed'), atMs }),
  z.strictObject({ kind: z.literal('rags-laid'), atMs }),
  z.strictObject({ kind: z.literal('briefed'), atMs, caution: z.string() }),
  z.strictObject({
    kind: z.literal('tools-briefed'),
    atMs,
    tools: z.readonly(z.array(z.string())),
  }),
  z.strictObject({
    kind: z.literal('helper-came'),
    atMs,
    tools: z.readonly(z.array(z.strictObject({ tool: z.string(), atMs }))),
    alone: z.int().check(z.nonnegative()),
    together: z.int().check(z.nonnegative()),
  }),
  z.strictObject({ kind: z.literal('helper-changed'), atMs }),
  z.strictObject({
    kind: z.literal('piece-spoiled'),
    atMs,
    step,
    section: z.string(),
    mark: z.string(),
    what: z.enum(['short', 'wrong-side', 'split', 'other']),
    left: length.check(z.nonnegative()),
    good: z.int().check(z.nonnegative()),
    then: z.string(),
    buy: z.string(),
  }),
  z.strictObject({
    kind: z.literal('board-added'),
    atMs,
    section: z.string(),
    length: length.check(z.positive()),
    count: z.int().check(z.positive()),
  }),
  z.strictObject({
    kind: z.literal('board-spoiled'),
    atMs,
    section: z.string(),
    place: z.int().check(z.nonnegative()),
    board: z.string(),
    from: length.check(z.nonnegative()),
    to: length.check(z.positive()),
    then: z.string(),
    buy: z.string(),
  }),
  ...MEASURE_FORMS,
  z.strictObject({ kind: z.literal('taken-back'), atMs }),
]);

const answer = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('length'), value: length }),
  z.strictObject({ kind: z.literal('count'), value: z.number() }),
  z.strictObject({ kind: z.literal('hours'), value: z.number() }),
  z.strictObject({ kind: z.literal('clock'), value: z.number() }),
  z.strictObject({ kind: z.literal('date'), value: z.string() }),
  z.strictObject({
    kind: z.literal('days'),
    value: z.readonly(
      z.array(
        z.strictObject({
          on: z.string(),
          from: z.exactOptional(z.number()),
          to: z.exactOptional(z.number()),
        }),
      ),
    ),
  }),
  z.strictObject({ kind: z.literal('choice'), value: z.string() }),
  z.strictObject({ kind: z.literal('text'), value: z.string() }),
  z.strictObject({ kind: z.literal('yes'), value: z.boolean() }),
  z.strictObject({
    kind: z.literal('items'),
    value: z.readonly(z.array(z.readonly(z.record(z.string(), length)))),
  }),
  z.strictObject({
    kind: z.literal('offers'),
    value: z.readonly(
      z.array(z.strictObject({ section: z.string(), length, cents: z.exactOptional(z.number()) })),
    ),
  }),
  z.strictObject({
    kind: z.literal('boards'),
    value: z.readonly(
      z.array(
        z.strictObject({ section: z.string(), length, count: z.int().check(z.nonnegative()) }),
      ),
    ),
  }),
]);

const keptSection = z.strictObject({
  section: z.string(),
  from: z.optional(z.string()),
  boards: z.readonly(
    z.array(
      z.strictObject({
        length: length.check(z.positive()),
        onHand: z.boolean(),
        cuts: z.readonly(
          z.array(z.strictObject({ mark: z.string(), length: length.check(z.positive()) })),
        ),
      }),
    ),
  ),
});

export const DISPLAY_FORM = z.strictObject({
  system: z.enum(['inch', 'metric']),
  grid: z.number().check(z.positive()),
});

/** Format 1 of a saved build. */
export const WORKBOOK_FORM = z.strictObject({
  format: z.literal(1),
  id: z.string(),
  name: z.string(),
  recipe: z.string(),
  recipeText: z.string(),
  display: DISPLAY_FORM,
  answers: z.readonly(z.record(z.string(), answer)),
  /** Older saves have none. */
  boards: z.optional(z.readonly(z.array(keptSection))),
  createdAtMs: z.number(),
  events: z.readonly(z.array(event)),
  example: z.boolean(),
  /** Older saves have none. */
  putAway: z.optional(z.literal(true)),
});
