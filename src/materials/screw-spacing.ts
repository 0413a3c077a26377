import { SIXTEENTHS } from '../measure/displays.js';
import { formatLengthExact } from '../measure/format-length.js';
import type { Display, Mm } from '../measure/quantities.js';
import { gridSteps } from '../measure/round.js';
import { lessThan } from '../measure/tolerance.js';
import { shank } from './gauges.js';
import { type Sourced, sourced } from './sourced.js';
import { recalled } from './sources.js';

/** Distances that keep wood from splitting, in shank diameters: not bored first, bored first. */
const DIAMETERS = {
  edge: [2.5, 2.5],
  endPulled: [15, 10],
  endPushed: [10, 5],
  inRowAlong: [15, 10],
  inRowAcross: [10, 5],
  betweenRows: [5, 3],
} as const;

export type ScrewDistances = Readonly<Record<keyof typeof DIAMETERS, Sourced<Mm>>>;

/**
 * Least distances for a gauge: from an edge, from an end that is pulled or pushed along the grain,
 * between screws in a row along or across the grain, between rows. NDS commentary, wood sides.
 * @example screwDistances(10, true).endPulled.value // 48.26 mm: 1.9 in
 */
export function screwDistances(gauge: number, bored: boolean): ScrewDistances {
  const of = (rule: keyof typeof DIAMETERS): Sourced<Mm> => {
    const times = DIAMETERS[rule][bored ? 1 : 0];
    return sourced(
      shank(gauge) * times,
      recalled('nds', `commentary Table C12.1.5.7, ${times} diameters`),
    );
  };
  return {
    edge: of('edge'),
    endPulled: of('endPulled'),
    endPushed: of('endPushed'),
    inRowAlong: of('inRowAlong'),
    inRowAcross: of('inRowAcross'),
    betweenRows: of('betweenRows'),
  };
}

/** Where two pieces touch, seen from the head of the screw. */
export type ScrewContact = {
  /** Along the grain of the piece under the head. */
  readonly length: Mm;
  /** Across it. */
  readonly width: Mm;
  /** Which borders of the length are ends of that piece; one when nothing is said. */
  readonly ends?: 'none' | 'one' | 'both';
};

/** A screw by its distance from the piece's end (or the contact's start) and from one long border. */
export type ScrewPlace = { readonly along: Mm; readonly across: Mm };

export type ScrewPlaces =
  | { readonly kind: 'places'; readonly places: readonly ScrewPlace[] }
  | { readonly kind: 'no-room'; readonly fits: number; readonly because: string };

/** A stretch in which screws may stand, and how many stand in it at the least distance. */
type Row = { readonly from: Mm; readonly to: Mm; readonly apart: Mm; readonly fits: number };

/**
 * Spreads screws over a contact: a row across the grain first, so that no two share a line of fibers,
 * then more rows behind it. Holes are taken as bored and the ends as pushed, not pulled, along the
 * grain; the second piece's ends are not looked at.
 * @example two No. 8 where a 3-1/2 in slat ends on a 1-1/2 in rail: 15/16 in in from the end, 7/8 in
 * and 2-5/8 in across
 */
export function screwPlaces(
  contact: ScrewContact,
  count: number,
  gauge: number,
  display: Display = SIXTEENTHS,
): ScrewPlaces {
  const { across, along } = rowsIn(contact, gauge);
  const fits = across.fits * along.fits;
  if (fits < count) {
    return {
      kind: 'no-room',
      fits,
      because: becauseNoRoom(contact, { gauge, count, fits }, display),
    };
  }
  const rows = Math.ceil(count / across.fits);
  const rowMarks = spread(along, rows);
  const places = rowMarks.flatMap((mark, row) => {
    const inRow = Math.floor(count / rows) + (row < count % rows ? 1 : 0);
    return evenly(contact.width, across, inRow).map(place => ({ along: mark, across: place }));
  });
  return { kind: 'places', places };
}

function rowsIn(contact: ScrewContact, gauge: number): { across: Row; along: Row } {
  const distances = screwDistances(gauge, true);
  const edge = distances.edge.value;
  const end = distances.endPushed.value;
  const ends = contact.ends ?? 'one';
  const start = ends === 'none' ? edge : end;
  const finish = ends === 'both' ? end : edge;
  return {
    across: row(edge, contact.width - edge, distances.inRowAcross.value),
    along: row(start, contact.length - finish, distances.inRowAlong.value),
  };
}

function row(from: Mm, to: Mm, apart: Mm): Row {
  if (lessThan(to, from)) return { from, to, apart, fits: 0 };
  return { from, to, apart, fits: gridSteps(to - from, apart, 'down') + 1 };
}

/** Marks from one end of the stretch to the other; a single mark stands in its middle. */
function spread({ from, to }: Row, count: number): readonly Mm[] {
  if (count === 1) return [(from + to) / 2];
  return Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));
}

/** Marks in the middle of equal shares of the width, or border to border where those are too tight. */
function evenly(width: Mm, limits: Row, count: number): readonly Mm[] {
  const share = width / count;
  const tight = lessThan(share / 2, limits.from) || (count > 1 && lessThan(share, limits.apart));
  if (tight) return spread(limits, count);
  return Array.from({ length: count }, (_, i) => share * (i + 0.5));
}

function becauseNoRoom(
  { length, width }: ScrewContact,
  { gauge, count, fits }: { readonly gauge: number; readonly count: number; readonly fits: number },
  display: Display,
): string {
  const say = (value: Mm) => formatLengthExact(value, display);
  const { edge, endPushed } = screwDistances(gauge, true);
  return (
    `${count} No. ${gauge} screws do not fit on ${say(length)} by ${say(width)}: ` +
    `${say(edge.value)} from every edge and ${say(endPushed.value)} from an end leave room for ${fits}`
  );
}
