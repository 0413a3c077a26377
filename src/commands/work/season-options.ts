import {
  climateNamed,
  climateNames,
  inTheOpen,
  ownSwing,
  type Swing,
  swingOf,
} from '../../materials/seasons.js';
import { sourceText } from '../../measure/figure-text.js';
import { formatNumber } from '../../measure/format-number.js';
import { type Parsed, parsed, quoted, unreadable } from '../../measure/parsed.js';
import { nearestWord } from '../../measure/suggest.js';
import type { Given, WorkOption } from './rule.js';
import { percentOption } from './wood-options.js';

/** Where the boards will stand: a known place, or the wettest and driest moisture of one's own meter. */
export const SEASON_OPTIONS: readonly WorkOption[] = [
  percentOption('today', 'moisture percent of the boards today', '12'),
  {
    name: 'place',
    kind: 'word',
    say: 'a town, or "dry inland", "wet coast", "cold winter"',
    example: '"wet coast"',
    usual: '',
  },
  {
    ...percentOption('wettest', 'moisture percent in the wettest time, in place of --place', '16'),
    usual: '',
  },
  {
    ...percentOption('driest', 'moisture percent in the driest time, in place of --place', '8'),
    usual: '',
  },
  {
    name: 'exposure',
    kind: 'word',
    say: 'open to rain and sun, or sheltered under a roof; with --place',
    example: 'open',
    usual: 'open',
    choices: ['open', 'sheltered'],
  },
];

/** The year that was asked for, or what is missing. */
export function swingGiven(given: Given): Parsed<Swing> {
  if (given.has('wettest') && given.has('driest')) {
    return parsed(ownSwing(given.number('wettest'), given.number('driest')));
  }
  if (!given.has('place')) {
    return unreadable(
      'Where will it stand? Give --place, or both --wettest and --driest.',
      'For example --place "wet coast", or --wettest 16 --driest 8.',
    );
  }
  const name = given.word('place');
  const place = climateNamed(name);
  if (place === undefined) {
    const near = nearestWord(name, climateNames());
    return unreadable(
      `--place: ${quoted(name)} is not in the table of places.`,
      near === undefined
        ? 'Give --place "dry inland", "wet coast" or "cold winter", or --wettest and --driest.'
        : `Did you mean --place "${near}"?`,
    );
  }
  const swing = swingOf(place);
  return parsed(given.word('exposure') === 'open' ? inTheOpen(swing) : swing);
}

/** "Wettest 14.9% in December, driest 7.1% in July: Wood Handbook, Table 13-1, not re-checked." */
export function swingWords({ wettest, driest, source }: Swing): string {
  const said = ({ percent, when }: Swing['wettest']) => `${formatNumber(percent, 1)}% (${when})`;
  return `Wettest ${said(wettest)}, driest ${said(driest)}: ${sourceText(source)}.`;
}
