import type { Source } from '../measure/figure.js';
import { type AirOfMonth, type Climate, monthsOfAir } from './climate.js';
import { recalled, seen } from './sources.js';

/** The table of outdoor places as remembered; none of its rows was looked up. */
const REMEMBERED: Source = recalled('wood-handbook', 'Table 13-1, equilibrium moisture outdoors');
const NORMALS: Source = recalled(
  'climate-normals',
  'remembered monthly air through the sorption equation, give or take 1 %',
);

/** January to December. */
function place(name: string, percents: readonly number[], alsoCalled: readonly string[]): Climate {
  return { name, alsoCalled, year: { kind: 'months', percents }, source: REMEMBERED };
}

function placeFromAir(name: string, air: readonly AirOfMonth[]): Climate {
  return {
    name,
    alsoCalled: [],
    year: { kind: 'months', percents: monthsOfAir(air) },
    source: NORMALS,
  };
}

export const CLIMATES: readonly Climate[] = [
  place(
    'Juneau AK',
    [16.5, 16.0, 15.1, 13.9, 13.6, 13.9, 15.1, 16.5, 18.1, 18.0, 17.7, 18.1],
    ['juneau'],
  ),
  place(
    'Mobile AL',
    [13.8, 13.1, 13.3, 13.3, 13.4, 13.3, 14.2, 14.4, 13.9, 13.0, 13.7, 14.0],
    ['mobile'],
  ),
  place(
    'Flagstaff AZ',
    [11.8, 11.4, 10.8, 9.3, 8.8, 7.5, 9.7, 11.1, 10.3, 10.1, 10.8, 11.8],
    ['flagstaff'],
  ),
  place('Phoenix AZ', [9.4, 8.4, 7.9, 6.1, 5.1, 4.6, 6.2, 6.9, 6.9, 7.0, 8.2, 9.5], ['phoenix']),
  place(
    'Fresno CA',
    [16.4, 14.1, 12.6, 10.6, 9.1, 8.2, 7.8, 8.4, 9.2, 10.3, 13.4, 16.6],
    ['fresno'],
  ),
  place(
    'Los Angeles CA',
    [12.2, 13.0, 13.8, 13.8, 14.4, 14.8, 15.0, 15.1, 14.5, 13.8, 12.4, 12.1],
    ['los angeles'],
  ),
  place(
    'Denver CO',
    [10.7, 10.5, 10.2, 9.6, 10.2, 9.6, 9.4, 9.6, 9.5, 9.5, 11.0, 11.0],
    ['denver'],
  ),
  place(
    'Washington DC',
    [11.8, 11.5, 11.3, 11.1, 11.6, 11.7, 11.7, 12.3, 12.6, 12.5, 12.2, 12.2],
    ['washington'],
  ),
  place(
    'Miami FL',
    [13.5, 13.1, 12.8, 12.3, 12.7, 14.0, 13.7, 14.1, 14.5, 13.5, 13.9, 13.4],
    ['miami'],
  ),
  place(
    'Atlanta GA',
    [13.3, 12.3, 12.0, 11.8, 12.5, 13.0, 13.8, 14.2, 13.9, 13.0, 12.9, 13.2],
    ['atlanta'],
  ),
  place(
    'Honolulu HI',
    [13.3, 12.8, 11.9, 11.3, 10.8, 10.6, 10.6, 10.7, 10.8, 11.3, 12.1, 12.9],
    ['honolulu'],
  ),
  place('Boise ID', [15.2, 13.5, 11.1, 10.0, 9.7, 9.0, 7.3, 7.3, 8.4, 10.0, 13.3, 15.2], ['boise']),
  place(
    'Chicago IL',
    [14.2, 13.7, 13.4, 12.5, 12.2, 12.4, 12.8, 13.3, 13.3, 12.9, 14.0, 14.9],
    ['chicago'],
  ),
  place(
    'New Orleans LA',
    [14.9, 14.3, 14.0, 14.2, 14.1, 14.6, 15.2, 15.3, 14.8, 14.0, 14.2, 15.0],
    ['new orleans'],
  ),
  place(
    'Boston MA',
    [11.8, 11.6, 11.9, 11.7, 12.2, 12.1, 11.9, 12.5, 13.1, 12.8, 12.6, 12.2],
    ['boston'],
  ),
  place(
    'Minneapolis-St. Paul MN',
    [13.7, 13.6, 13.3, 12.0, 11.9, 12.3, 12.5, 13.2, 13.8, 13.3, 14.3, 14.6],
    ['cold winter', 'minneapolis'],
  ),
  place(
    'St. Louis MO',
    [14.5, 14.1, 13.2, 12.4, 12.8, 12.6, 12.9, 13.3, 13.7, 13.1, 14.0, 14.9],
    ['st louis'],
  ),
  place(
    'Las Vegas NV',
    [8.5, 7.7, 7.0, 5.5, 5.0, 4.0, 4.5, 5.2, 5.3, 5.9, 7.2, 8.4],
    ['las vegas'],
  ),
  place(
    'New York NY',
    [12.2, 11.9, 11.5, 11.0, 11.5, 11.8, 11.8, 12.4, 12.6, 12.3, 12.5, 12.3],
    ['new york'],
  ),
  place(
    'Portland OR',
    [16.5, 15.3, 14.2, 13.5, 13.1, 12.4, 11.7, 11.9, 12.6, 15.0, 16.8, 17.4],
    ['portland'],
  ),
  place(
    'Dallas-Ft. Worth TX',
    [13.6, 13.1, 12.9, 13.2, 13.9, 13.0, 11.6, 11.7, 12.9, 12.8, 13.1, 13.5],
    ['dallas'],
  ),
  place(
    'Salt Lake City UT',
    [14.6, 13.2, 11.1, 10.0, 9.4, 8.2, 7.1, 7.4, 8.5, 10.3, 12.8, 14.9],
    ['dry inland', 'salt lake city'],
  ),
  place(
    'Seattle-Tacoma WA',
    [15.6, 14.6, 15.4, 13.7, 13.0, 12.7, 12.2, 12.5, 13.5, 15.3, 16.3, 16.5],
    ['wet coast', 'seattle', 'pacific northwest'],
  ),
  place(
    'Madison WI',
    [14.5, 14.3, 14.1, 12.8, 12.5, 12.8, 13.4, 14.4, 14.9, 14.1, 15.2, 15.7],
    ['madison'],
  ),
  {
    name: 'Burlington VT',
    alsoCalled: ['burlington'],
    year: { kind: 'ends', driest: 11.7, wettest: 14.2 },
    source: seen('fpl-rn-0268', 'range over the year, Burlington'),
  },
  placeFromAir('London', [
    [5.7, 80],
    [6.0, 77],
    [8.0, 70],
    [10.6, 65],
    [13.7, 67],
    [16.8, 65],
    [19.0, 65],
    [18.7, 69],
    [15.9, 73],
    [12.3, 78],
    [8.5, 81],
    [6.1, 81],
  ]),
  placeFromAir('Berlin', [
    [0.9, 86],
    [1.7, 80],
    [4.9, 74],
    [10.0, 66],
    [14.4, 65],
    [17.7, 64],
    [19.5, 65],
    [19.2, 66],
    [14.9, 74],
    [9.9, 82],
    [5.1, 88],
    [1.9, 88],
  ]),
  placeFromAir('Stockholm', [
    [-1.0, 85],
    [-1.0, 82],
    [1.9, 75],
    [6.5, 66],
    [11.9, 61],
    [16.0, 64],
    [18.7, 68],
    [17.7, 72],
    [13.2, 77],
    [7.9, 81],
    [3.7, 86],
    [0.7, 87],
  ]),
];
