import type { Source, Standing } from '../measure/figure.js';

/** From what is best known to what is least. */
const ORDER: readonly Standing[] = ['answer', 'checked', 'computed', 'practice', 'memory'];

/**
 * Source of a figure that stands on two: the first is named with the second behind it, and the figure
 * is no better known than the weaker of them.
 * @example weaker(table13_5, equation13_2) // "Table 13-5, by equation 13-2"
 */
export function weaker(first: Source, second: Source): Source {
  const by = second.place ?? second.publication;
  const named =
    first.publication === second.publication ? by : `${second.publication} ${second.place ?? ''}`;
  return noBetter(
    { ...first, place: `${first.place ?? 'as given'}, by ${named.trim()}` },
    second.standing,
  );
}

/** The same source, no better known than this. */
export function noBetter(source: Source, standing: Standing): Source {
  return ORDER.indexOf(source.standing) >= ORDER.indexOf(standing)
    ? source
    : { ...source, standing };
}
