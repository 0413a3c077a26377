import type { z } from 'zod/mini';
import { WORKBOOK_FORM } from './saved-forms.js';
import type { Workbook } from './workbook.js';
import { isWorkbookId } from './workbook-id.js';

/** Goes up by one whenever an older program could not read what is written. */
export const SAVED_FORMAT = 1;

/** Lifts a saved build from one format to the next: the first one from 1 to 2. Pure. */
export type Migration = (saved: unknown) => unknown;

/** With the first one, let loading keep a copy of the older file before anything is written over it. */
const MIGRATIONS: readonly Migration[] = [];

export type Reading =
  | { readonly ok: true; readonly workbook: Workbook }
  /** `where` names the place, `events, entry 12, kind` for example. */
  | { readonly ok: false; readonly why: 'damaged'; readonly where: string }
  | { readonly ok: false; readonly why: 'newer'; readonly format: number };

/** A build as text: JSON with the number of its format. */
export function toSaved(workbook: Workbook): string {
  const saved: z.infer<typeof WORKBOOK_FORM> = { format: SAVED_FORMAT, ...workbook };
  return JSON.stringify(saved);
}

/**
 * A build from its text. One of a newer program is refused by its format number; anything that is not
 * exactly what this format may hold counts as damaged, and nothing of it is guessed.
 */
export function fromSaved(text: string): Reading {
  const saved = asJson(text);
  const format = formatOf(saved);
  if (format === undefined) return damaged('the format number');
  if (format > SAVED_FORMAT) return { ok: false, why: 'newer', format };
  return validated(lifted(saved, format, MIGRATIONS));
}

/**
 * A saved build of format `from` brought up to date, one format at a time: with two migrations one of
 * format 2 goes through the second only.
 */
export function lifted(saved: unknown, from: number, migrations: readonly Migration[]): unknown {
  return migrations.slice(from - 1).reduce((older, lift) => lift(older), saved);
}

function validated(saved: unknown): Reading {
  const result = WORKBOOK_FORM.safeParse(saved);
  if (!result.success) return damaged(whereOf(result.error.issues));
  const { format: _, ...workbook } = result.data;
  if (!isWorkbookId(workbook.id)) return damaged('id');
  return { ok: true, workbook };
}

function damaged(where: string): Reading {
  return { ok: false, why: 'damaged', where };
}

function asJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function formatOf(saved: unknown): number | undefined {
  if (typeof saved !== 'object' || saved === null || !('format' in saved)) return undefined;
  const { format } = saved;
  return typeof format === 'number' && Number.isInteger(format) && format >= 1 ? format : undefined;
}

type Issue = { readonly path: readonly PropertyKey[] };

function whereOf([first]: readonly Issue[]): string {
  const path = first?.path ?? [];
  if (path.length === 0) return 'its fields';
  return path.map(key => (typeof key === 'number' ? `entry ${key + 1}` : String(key))).join(', ');
}
