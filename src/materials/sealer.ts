import { squareFeet } from '../measure/area.js';
import type { Celsius, Minutes, SquareMm } from '../measure/quantities.js';
import { fahrenheit } from '../measure/temperature.js';
import { gallons } from '../measure/volume.js';
import { type Sourced, sourced } from './sourced.js';
import { practice, recalled, seen } from './sources.js';

export type SealerId =
  | 'penetrating-sealer'
  | 'penetrating-oil'
  | 'semitransparent-stain'
  | 'water-borne-sealer';

/** A finish by its kind. The label of the can in hand comes before every figure here. */
export type Sealer = {
  readonly id: SealerId;
  readonly name: string;
  /** Area that a milliliter covers on planed wood, first coat. */
  readonly smooth: Sourced<SquareMm>;
  /** The same on sawn or weathered wood. */
  readonly rough: Sourced<SquareMm>;
  readonly usualCoats: Sourced<{ readonly smooth: number; readonly rough: number }>;
  /** How long it may soak before what stands on the surface is wiped off. */
  readonly dwellMinutes: Sourced<Minutes>;
  /** Before the next coat. */
  readonly recoatHours: Sourced<number>;
  /** Before rain or dew may fall on it. */
  readonly rainHours: Sourced<number>;
  /** How long a coat lasts outdoors: the shortest and the longest that is usual. */
  readonly lastsYears: Sourced<{ readonly from: number; readonly to: number }>;
  readonly lowest: Sourced<Celsius>;
  readonly highest: Sourced<Celsius>;
  /** True when its rags can heat up and catch fire by themselves. */
  readonly hotRags: boolean;
  readonly notes: readonly string[];
};

/** Wood wetter than this takes no penetrating finish. */
export const WETTEST_TO_SEAL = sourced(
  20,
  recalled('wood-handbook', 'chapter 16: penetrating finishes on wood below 20 %'),
);

/** The surface must be this much warmer than the dew point until the coat is dry. */
export const ABOVE_DEW_POINT: Sourced<Celsius> = sourced(
  3,
  seen('coating-weather', 'surface 3 C (5 F) above the dew point'),
);

/** Most coatings want the air drier than this. */
export const DAMPEST_AIR_PERCENT = sourced(85, seen('coating-weather', 'humidity below 85 %'));

const COATS = sourced(
  { smooth: 1, rough: 2 },
  recalled('wood-handbook', 'chapter 16: one coat on smooth, two on rough'),
);
const FLOOD_AND_WIPE = sourced(15, practice('flood, wait about 15 min, wipe back'));
const A_DAY_OF_RAIN = sourced(24, practice('a day without rain after the last coat'));

/** Area for each milliliter from the usual square feet a gallon. */
function perGallon(feet2: number): SquareMm {
  return squareFeet(feet2) / gallons(1);
}

