import { safeText } from '../text/safe-text.js';

/** What a command says and how it ends. Nothing is written until it is complete. */
export type Outcome = { readonly out: string; readonly err: string; readonly code: number };

/** Documented in the help text: scripts lean on these. */
export const EXIT = {
  fine: 0,
  /** A file was read and something in it is wrong. */
  problems: 1,
  /** The command line or an answer on it is wrong. */
  usage: 2,
  /** Something could not be read or written. */
  files: 3,
} as const;

export function fine(out: string): Outcome {
  return { out, err: '', code: EXIT.fine };
}

/**
 * Lines for standard error; every one names what is wrong and what to do. They may quote the command
 * line or a file, so nothing in them may steer the terminal.
 */
export function failed(lines: readonly string[], code: number): Outcome {
  return { out: '', err: `${safeText(lines.join('\n'))}\n`, code };
}
