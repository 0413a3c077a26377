import {
  type ScrewContact,
  type ScrewPlace,
  type ScrewPlaces,
  screwDistances,
  screwPlaces,
} from '../materials/screw-spacing.js';
import { formatLength } from '../measure/format-length.js';
import type { Display, Mm } from '../measure/quantities.js';
import { lengthKey, sameLength } from '../measure/tolerance.js';
import { listWords } from '../text/list.js';

/** From this many times as long as it is wide, an overlap is held along its length. */
const LONG = 2;

/** Along a long overlap and to and fro across it; in a row across a short one, so that it cannot turn. */
export function placesIn(
  contact: ScrewContact,
  { each, gauge }: { readonly each: number; readonly gauge: number },
  display: Display,
): ScrewPlaces {
  const { length, width } = contact;
  const strip = { ...contact, width: Math.min(width, 2 * screwDistances(gauge, true).edge.value) };
  const row = screwPlaces(strip, each, gauge, display);
  if (length < LONG * width || row.kind === 'no-room') {
    return screwPlaces(contact, each, gauge, display);
  }
  return {
    kind: 'places',
    places: row.places.map((place, at) => zigzag(place, at, contact, gauge)),
  };
}

function zigzag(
  { along }: ScrewPlace,
  at: number,
  { width }: ScrewContact,
  gauge: number,
): ScrewPlace {
  const roomy = width >= WIDE * screwDistances(gauge, true).edge.value;
  if (!roomy) return { along, across: width / 2 };
  return { along, across: at % 2 === 0 ? width / 4 : (width * 3) / 4 };
}

/** So many least edge distances of width leave room for two lines. */
const WIDE = 4;

/** "15/16 in from the end, 7/8 in and 2-5/8 in from one edge"; equal distances told once. */
export function placeWords(
  places: readonly ScrewPlace[],
  { length, width, ends }: ScrewContact,
  display: Display,
): string {
  const marks = (values: readonly Mm[]) =>
    listWords([...new Set(values.map(at => formatLength(at, display)))]);
  const along = places.map(place => place.along);
  const across = places.map(place => place.across);
  const centered = along.every(at => sameLength(at, length / 2));
  const midway = across.every(at => sameLength(at, width / 2));
  if (centered && midway) return 'in the middle';
  const start = centered
    ? 'in the middle of its length'
    : `${marks(along)} ${ends === 'none' ? 'from one end of the overlap' : 'from the end'}`;
  if (midway) return `${start}, in the middle of its width`;
  const by = new Set(along.map(lengthKey)).size > 1 ? 'in turn ' : '';
  return `${start}, ${by}${marks(across)} from one edge`;
}
