import type { SaveProblem } from './keep.js';

const IN_SHORT: Readonly<Record<SaveProblem, string>> = {
  'disk-full': 'the disk is full',
  'read-only': 'the folder may not be written',
  gone: 'its folder is not there',
  'changed-by-another':
    'another window has taken this build over; go on there, or leave and open it here anew',
  other: 'the disk did not take it',
};

/** Why nothing was saved, short enough for the foot of a screen: "the disk is full". */
export function saveProblemInShort(problem: SaveProblem): string {
  return IN_SHORT[problem];
}
