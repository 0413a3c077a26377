import { contextOf, type Program } from './program.js';
import type { Key } from './screen.js';

/** Told where a key was left out: whoever pressed it must know that nothing was counted. */
export const NOT_TAKEN =
  'Nothing was noted for a key pressed before this page was shown. Press again.';

/** Whether this is a press of the big key where it notes something else than it did as it was `seen` when pressed. */
export function isBlind(key: Key, program: Program, seen: Program): boolean {
  if (program === seen || !['space', 'enter', 'page-down'].includes(key.name)) return false;
  const [now, before] = [thumbAt(program), thumbAt(seen)];
  return now.does !== undefined && (now.page !== before.page || now.does !== before.does);
}

function thumbAt(program: Program) {
  const page = program.pages.at(-1);
  return { page: page?.name, does: page?.underThumb(contextOf(program)) };
}
