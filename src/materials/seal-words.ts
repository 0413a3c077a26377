import { formatClock } from '../measure/clock.js';
import { formatNumber } from '../measure/format-number.js';
import type { Celsius, Display } from '../measure/quantities.js';
import { formatTemperature } from '../measure/temperature.js';
import type { SealDay, SealObstacle } from './seal-day.js';

/** A difference of temperatures, not a temperature: 3 °C is "5.4 °F". */
export function formatSpread(spread: Celsius, { system }: Display): string {
  return system === 'metric'
    ? `${formatNumber(spread, 1)} °C`
    : `${formatNumber((spread * 9) / 5, 1)} °F`;
}

/** The verdict in one line: "yes, until 15:40", "not today: …". Hours are told where sunset was. */
export function sealVerdict(day: SealDay, display: Display): string {
  const until = day.untilMinutes === undefined ? '' : ` until ${formatClock(day.untilMinutes)}`;
  if (day.verdict === 'yes')
    return until === '' ? 'Yes, as far as warmth, damp and dew point go.' : `Yes,${until}.`;
  if (day.verdict === 'later-today')
    return `Not yet: from ${formatClock(day.fromMinutes)}${until} today, once the dew has gone.`;
  if (day.verdict === 'test-first') {
    const early = day.obstacles.some(({ kind }) => kind === 'too-early');
    const from = early ? ` from ${formatClock(day.fromMinutes)}` : '';
    const hours = `${from}${until}`;
    return `Sprinkle water on the wood first: if it soaks in within 10 min, yes${hours === '' ? '' : `,${hours}`}; if it stands in beads, wait.`;
  }
  const reasons = day.obstacles.map(it => obstacleWords(it, display)).join('; ');
  return `Not today: ${reasons}.`;
}

/** What has to be so for the next try; empty when there is nothing against it. */
export function sealWhen(day: SealDay, display: Display): string {
  if (day.verdict !== 'not-today') return '';
  const conditions = day.obstacles.flatMap(it => conditionWords(it, display));
  const start = `From tomorrow ${formatClock(day.fromMinutes)}`;
  return conditions.length === 0
    ? `${start}, if the weather is as today.`
    : `${start} at the earliest, if ${conditions.join(', and ')}.`;
}

function obstacleWords(it: SealObstacle, display: Display): string {
  switch (it.kind) {
    case 'wet-wood':
      return `the wood is at ${formatNumber(it.is, 1)}%, and ${it.limit}% is too wet`;
    case 'beads':
      return 'water stands in beads, so the wood takes nothing up yet';
    case 'unknown-wood':
      return 'nobody has looked how wet the wood is: sprinkle water on it or use a meter';
    case 'too-cold':
      return `${formatTemperature(it.is, display)} is under the ${formatTemperature(it.limit, display)} that this kind wants`;
    case 'too-warm':
      return `${formatTemperature(it.is, display)} is over the ${formatTemperature(it.limit, display)} that this kind stands`;
    case 'cold-night':
      return `it falls to ${formatTemperature(it.is, display)} before the coat is dry, under ${formatTemperature(it.limit, display)}`;
    case 'damp-air':
      return `humidity of ${formatNumber(it.is, 0)}% is not below ${it.limit}%`;
    case 'near-dew-point':
      return `the wood is only ${formatSpread(it.is, display)} above the dew point, and ${formatSpread(it.limit, display)} is wanted`;
    case 'too-late':
      return `the last stroke had to be made by ${formatClock(it.limit)}, 4 h before sunset`;
    case 'short-day':
      return `4 h before sunset is ${formatClock(it.limit)}, before the dew has gone: the day is too short outdoors`;
    case 'too-early':
      return `the dew has to go first, usually until ${formatClock(it.limit)}`;
  }
}

function conditionWords(it: SealObstacle, display: Display): readonly string[] {
  switch (it.kind) {
    case 'wet-wood':
      return [`a meter shows less than ${it.limit}%`];
    case 'beads':
    case 'unknown-wood':
      return ['sprinkled water soaks in within 10 min'];
    case 'too-cold':
      return [`the wood is at ${formatTemperature(it.limit, display)} or more`];
    case 'too-warm':
      return [`the wood is at ${formatTemperature(it.limit, display)} or less, as in the shade`];
    case 'cold-night':
      return [`the night stays at ${formatTemperature(it.limit, display)} or more`];
    case 'damp-air':
      return [`humidity is under ${it.limit}%`];
    case 'near-dew-point':
      return [`the wood is ${formatSpread(it.limit, display)} above the dew point`];
    case 'short-day':
      return ['it is under a roof and stays dry overnight'];
    case 'too-late':
    case 'too-early':
      return [];
  }
}
