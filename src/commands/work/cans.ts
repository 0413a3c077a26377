import {
  CANS,
  SEALER_NEED_SOURCE,
  type SealerNeed,
  sealerNeed,
} from '../../materials/sealer-need.js';
import { formatArea } from '../../measure/area.js';
import { COMPUTED } from '../../measure/figure.js';
import { figure } from '../../measure/figure-text.js';
import { formatNumber } from '../../measure/format-number.js';
import type { Display, SquareMm } from '../../measure/quantities.js';
import { formatVolume, gallons } from '../../measure/volume.js';
import { type CanOffer, type Cans, cansFor } from '../../plan/cans.js';
import { readArea, readPrices } from './can-given.js';
import type { Answered, Given, WorkResult, WorkRule } from './rule.js';
import { SEALER_OPTION, sealerGiven } from './seal-options.js';

/** `notchbook work cans`: how much sealer, in which cans. */
export const CANS_RULE: WorkRule = {
  name: 'cans',
  say: 'how much sealer for an area, in the cans that cost or leave least',
  example: 'notchbook work cans --area "800 sq ft" --price gallon=38.50 --price quart=14',
  options: [
    { name: 'area', kind: 'word', say: 'all faces and edges, both sides', example: '"800 sq ft"' },
    {
      name: 'coats',
      kind: 'count',
      say: 'how many coats',
      example: '1',
      usual: '1',
      least: 1,
      most: 5,
    },
    {
      name: 'surface',
      kind: 'word',
      say: 'planed or rough (sawn, weathered)',
      example: 'planed',
      usual: 'planed',
      choices: ['planed', 'rough'],
    },
    SEALER_OPTION,
    {
      name: 'price',
      kind: 'words',
      say: 'price of a can, once for each size on the shelf',
      example: 'gallon=38.50',
    },
  ],
  work,
};

function work(given: Given): WorkResult {
  const { display } = given;
  const area = readArea(given);
  if (!area.ok) return { ok: false, problems: [`--area: ${area.problem} ${area.hint}`] };
  const offers = readPrices(given.words('price'), CANS[display.system]);
  if (!offers.ok) return { ok: false, problems: [`${offers.problem} ${offers.hint}`] };
  const need = needOf(area.value, given);
  const cost = cansFor(need.milliliters, offers.value, 'cost');
  const least = cansFor(need.milliliters, offers.value, 'left-over');
  return {
    ok: true,
    figures: [...needFigures(area.value, need, given), ...canFigures(cost, least)],
    more: { by_cost: listOf(cost), by_left_over: listOf(least) },
    notes: [
      ...(cost.cost === undefined ? [] : [`Least cost: ${canWords(cost)}.`]),
      `Least left over: ${canWords(least)}, ${formatVolume(least.leftOver, display)} left.`,
      'Count faces and edges of every board, not the outline; end grain drinks about three times as much.',
      ...(sealerGiven(given).hotRags ? [RAGS] : []),
      'The reach on the can comes first.',
    ],
  };
}

const RAGS =
  'Oily rags catch fire by themselves: flat outdoors until hard, or drowned in a lidded metal can.';

function needOf(faces: SquareMm, given: Given): SealerNeed {
  return sealerNeed({
    faces,
    endGrain: 0,
    rough: given.word('surface') === 'rough',
    coats: given.number('coats'),
    kind: sealerGiven(given).id,
    method: 'brush',
  });
}

function needFigures(area: SquareMm, need: SealerNeed, given: Given): readonly Answered[] {
  const { display } = given;
  const { rough, smooth } = sealerGiven(given);
  const reach = given.word('surface') === 'rough' ? rough : smooth;
  const covers = `${formatArea(area, display)}; ${reachWords(reach.value, display)} on the first coat`;
  return [
    {
      name: 'on_wood_ml',
      say: 'on the wood',
      figure: figure(need.onWoodMilliliters, 'ml', covers, reach.source),
    },
    {
      name: 'amount_ml',
      say: 'to buy for',
      figure: figure(need.milliliters, 'ml', 'with what the brush keeps, 10%', SEALER_NEED_SOURCE),
    },
  ];
}

function reachWords(perMilliliter: number, display: Display): string {
  if (display.system === 'metric')
    return `a liter covers ${formatArea(perMilliliter * 1000, display)}`;
  return `a gallon covers ${formatArea(perMilliliter * gallons(1), display)}`;
}

function canFigures(cost: Cans, least: Cans): readonly Answered[] {
  const chosen = cost.cost === undefined ? least : cost;
  const left: Answered = {
    name: 'left_ml',
    say: 'left over',
    figure: figure(chosen.leftOver, 'ml', canWords(chosen), COMPUTED),
  };
  if (cost.cost === undefined) return [left];
  return [
    {
      name: 'cost',
      say: 'cost',
      figure: figure(cost.cost, 'cents', `${canWords(cost)}, no other choice costs less`, COMPUTED),
    },
    left,
  ];
}

function canWords({ cans }: Cans): string {
  return cans.map(({ offer, count }) => `${formatNumber(count, 0)} x ${offer.name}`).join(' and ');
}

function listOf({
  cans,
}: Cans): readonly { readonly name: CanOffer['name']; readonly count: number }[] {
  return cans.map(({ offer, count }) => ({ name: offer.name, count }));
}
