import { PERSON } from '../materials/loads.js';
import { COMPUTED } from '../measure/figure.js';
import { figure, sourceText } from '../measure/figure-text.js';
import { formatLength } from '../measure/format-length.js';
import { inches } from '../measure/inch.js';
import type { Kilograms, Mm } from '../measure/quantities.js';
import { formatWeight } from '../measure/weight.js';
import { extent } from '../model/box.js';
import type { Model } from '../model/part.js';
import { checkPlaced } from './hold-beam.js';
import type { HoldInputs, HoldRow, ShelfRole, SlatRole } from './hold-row.js';
import { beamWords } from './hold-seat.js';
import { type Bearings, bearingsOf, partsAt } from './hold-spans.js';

/** Breadth of a narrow person sitting: women's 5th percentile hip breadth, 310 mm (Pheasant). */
const SITTING_WIDTH: Mm = 310;
/** A shoe along a slat. Common practice. */
const FOOT_LENGTH: Mm = inches(10);

/** The slat with the widest span, and how far it is from one slat to the next. */
type Slats = { readonly bearings: Bearings; readonly pitch: Mm };

/**
 * Slats between rails: somebody of 250 lb who sits over as many slats as a narrow person covers, and
 * the same person standing with one foot along a single slat.
 */
export function slatRows(model: Model, role: SlatRole, inputs: HoldInputs): readonly HoldRow[] {
  const slats = slatsOf(model, role);
  if (slats === undefined) return [];
  return [seatedRow(role, slats, inputs), footRow(role, slats, inputs)];
}

function slatsOf(model: Model, role: SlatRole): Slats | undefined {
  const parts = partsAt(model, role.beams);
  const [widest] = parts
    .flatMap(part => bearingsOf(model, part, role.on) ?? [])
    .sort((a, b) => b.clear - a.clear);
  if (widest === undefined) return undefined;
  const across = widest.beam.runs === 'x' ? 'y' : 'x';
  const starts = parts.map(part => part.box.min[across]).sort((a, b) => a - b);
  const [first = 0, second] = starts;
  const width = extent(widest.beam.box, across);
  return { bearings: widest, pitch: second === undefined ? width : second - first };
}

function seatedRow({ id, say }: SlatRole, { bearings, pitch }: Slats, inputs: HoldInputs): HoldRow {
  const { display } = inputs;
  const under = Math.max(1, Math.floor(SITTING_WIDTH / pitch + 1e-9));
  const each = PERSON.value / under;
  const load = { kind: 'point', weight: each, over: 0 } as const;
  const placed = checkPlaced(bearings, { load, time: 'ten-years' }, inputs);
  const words = beamWords(placed, each, inputs);
  return {
    id: `${id}/seated`,
    say: `${say}: one heavy person sitting`,
    ...words,
    sum: `${formatWeight(PERSON.value, display)} on ${under} ${under === 1 ? 'slat' : 'slats'} ${formatLength(pitch, display)} apart; ${words.sum}`,
    limit: `at least ${formatWeight(each, display)} on one slat`,
    source: `${sourceText(PERSON.source)}; Pheasant, hip breadth; ${placed.source}`,
  };
}

/** Somebody will stand on it: not a use that a seat is for, so a failing sum asks for a second look. */
function footRow({ id, say }: SlatRole, { bearings }: Slats, inputs: HoldInputs): HoldRow {
  const { display } = inputs;
  const load = { kind: 'point', weight: PERSON.value, over: FOOT_LENGTH } as const;
  const placed = checkPlaced(bearings, { load, time: 'ten-years' }, inputs);
  const words = beamWords(placed, PERSON.value, inputs);
  const strong = placed.check.governing.share <= 1 + 1e-9;
  return {
    id: `${id}/foot`,
    say: `${say}: somebody standing with one foot on one slat`,
    ...words,
    sum: `${formatWeight(PERSON.value, display)} on a foot ${formatLength(FOOT_LENGTH, display)} long, along one slat; ${words.sum}`,
    limit: `at least ${formatWeight(PERSON.value, display)} on one slat`,
    verdict: strong ? 'holds by this sum' : 'look again',
    better: strong ? '' : words.better,
    source: `${sourceText(PERSON.source)}; ${placed.source}`,
  };
}

/**
 * Planks under soaked pots: the weight of all boxes spread over all planks, twice over on the one that
 * a heavy pot stands on.
 */
export function shelfRows(model: Model, role: ShelfRole, inputs: HoldInputs): readonly HoldRow[] {
  const planks = partsAt(model, role.beams);
  const [widest] = planks
    .flatMap(part => bearingsOf(model, part, role.on) ?? [])
    .sort((a, b) => b.clear - a.clear);
  if (widest === undefined || inputs.pots.soaked <= 0) return [];
  return [plankRow(role, widest, { count: planks.length, inputs })];
}

const UNEVEN_POTS = 2;

function plankRow(
  { id, say }: ShelfRole,
  bearings: Bearings,
  { count, inputs }: { readonly count: number; readonly inputs: HoldInputs },
): HoldRow {
  const { display, pots } = inputs;
  const each: Kilograms = (pots.soaked / count) * UNEVEN_POTS;
  const load = { kind: 'point', weight: each, over: bearings.clear / 2 } as const;
  const placed = checkPlaced(bearings, { load, time: 'permanent' }, inputs);
  const words = beamWords(placed, each, inputs);
  const because = `${words.value.because}, for good`;
  return {
    id: `${id}/pots`,
    say: `${say}: soaked pots`,
    ...words,
    value: figure(words.value.value, 'kg', because, COMPUTED),
    sum: `${formatWeight(pots.soaked, display)} on ${count} planks, one of them with twice its share; ${words.sum}`,
    limit: `at least ${formatWeight(each, display)} on one plank`,
    source: `common practice, twice the even share; ${placed.source}`,
  };
}
