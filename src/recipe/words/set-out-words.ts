import { SIXTEENTHS } from '../../measure/displays.js';
import { formatLength } from '../../measure/format-length.js';
import { formatNumber } from '../../measure/format-number.js';
import type { Mm } from '../../measure/quantities.js';
import type { SetOutProblem } from '../set-out-problem.js';
import type { WordsFor } from './wording.js';

/** How it is said when boards cannot stand as the recipe and the answers put them. */
export const SET_OUT_WORDS: WordsFor<SetOutProblem> = {
  'no-length': ({ part, length }) => ({
    problem: `${part} comes out ${both(length)} long.`,
    hint: 'The sizes leave no room for it: make the piece larger, or leave the part out with when.',
  }),
  'bad-count': ({ what, count }) => ({
    problem: `The count of ${what} comes out as ${formatNumber(count, 3)}.`,
    hint: 'It has to be a whole number, 0 or more: use floor, ceil or max.',
  }),
  'too-many-parts': ({ most }) => ({
    problem: `The piece would have more than ${most} boards.`,
    hint: 'Check the counts and the places of assemblies for a slip.',
  }),
  'no-count-fits': ({ layout, over, least, most, fewer, more }) => ({
    problem: `No count of ${layout} fits ${both(over)}: ${row(fewer)}, and ${row(more)}.`,
    hint: `Gaps may be ${both(least)} to ${both(most)}: allow others, or change the size.`,
  }),
  'not-a-run': ({ layout, over, piece }) => ({
    problem: `${layout} cannot be spread: pieces of ${both(piece)} over ${both(over)}.`,
    hint: 'The run and the piece need a width, and a row has at most a thousand pieces.',
  }),
  'stack-too-tall': ({ stack, item, by }) => ({
    problem: `${stack} ${item} has no room: what stands there is ${both(by)} too tall.`,
    hint: 'Make the box higher, or take a lower one.',
  }),
  'stack-too-high': ({ stack, item }) => ({
    problem: `${stack} ${item} would be a tower of a hundred layers.`,
    hint: 'Check its height for a slip.',
  }),
  'boards-overlap': ({ a, b, sides, corner }) => ({
    problem: `${a} and ${b} both fill ${sides.map(plain).join(' x ')} at ${corner.map(plain).join(', ')}.`,
    hint: 'Declare a notch in one of them, or move one.',
  }),
  'never-touches': ({ joint, from, into }) => ({
    problem: `${joint}: ${from} never touches ${into} square to the driving axis.`,
    hint: 'Check where the two stand, and the axis behind drive.',
  }),
  'never-overlaps': ({ notch, cut, over }) => ({
    problem: `${notch}: ${cut} never overlaps ${over}, so there is nothing to cut.`,
    hint: 'Check where the two stand, or remove the notch.',
  }),
  'nothing-left': ({ part }) => ({
    problem: `The notches take away all of ${part}.`,
    hint: 'Let the other board give way, or share the overlap half and half.',
  }),
  'lengths-differ': ({ path }) => ({
    problem: `The boards ${path} are not all of one length.`,
    hint: 'Name one of the assemblies that they lie in.',
  }),
};

function row({ count, gap }: { readonly count: number; readonly gap: Mm }): string {
  if (gap < 0) return `${count} do not fit side by side`;
  return count === 0 ? `none leaves ${both(gap)} open` : `${count} leave gaps of ${both(gap)}`;
}

/** Nobody has said here which lengths are read: both are. */
function both(length: Mm): string {
  return `${plain(length)} (${formatNumber(length, 1)} mm)`;
}

function plain(length: Mm): string {
  return formatLength(length, SIXTEENTHS);
}
