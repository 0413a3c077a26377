import { formatNumber } from '../measure/format-number.js';
import type { Display } from '../measure/quantities.js';
import { formatTemperature } from '../measure/temperature.js';
import type { GlueDay, GlueObstacle } from './glue-day.js';

/** The verdict in one line: "Yes, if it stays above …" or "Not today: …". */
export function glueVerdict(day: GlueDay, display: Display): string {
  if (day.verdict === 'today')
    return `Yes, as long as wood and air stay that warm for ${day.watchHours} h.`;
  return `Not today: ${day.obstacles.map(it => obstacleWords(it, display)).join('; ')}.`;
}

/** From when or on what condition it can be glued; empty when it can be today. */
export function glueWhen(day: GlueDay, display: Display): string {
  if (day.verdict === 'today') return '';
  const conditions = day.obstacles.map(it => conditionWords(it, day.watchHours, display));
  return `It can be glued once ${[...new Set(conditions)].join(', and ')}.`;
}

function obstacleWords(it: GlueObstacle, display: Display): string {
  switch (it.kind) {
    case 'too-cold-now':
      return `${formatTemperature(it.is, display)} at the joint is under the ${formatTemperature(it.limit, display)} of this glue: it would dry white and stay weak`;
    case 'too-warm-now':
      return `${formatTemperature(it.is, display)} is over ${formatTemperature(it.limit, display)}: it grabs before the joint is closed`;
    case 'too-cold-night':
      return `it falls to ${formatTemperature(it.is, display)} before the glue has cured, under ${formatTemperature(it.limit, display)}: indoors or postpone`;
    case 'wood-chilled':
      return `the wood lay at ${formatTemperature(it.is, display)} and is cold inside`;
    case 'too-wet':
      return `the wood is at ${formatNumber(it.is, 1)}%, over ${it.limit}%: glue that gives its water to the wood stays wet`;
  }
}

function conditionWords(it: GlueObstacle, watchHours: number, display: Display): string {
  switch (it.kind) {
    case 'too-cold-now':
    case 'too-cold-night':
      return `wood, glue and air are at ${formatTemperature(it.limit, display)} or more and stay so for ${watchHours} h`;
    case 'too-warm-now':
      return `the joint is at ${formatTemperature(it.limit, display)} or less, as in the shade or in the morning`;
    case 'wood-chilled':
      return `the wood has been in the warm for ${formatNumber(it.hoursLeft, 1)} h more`;
    case 'too-wet':
      return `a meter shows ${it.limit}% or less (stickered under cover, often for weeks), or screws alone hold the joint`;
  }
}
