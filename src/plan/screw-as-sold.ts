import type { ScrewChoice } from '../materials/choose-screw.js';
import { METRIC_SOURCE, type MetricScrew, metricScrew } from '../materials/metric-screw.js';
import { screwName } from '../materials/screw-words.js';
import type { Source } from '../measure/figure.js';
import type { Display, Mm } from '../measure/quantities.js';

/** A chosen screw and its drills as the user's store sells them. */
export type ScrewAsSold = {
  readonly name: string;
  readonly length: Mm;
  readonly clearance: { readonly value: Mm; readonly source: Source };
  readonly pilot: { readonly value: Mm; readonly source: Source };
  readonly drills: string;
  readonly because: string;
  readonly source: Source;
};

/** By gauge and inches, or the usual metric screw nearest to it where lengths are metric. */
export function screwAsSold(choice: ScrewChoice, { system }: Display): ScrewAsSold {
  const metric = system === 'metric' ? metricScrew(choice) : undefined;
  return metric === undefined ? inchScrew(choice) : metricAsSold(choice, metric);
}

function inchScrew(choice: ScrewChoice): ScrewAsSold {
  const { clearance, pilot } = choice.holes;
  return {
    name: screwName(choice),
    length: choice.length,
    clearance,
    pilot,
    drills: `clearance ${clearance.drill}, pilot ${pilot.drill}`,
    because: choice.because,
    source: choice.source,
  };
}

function metricAsSold(choice: ScrewChoice, metric: MetricScrew): ScrewAsSold {
  const { name, length, clearance, pilot } = metric;
  return {
    name,
    length,
    clearance,
    pilot,
    drills: `clearance ${clearance.value} mm, pilot ${pilot.value} mm`,
    because: `the usual metric screw nearest to a ${screwName(choice)}: ${choice.because}`,
    source: METRIC_SOURCE,
  };
}
