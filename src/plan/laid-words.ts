import { formatMinutes } from '../measure/duration.js';
import type { Schedule } from '../solve/schedule/problem.js';
import { count } from '../text/plural.js';

/** What the search for the shortest plan can say for sure, in plain words. */
export function laidWords({ turns, finish, lowerBound, proof, fewestProven }: Schedule): string {
  const work = count(turns.length, 'piece of work');
  const fewest = fewestProven ? ', nor in fewer sessions by then' : '';
  switch (proof.kind) {
    case 'bound':
      return `Nobody can be done earlier with these people and hours${fewest}: the longest chain of work and waits takes as long`;
    case 'search':
      return `Nobody can be done earlier with these people and hours${fewest}: every other order of the ${work} was ruled out`;
    case 'none':
      return `The best order of the ${work} that was found; another might end up to ${formatMinutes(finish - lowerBound)} earlier`;
  }
}
