import { createHash } from 'node:crypto';

/** Goes up by one whenever an older program could not open the envelope. */
export const ENVELOPE_FORMAT = 1;

/** What a saved file holds: the build as one text, and what tells whether it is whole. */
export type Envelope = {
  readonly format: number;
  /** Counts the saves, so that two programs notice each other. */
  readonly rev: number;
  readonly savedAtMs: number;
  /** How many steps the build had when it was saved, so that a list needs no plan. */
  readonly stepsInAll: number;
  /** Title of the step that comes next, for the same list; files of before it had none. */
  readonly next?: string;
  /** First half of the SHA-256 of `doc`, in hexadecimal. */
  readonly sum: string;
  readonly doc: string;
};

export type Unsealed =
  | { readonly state: 'fine'; readonly envelope: Envelope }
  | { readonly state: 'damaged'; readonly why: string }
  | { readonly state: 'newer'; readonly format: number };

type Contents = Omit<Envelope, 'format' | 'sum'>;

/** Puts a build into its envelope. */
export function sealed(contents: Contents): Envelope {
  return { format: ENVELOPE_FORMAT, ...contents, sum: sumOf(contents.doc) };
}

/** Opens an envelope and checks that nothing in it was lost on the way. */
export function unsealed(text: string): Unsealed {
  if (text === '') return damaged('it is empty');
  const found = asJson(text);
  if (typeof found !== 'object' || found === null) return damaged('it is cut off or garbled');
  if (!('format' in found) || !isCount(found.format)) return damaged('it has no format number');
  if (found.format > ENVELOPE_FORMAT) return { state: 'newer', format: found.format };
  if (!isEnvelope(found)) return damaged('a part of it is missing');
  if (found.sum !== sumOf(found.doc)) return damaged('its check sum is wrong');
  return { state: 'fine', envelope: found };
}

function damaged(why: string): Unsealed {
  return { state: 'damaged', why };
}

function sumOf(doc: string): string {
  return createHash('sha256').update(doc).digest('hex').slice(0, 32);
}

/** Some editors put a byte-order mark in front; the check sum tells whether they changed more. */
function asJson(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\ufeff/, ''));
  } catch {
    return undefined;
  }
}

function isEnvelope(found: object): found is Envelope {
  const { rev, savedAtMs, stepsInAll, next, sum, doc }: Partial<Record<keyof Envelope, unknown>> =
    found;
  return (
    isCount(rev) &&
    typeof savedAtMs === 'number' &&
    isCount(stepsInAll) &&
    (next === undefined || typeof next === 'string') &&
    typeof sum === 'string' &&
    typeof doc === 'string'
  );
}

function isCount(found: unknown): found is number {
  return typeof found === 'number' && Number.isInteger(found) && found >= 0;
}
