import { formatLength } from '../../measure/format-length.js';
import type { Display } from '../../measure/quantities.js';
import { sameLength } from '../../measure/tolerance.js';
import { extent } from '../../model/box.js';
import type { Box, Part } from '../../model/part.js';
import { behindSentence, standingSentence } from '../in-words.js';

/** More kinds than this in one sentence are not kept in mind; the rest are counted. */
const KINDS_TOLD = 4;

export type ShownCorner = {
  readonly title: string;
  readonly all: Box;
  readonly added: readonly Part[];
  readonly standing: number;
  readonly behind: number;
};

/** A corner view for someone who hears it: sizes, what is being added, what stood there. */
export function cornerInWords(shown: ShownCorner, display: Display): string {
  const { title, all, added, standing, behind } = shown;
  const size = (axis: 'x' | 'y' | 'z') => formatLength(extent(all, axis), display);
  return [
    `${title}: ${size('x')} wide, ${size('y')} deep and ${size('z')} high.`,
    ...addedSentence(added, display),
    ...behindSentence(behind),
    ...standingSentence(standing, added.length > 0),
  ].join(' ');
}

function addedSentence(added: readonly Part[], display: Display): readonly string[] {
  const kinds: { first: Part; count: number }[] = [];
  for (const part of added) {
    const same = kinds.find(
      ({ first }) => first.name === part.name && sameLength(first.length, part.length),
    );
    if (same === undefined) kinds.push({ first: part, count: 1 });
    else same.count += 1;
  }
  if (kinds.length === 0) return [];
  const told = kinds.slice(0, KINDS_TOLD).map(({ first, count }) => {
    const many = count > 1 ? `, ${count} of them` : '';
    return `${first.name}${many}, ${formatLength(first.length, display)} long`;
  });
  const rest = kinds.length - told.length;
  if (rest > 0) told.push(rest === 1 ? 'and one more kind' : `and ${rest} more kinds`);
  return [`Being added: ${told.join('; ')}.`];
}
