import { MINUTE_MS } from '../../../measure/spans.js';
import { forecast } from '../../../workbook/forecast.js';
import { forecastWords } from '../../../workbook/forecast-words.js';
import type { Progress } from '../../../workbook/workbook.js';
import type { Build } from '../../screen.js';
import type { NamedText } from '../../widgets/facts.js';

const QUARTER_MS = 15 * MINUTE_MS;

/** A forecast is told to the minute of the session, so a quarter of an hour makes no other one. */
const kept = new WeakMap<
  Progress,
  { readonly quarter: number; readonly facts: readonly NamedText[] }
>();

/** When it will likely be done, once something is. */
export function forecastFacts(build: Build, nowMs: number): readonly NamedText[] {
  if (build.progress.done.size === 0) return [];
  const quarter = Math.floor(nowMs / QUARTER_MS);
  const known = kept.get(build.progress);
  if (known?.quarter === quarter) return known.facts;
  const likely = forecast(build, nowMs);
  const facts =
    likely === undefined ? [] : [{ name: 'Forecast', text: `done ${forecastWords(likely)}` }];
  kept.set(build.progress, { quarter, facts });
  return facts;
}
