import { falseBottom } from '../../materials/false-bottom.js';
import { FILLS, type FillId } from '../../materials/loads.js';
import type { Inside } from '../../materials/soil.js';
import { COMPUTED } from '../../measure/figure.js';
import { figure } from '../../measure/figure-text.js';
import { formatLength } from '../../measure/format-length.js';
import type { Mm } from '../../measure/quantities.js';
import type { Answered, Given } from './rule.js';

export type BarsAnswer =
  | { readonly ok: true; readonly figures: readonly Answered[]; readonly notes: readonly string[] }
  | { readonly ok: false; readonly problem: string };

/** Marks for the bars of a false bottom, where less soil is wanted than there is room for. */
export function falseBottomAnswer(inside: Inside, belowRim: Mm, given: Given): BarsAnswer {
  if (!given.has('soil-depth')) return { ok: true, figures: [], notes: [] };
  const { display } = given;
  const length = (mm: Mm) => formatLength(mm, display);
  const fill = given.word('fill') as FillId;
  const soil = given.number('soil-depth');
  const bars = given.number('bars');
  const marks = falseBottom({ inside, soil, belowRim, bar: given.number('bar'), bars, fill });
  if (soil <= 0 || marks.barUnderside < 0)
    return {
      ok: false,
      problem: `--soil-depth: ${length(soil)} leaves no room for bars of ${length(given.number('bar'))}. From 1 in to ${length(Math.max(0, inside.depth - belowRim - given.number('bar')))}.`,
    };
  const sum = `${length(inside.depth)} to the rim - ${length(soil)} of soil - ${length(belowRim)} below the rim`;
  return {
    ok: true,
    figures: [
      {
        name: 'bar_top',
        say: 'bar tops at',
        figure: figure(marks.barTop, 'mm', `${sum}, from the floor`, COMPUTED),
      },
      {
        name: 'bar_underside',
        say: 'bar undersides at',
        figure: figure(
          marks.barUnderside,
          'mm',
          'less the height of a bar: the mark for the cleats',
          COMPUTED,
        ),
      },
      {
        name: 'each_bar',
        say: 'each bar carries',
        figure: figure(
          marks.eachCarries,
          'kg',
          `soaked soil on ${bars} bars, at the heaviest`,
          FILLS[fill].heavy.source,
        ),
      },
    ],
    notes: [
      'Each end of a bar on a cleat with two screws; screen and fabric on top; the room below drained and aired.',
    ],
  };
}
