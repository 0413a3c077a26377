import { resolve } from 'node:path';
import { type Parsed, parsed, unreadable } from '../measure/parsed.js';
import { readFileBytes } from './read-file.js';

/** Ten thousand lines of a list. */
const MOST_TEXT_BYTES = 512 * 1024;

/** The text of a file that somebody named, or what is wrong with it and what to do. */
export function readTextFile(path: string): Parsed<string> {
  const file = resolve(path);
  const found = readFileBytes(file, MOST_TEXT_BYTES);
  if (found.state === 'missing')
    return unreadable(`There is no file ${file}.`, 'Check the name, or where you are.');
  if (found.state === 'refused')
    return unreadable(
      `${file} can't be read: ${found.why}.`,
      `Give a text of at most ${MOST_TEXT_BYTES / 1024} KB that you may read.`,
    );
  try {
    return parsed(new TextDecoder('utf-8', { fatal: true }).decode(found.bytes));
  } catch {
    return unreadable(`${file} is not a text in UTF-8.`, 'Save it as plain text in UTF-8.');
  }
}
