import { FLOOR_WORDS, floorCheck } from '../materials/floor-check.js';
import { DECK_LIVE_LOAD, PERSON } from '../materials/loads.js';
import { formatArea, squareMeters } from '../measure/area.js';
import { COMPUTED } from '../measure/figure.js';
import { figure, sourceText } from '../measure/figure-text.js';
import { formatFloorLoad } from '../measure/floor-load.js';
import type { Kilograms, SquareMm } from '../measure/quantities.js';
import { formatWeight } from '../measure/weight.js';
import { extent } from '../model/box.js';
import type { Model } from '../model/part.js';
import type { FloorKind, HoldInputs, HoldRow } from './hold-row.js';
import { peopleOn, woodWeight } from './hold-weights.js';

type Raised = Extract<FloorKind, { kind: 'raised' }>;

/** Half of what a deck carries is kept for people who are not on the bench. */
const KEPT_FOR_PEOPLE = 1 / 2;

/**
 * The whole piece on a floor that is not the ground: its weight empty, planted, soaked, and with
 * people, over the area it takes up, and as a share of the whole deck where its size is known.
 */
export function floorRows(
  model: Model,
  seats: readonly string[],
  inputs: HoldInputs,
): readonly HoldRow[] {
  const { floor } = inputs;
  if (floor.kind === 'ground') return [];
  const loads = loadsOf(model, seats, inputs);
  const whole = floor.area === undefined ? [] : [deckRow(loads, floor.area, { floor, inputs })];
  return [spreadRow(model, loads, { floor, inputs }), ...whole];
}

type Loads = {
  readonly empty: Kilograms;
  readonly planted: Kilograms;
  readonly soaked: Kilograms;
  readonly people: Kilograms;
};

function loadsOf(model: Model, seats: readonly string[], inputs: HoldInputs): Loads {
  const empty = woodWeight(model.parts, inputs);
  return {
    empty,
    planted: empty + inputs.pots.planted,
    soaked: empty + inputs.pots.soaked,
    people: peopleOn(model, seats) * PERSON.value,
  };
}

type On = { readonly floor: Raised; readonly inputs: HoldInputs };

function spreadRow(model: Model, loads: Loads, { floor, inputs }: On): HoldRow {
  const { display } = inputs;
  const area = extent(model.overall, 'x') * extent(model.overall, 'y');
  const check = floorCheck(loads.soaked + loads.people, area, floor.limit);
  const say = (weight: Kilograms) => formatWeight(weight, display);
  const over = check.share > 1;
  const needs = ((loads.soaked + loads.people) / check.limit) * squareMeters(1);
  return {
    id: 'floor/spread',
    say: 'Weight on the floor it covers',
    sum: `${say(loads.empty)} empty, ${say(loads.planted)} planted, ${say(loads.soaked)} soaked, and ${say(loads.people)} of people, over ${formatArea(area, display)}: ${formatFloorLoad(check.spread, display)}`,
    value: figure(
      check.spread,
      'kg/m2',
      'soaked and every place taken, over what it covers',
      COMPUTED,
    ),
    limit: limitWords(floor, inputs),
    verdict: over ? 'look again' : 'holds by this sum',
    better: over
      ? `It uses up what ${formatArea(needs, display)} of this floor are meant for: keep other heavy things away from it, set it across the joists near the house wall or over a beam. ${FLOOR_WORDS}`
      : '',
    source: sourceText(DECK_LIVE_LOAD.source),
  };
}

function deckRow(loads: Loads, area: SquareMm, { floor, inputs }: On): HoldRow {
  const { display } = inputs;
  const limit = floor.limit ?? DECK_LIVE_LOAD.value;
  const carries = (limit * area) / squareMeters(1);
  const total = loads.soaked + loads.people;
  const kept = carries * (1 - KEPT_FOR_PEOPLE);
  const verdict =
    total > carries
      ? 'does not hold by this sum'
      : total > kept
        ? 'look again'
        : 'holds by this sum';
  return {
    id: 'floor/deck',
    say: 'Share of the whole deck',
    sum: `${formatArea(area, display)} at ${formatFloorLoad(limit, display)} are meant for ${formatWeight(carries, display)} in all; half of it is kept for other people and things`,
    value: figure(total, 'kg', 'soaked and every place taken', COMPUTED),
    limit: `at most ${formatWeight(kept, display)}`,
    verdict,
    better: verdict === 'holds by this sum' ? '' : `Fewer or smaller planters. ${FLOOR_WORDS}`,
    source: sourceText(DECK_LIVE_LOAD.source),
  };
}

function limitWords({ limit }: Raised, { display }: HoldInputs): string {
  const value = formatFloorLoad(limit ?? DECK_LIVE_LOAD.value, display);
  return limit === undefined
    ? `${value}, usual for decks; nobody has said what this one carries`
    : `${value}, as you were told`;
}
