import * as z from 'zod/mini';

const atMs = z.number();
const step = z.string();
const length = z.number().check(z.positive());

const cut = z.readonly(
  z.array(z.strictObject({ mark: z.string(), length, pieces: z.readonly(z.array(z.string())) })),
);

/** What a saved build may hold of what was measured. */
export const MEASURE_FORMS = [
  z.strictObject({
    kind: z.literal('size-measured'),
    atMs,
    step,
    what: z.string(),
    readings: z.readonly(z.array(length)),
    value: length,
    isTaken: z.boolean(),
    cut,
  }),
  z.strictObject({ kind: z.literal('measure-dropped'), atMs, step, what: z.string(), cut }),
  z.strictObject({
    kind: z.literal('first-measured'),
    atMs,
    step,
    planned: length,
    measured: length,
    isRight: z.boolean(),
    ticks: z.boolean(),
  }),
  z.strictObject({
    kind: z.literal('diagonals-measured'),
    atMs,
    step,
    number: z.int().check(z.positive()),
    long: length,
    wide: length,
    one: length,
    other: length,
  }),
] as const;
