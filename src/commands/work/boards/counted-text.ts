import { parseLength } from '../../../measure/length.js';
import { type Parsed, parsed, quoted, unreadable } from '../../../measure/parsed.js';
import type { Display, Mm } from '../../../measure/quantities.js';

/** More of one thing is a slip of the keys. */
const MOST = 1000;
/** Longest board and shortest piece that anybody cuts on a miter saw, in mm. */
const LONGEST: Mm = 30_000;
const SHORTEST: Mm = 1;

/** `21in*4` as `21in` and 4; without a number behind, `count` stays undefined. */
export function splitCount(
  text: string,
): Parsed<{ readonly rest: string; readonly count: number | undefined }> {
  const [rest = '', count, ...more] = text.split(/[*×]/);
  if (count === undefined) return parsed({ rest: text, count: undefined });
  if (more.length > 0)
    return unreadable(`${quoted(text)} has two numbers of pieces.`, 'Write one, such as 21in*4.');
  const read = wholeCount(count);
  return read.ok ? parsed({ rest, count: read.value }) : read;
}

/** How many: from 1 to 1000. */
export function wholeCount(text: string): Parsed<number> {
  const value = Number(text.trim());
  return text.trim() !== '' && Number.isInteger(value) && value >= 1 && value <= MOST
    ? parsed(value)
    : unreadable(
        `${quoted(text)} is no number of pieces or boards.`,
        `Write a whole number from 1 to ${MOST}.`,
      );
}

/** A length from 1 mm to 30 m. */
export function sawLength(text: string, system: Display['system']): Parsed<Mm> {
  const read = parseLength(text, system);
  if (!read.ok) return read;
  return read.value >= SHORTEST && read.value <= LONGEST
    ? read
    : unreadable(`${quoted(text)} is out of range.`, 'A length goes from 1 mm to 30 m.');
}

/** `seat=21in` as a name and what is behind it; a name is up to 24 letters, digits, spaces and dashes. */
export function splitName(text: string): Parsed<{ readonly name: string; readonly rest: string }> {
  const at = text.indexOf('=');
  if (at < 0) return parsed({ name: '', rest: text });
  const name = text.slice(0, at).trim();
  const good = pieceName(name);
  return good.ok ? parsed({ name: good.value, rest: text.slice(at + 1) }) : good;
}

const NAME = /^[\p{L}\p{N}][\p{L}\p{N} _.-]{0,23}$/u;

export function pieceName(name: string): Parsed<string> {
  return NAME.test(name)
    ? parsed(name)
    : unreadable(
        `${quoted(name)} is no name for a piece or board.`,
        'A name has up to 24 letters, digits, spaces and dashes, such as seat=21in*4.',
      );
}
