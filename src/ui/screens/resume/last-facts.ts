import { formatMinutes } from '../../../measure/duration.js';
import { MINUTE_MS } from '../../../measure/spans.js';
import { count } from '../../../text/plural.js';
import { clockWords } from '../../../workbook/clock-words.js';
import type { Recap } from '../../../workbook/recap.js';

/** How far the build is, when somebody was here last, and what was done last. */
export function lastFacts({ lastDone, lastHereMs, stepsDone, stepsInAll }: Recap, nowMs: number) {
  const far = `${stepsDone} of ${count(stepsInAll, 'step')} done`;
  if (lastDone === undefined || lastHereMs === undefined)
    return [{ name: 'So far', text: `${far}; nothing is begun yet.` }];
  const away = formatMinutes(Math.max(0, (nowMs - lastHereMs) / MINUTE_MS));
  return [
    { name: 'So far', text: `${far}; last here ${clockWords(lastHereMs, nowMs)}, ${away} ago` },
    { name: 'Last', text: `${lastDone.title}: ${lastDone.words}` },
  ];
}
