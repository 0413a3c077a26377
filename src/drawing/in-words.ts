import { formatLength } from '../measure/format-length.js';
import type { Display } from '../measure/quantities.js';
import type { AddedKind, Stretch } from './added-kinds.js';
import type { PaperBox, Sight } from './sight.js';

/** More kinds than this in one sentence are not kept in mind; the rest are counted. */
const KINDS_TOLD = 4;

/** What a drawing shows, for someone who hears it instead of seeing it. */
export type Shown = {
  readonly sight: Sight;
  readonly paper: PaperBox;
  readonly kinds: readonly AddedKind[];
  /** Boards that stood there before. */
  readonly standing: number;
  /** Boards being added that nothing is seen of. */
  readonly behind: number;
};

/**
 * One to three sentences: the size of what is shown, what is being added and where, what stood there.
 * "Front view: 48 in wide and 18 in high. Being added: Seat rail, 2 of them, 48 in long, 13 in from
 * the bottom. 4 boards stand there already."
 */
export function inWords(shown: Shown, display: Display): string {
  const size = (along: 'u' | 'v') => {
    const span = shown.paper[along];
    return `${formatLength(span.to - span.from, display)} ${shown.sight.size[along]}`;
  };
  const sentences = [
    `${shown.sight.title}: ${size('u')} and ${size('v')}.`,
    ...addedSentence(shown, display),
    ...behindSentence(shown.behind),
    ...standingSentence(shown.standing, shown.kinds.length > 0),
  ];
  return sentences.join(' ');
}

function addedSentence({ kinds, sight }: Shown, display: Display): readonly string[] {
  if (kinds.length === 0) return [];
  const told = kinds.slice(0, KINDS_TOLD).map(kind => kindInWords(kind, sight, display));
  const rest = kinds.length - told.length;
  if (rest > 0) told.push(rest === 1 ? 'and one more kind' : `and ${rest} more kinds`);
  return [`Being added: ${told.join('; ')}.`];
}

function kindInWords(kind: AddedKind, sight: Sight, display: Display): string {
  const measure = (stretch: Stretch) => formatLength(stretch.span.to - stretch.span.from, display);
  const words = [kind.name];
  if (kind.count > 1) words.push(`${kind.count} of them`);
  words.push(kind.length === undefined ? 'seen on end' : `${measure(kind.length)} long`);
  if (kind.offset !== undefined) {
    words.push(`${measure(kind.offset)} from ${sight.datum[kind.offset.along]}`);
  }
  if (kind.gap !== undefined) words.push(`first gap ${measure(kind.gap)}`);
  return words.join(', ');
}

/** How many of the boards being added nothing is seen of. */
export function behindSentence(behind: number): readonly string[] {
  if (behind === 0) return [];
  if (behind === 1) return ['One of the boards being added is hidden behind other wood here.'];
  return [`${behind} of the boards being added are hidden behind other wood here.`];
}

/** How many boards stand there, before others are added or by themselves. */
export function standingSentence(standing: number, isAdding: boolean): readonly string[] {
  if (standing === 0) return [];
  const already = isAdding ? ' already' : '';
  return [
    standing === 1
      ? `One board stands there${already}.`
      : `${standing} boards stand there${already}.`,
  ];
}
