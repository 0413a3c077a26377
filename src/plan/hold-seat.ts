import { PERSON } from '../materials/loads.js';
import { COMPUTED } from '../measure/figure.js';
import { figure, sourceText } from '../measure/figure-text.js';
import { formatLength } from '../measure/format-length.js';
import { formatNumber } from '../measure/format-number.js';
import { inches } from '../measure/inch.js';
import type { Kilograms, Mm } from '../measure/quantities.js';
import { formatWeight } from '../measure/weight.js';
import { center } from '../model/box.js';
import type { Model, Part } from '../model/part.js';
import { checkPlaced, type PlacedCheck } from './hold-beam.js';
import type { HoldInputs, HoldRow, SeatRole } from './hold-row.js';
import { type Bearings, bearingsOf, partsAt } from './hold-spans.js';

/** Usual room for one person on a bench. Common practice, 18 to 24 in. */
const ROOM_PER_PERSON: Mm = inches(20);

/** How many people sit on a length of seat at 20 in each; one at least. */
export function sitters(length: Mm): number {
  return Math.max(1, Math.floor(length / ROOM_PER_PERSON + 1e-9));
}

/** A beam under the seat, and its share of what lies on the seat. */
type Carrier = { readonly bearings: Bearings; readonly share: number };

/**
 * Rails under a seat: one person of 250 lb at any point of any rail (2010 ADA Standards, 903.6); a
 * full row of them, shared by the rails as the slats hand it on; and everybody perched on the front
 * edge, where one rail carries nearly all.
 */
export function seatRows(model: Model, role: SeatRole, inputs: HoldInputs): readonly HoldRow[] {
  const beams = partsAt(model, role.beams);
  const carriers = carriersOf(model, beams, role);
  const [first] = carriers;
  if (first === undefined) return [];
  const people = sitters(Math.max(...beams.map(beam => beam.length)));
  return [
    personRow(role, carriers, inputs),
    rowOfPeople(role, carriers, { people, inputs }),
    ...(carriers.length > 1 ? [perchRow(role, first, { people, inputs })] : []),
  ];
}

/** Each beam with the stretch of seat that it carries: half of the way to its neighbors. */
function carriersOf(model: Model, beams: readonly Part[], role: SeatRole): readonly Carrier[] {
  const [one] = beams;
  if (one === undefined) return [];
  const across = one.runs === 'x' ? 'y' : 'x';
  const sorted = [...beams].sort((a, b) => center(a.box)[across] - center(b.box)[across]);
  const places = sorted.map(beam => center(beam.box)[across]);
  const whole = (places.at(-1) ?? 0) - (places[0] ?? 0);
  return sorted.flatMap((beam, i) => {
    const bearings = bearingsOf(model, beam, role.on);
    if (bearings === undefined) return [];
    const here = places[i] ?? 0;
    const reach = ((places[i + 1] ?? here) - (places[i - 1] ?? here)) / 2;
    return [{ bearings, share: whole === 0 ? 1 : reach / whole }];
  });
}

function worst(checks: readonly PlacedCheck[]): PlacedCheck {
  return checks.reduce((a, b) => (b.check.governing.share > a.check.governing.share ? b : a));
}

function personRow(
  { id, say }: SeatRole,
  carriers: readonly Carrier[],
  inputs: HoldInputs,
): HoldRow {
  const { display } = inputs;
  const load = { kind: 'point', weight: PERSON.value, over: 0 } as const;
  const placed = worst(
    carriers.map(({ bearings }) => checkPlaced(bearings, { load, time: 'ten-years' }, inputs)),
  );
  return {
    id: `${id}/person`,
    say: `${say}: one heavy person at any point of it`,
    ...beamWords(placed, PERSON.value, inputs),
    limit: `at least ${formatWeight(PERSON.value, display)} at any point`,
    source: `${sourceText(PERSON.source)}; ${placed.source}`,
  };
}

type Row = { readonly people: number; readonly inputs: HoldInputs };

function rowOfPeople(
  { id, say }: SeatRole,
  carriers: readonly Carrier[],
  { people, inputs }: Row,
): HoldRow {
  const total = people * PERSON.value;
  const placed = worst(
    carriers.map(({ bearings, share }) =>
      checkPlaced(bearings, spreadOn(bearings, total * share), inputs),
    ),
  );
  const shares = carriers.map(({ share }) => formatNumber(share, 2)).join(', ');
  const words = beamWords(placed, loadIn(placed), inputs);
  return {
    id: `${id}/row`,
    say: `${say}: every place taken`,
    ...words,
    sum: `${people} x ${formatWeight(PERSON.value, inputs.display)}, shared ${shares} by the rails; ${words.sum}`,
    limit: `at least ${formatWeight(loadIn(placed), inputs.display)} spread over it`,
    source: `common practice, ${formatLength(ROOM_PER_PERSON, inputs.display)} a person; ${placed.source}`,
  };
}

/** All the people lean forward on the front edge: told, but never a reason to say that it fails. */
function perchRow({ id, say }: SeatRole, front: Carrier, { people, inputs }: Row): HoldRow {
  const total = people * PERSON.value;
  const placed = checkPlaced(front.bearings, spreadOn(front.bearings, total), inputs);
  const words = beamWords(placed, loadIn(placed), inputs);
  const most = placed.check.mostLoad / (loadIn(placed) / people);
  const count = formatNumber(Math.floor(most * 10) / 10, 1);
  const holds = words.verdict === 'holds by this sum';
  return {
    id: `${id}/perch`,
    say: `${say}: everybody on the very edge, on one rail`,
    ...words,
    sum: `one rail alone carries about ${count} people of ${formatWeight(PERSON.value, inputs.display)} where ${people} sit; ${words.sum}`,
    limit: `at least ${formatWeight(loadIn(placed), inputs.display)}, which is seldom there all at once`,
    verdict: holds ? words.verdict : 'look again',
    better: words.better,
    source: `common practice, ${formatLength(ROOM_PER_PERSON, inputs.display)} a person; ${placed.source}`,
  };
}

/** The part of a load over the whole board that lies in the span. */
function spreadOn({ beam, clear }: Bearings, onBoard: Kilograms) {
  const inSpan = Math.min(1, clear / beam.length);
  const load = { kind: 'spread', weight: onBoard * inSpan } as const;
  return { load, time: 'ten-years' } as const;
}

function loadIn({ check }: PlacedCheck): Kilograms {
  return check.mostLoad * check.governing.share;
}

/** The parts of a row that every beam has. */
export function beamWords(
  placed: PlacedCheck,
  asked: Kilograms,
  { display }: HoldInputs,
): Pick<HoldRow, 'sum' | 'value' | 'verdict' | 'better'> {
  const { check, span, assumed } = placed;
  const because = `${formatWeight(asked, display)} uses ${formatNumber(check.governing.share * 100, 0)}% of its ${check.governing.of === 'notch' ? 'shear strength at the notch' : `${check.governing.of} strength`}`;
  return {
    sum: `${formatLength(span, display)} between supports, taken as ${assumed}; ${check.because}`,
    value: figure(check.mostLoad, 'kg', because, COMPUTED),
    verdict: check.verdict,
    better: placed.better,
  };
}