export const SEALERS: readonly Sealer[] = [
  {
    id: 'penetrating-sealer',
    name: 'penetrating sealer (oil-borne water repellent)',
    smooth: sourced(
      perGallon(250),
      recalled('wood-handbook', 'chapter 16, water repellent, first coat 250 ft2/gal'),
    ),
    rough: sourced(
      perGallon(150),
      recalled('wood-handbook', 'chapter 16, water repellent, rough wood 150 ft2/gal'),
    ),
    usualCoats: COATS,
    dwellMinutes: FLOOD_AND_WIPE,
    recoatHours: sourced(24, recalled('finish-labels', 'oil-borne, 12 to 24 h')),
    rainHours: A_DAY_OF_RAIN,
    lastsYears: sourced(
      { from: 1, to: 3 },
      recalled('wood-handbook', 'chapter 16: water repellents, 1 to 3 years'),
    ),
    lowest: sourced(fahrenheit(50), seen('deck-finishing', 'above 50 F')),
    highest: sourced(fahrenheit(90), recalled('finish-labels', '50 to 90 F')),
    hotRags: true,
    notes: [
      'Wipe off everything that has not soaked in: what stands on the surface stays sticky.',
      'Recoat when water no longer beads, usually after one to three years.',
    ],
  },
  {
    id: 'penetrating-oil',
    name: 'penetrating exterior oil',
    smooth: sourced(
      perGallon(200),
      recalled('finish-labels', 'penetrating oil on planed softwood 200 ft2/gal'),
    ),
    rough: sourced(
      perGallon(150),
      seen('older-finishing', 'penetrating stain, rough wood 150 to 250 ft2/gal'),
    ),
    usualCoats: sourced({ smooth: 1, rough: 2 }, seen('oil-sheet', 'one coat, two if it soaks in')),
    dwellMinutes: sourced(30, seen('oil-sheet', 'wipe after 30 min')),
    recoatHours: sourced(4, seen('oil-sheet', 'second light coat after 3 to 4 h')),
    rainHours: sourced(24, seen('oil-sheet', 'no rain for 24 h')),
    lastsYears: sourced({ from: 1, to: 2 }, practice('exterior oil, every year or two')),
    lowest: sourced(fahrenheit(45), seen('oil-sheet', '45 to 80 F')),
    highest: sourced(fahrenheit(80), seen('oil-sheet', '45 to 80 F')),
    hotRags: true,
    notes: [
      'Never coat wet on wet with this kind.',
      'Oak and other open-pored wood bleeds oil back: wipe again after 1, 4 and 24 h.',
    ],
  },
  {
    id: 'semitransparent-stain',
    name: 'semitransparent oil stain',
    smooth: sourced(
      perGallon(300),
      seen('wood-handbook', 'chapter 16, middle of 200 to 400 ft2/gal'),
    ),
    rough: sourced(
      perGallon(150),
      seen('wood-handbook', 'chapter 16, middle of 100 to 200 ft2/gal'),
    ),
    usualCoats: COATS,
    dwellMinutes: sourced(60, seen('wood-handbook', 'chapter 16, wipe off after about 60 min')),
    recoatHours: sourced(1, seen('wood-handbook', 'chapter 16, second coat within 20 to 60 min')),
    rainHours: A_DAY_OF_RAIN,
    lastsYears: sourced(
      { from: 3, to: 6 },
      recalled('wood-handbook', 'chapter 16: semitransparent stain, 3 to 6 years'),
    ),
    lowest: sourced(fahrenheit(50), seen('deck-finishing', 'above 50 F')),
    highest: sourced(fahrenheit(90), recalled('finish-labels', '50 to 90 F')),
    hotRags: true,
    notes: [
      'On rough wood the second coat goes on before the first has dried.',
      'Keep a wet edge and do a whole board at a time, or laps will show.',
    ],
  },
  {
    id: 'water-borne-sealer',
    name: 'water-borne sealer',
    smooth: sourced(perGallon(250), practice('taken as an oil-borne water repellent')),
    rough: sourced(perGallon(150), practice('taken as an oil-borne water repellent')),
    usualCoats: sourced({ smooth: 2, rough: 2 }, practice('two thin coats')),
    dwellMinutes: FLOOD_AND_WIPE,
    recoatHours: sourced(4, recalled('finish-labels', 'water-borne, 2 to 4 h')),
    rainHours: A_DAY_OF_RAIN,
    lastsYears: sourced({ from: 1, to: 2 }, practice('water-borne sealer, every year or two')),
    lowest: sourced(fahrenheit(50), recalled('finish-labels', '50 to 90 F')),
    highest: sourced(fahrenheit(90), recalled('finish-labels', '50 to 90 F')),
    hotRags: false,
    notes: ['The first coat raises the grain: a light sanding before the second.'],
  },
];

/** The row of this kind. */
export function sealerOf(id: SealerId): Sealer {
  const sealer = SEALERS.find(row => row.id === id);
  if (sealer === undefined) throw new Error(`no sealer row for ${id}`);
  return sealer;
}
