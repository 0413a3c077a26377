import {
  CLAMP_FORCE,
  CLAMP_PRESSURE,
  CLAMP_SPACING,
  type ClampKind,
  clampPressure,
  clampsByPressure,
  clampsBySpacing,
  FIRST_CLAMP,
  SPREAD_RULE,
  spacingFor,
  WIDEST_CLAMP_SPACING,
  type WoodHardness,
} from '../../materials/clamps.js';
import type { Sourced } from '../../materials/sourced.js';
import { COMPUTED } from '../../measure/figure.js';
import { figure } from '../../measure/figure-text.js';
import { forceWeight, type Newtons } from '../../measure/force.js';
import { formatLength, formatLengthExact } from '../../measure/format-length.js';
import type { Mm } from '../../measure/quantities.js';
import { formatStress } from '../../measure/stress.js';
import { formatWeight } from '../../measure/weight.js';
import { lengthOption, usualLength } from './length-option.js';
import type { Answered, Given, WorkResult, WorkRule } from './rule.js';

/** `notchbook work clamps`: how many clamps a glued joint wants. */
export const CLAMPS_RULE: WorkRule = {
  name: 'clamps',
  say: 'how many clamps a glued joint wants, by pressure and by spacing',
  example: 'notchbook work clamps --length 48in --width 1-1/2in --wood soft',
  options: [
    lengthOption('length', 'length of the glued face', '48in'),
    lengthOption('width', 'width of the glued face', '1-1/2in'),
    {
      name: 'wood',
      kind: 'word',
      say: 'soft (pine, cedar), medium or hard (oak)',
      example: 'soft',
      choices: Object.keys(CLAMP_PRESSURE),
    },
    {
      name: 'clamp',
      kind: 'word',
      say: 'bar (I-beam bar clamp) or light',
      example: 'bar',
      usual: 'bar',
      choices: Object.keys(CLAMP_FORCE),
    },
    {
      ...lengthOption('board', 'from the clamp pad to the joint, through the board', '3-1/2in'),
      usual: '',
    },
    usualLength('caul', 'thickness of the stick under the pads', {
      example: '3/4in',
      usual: '0in',
    }),
  ],
  work,
};

function work(given: Given): WorkResult {
  const joint = given.number('length');
  const wood = given.word('wood') as WoodHardness;
  const pressure = clampPressure(wood);
  const area = joint * given.number('width');
  const force = CLAMP_FORCE[given.word('clamp') as ClampKind];
  const spacing = spacingGiven(given);
  const byPressure = clampsByPressure(area, pressure, force.value);
  const bySpacing = clampsBySpacing({ joint, end: FIRST_CLAMP.value, spacing: spacing.value });
  return {
    ok: true,
    figures: [
      {
        name: 'clamps',
        say: 'clamps',
        figure: figure(
          Math.max(byPressure, bySpacing),
          'count',
          `the larger of ${byPressure} by pressure and ${bySpacing} by spacing`,
          COMPUTED,
        ),
      },
      pressureCount(byPressure, area * pressure, given),
      spacingCount(bySpacing, spacing, given),
      {
        name: 'pressure',
        say: 'pressure',
        figure: figure(
          pressure,
          'MPa',
          `upper end for ${wood} wood, not over the ceiling that squeezes joints dry`,
          CLAMP_PRESSURE[wood].source,
        ),
      },
    ],
    more: {},
    notes: [
      'Tighten until a thin even line of glue shows, from the middle to the ends.',
      'Epoxy wants no pressure beyond contact. Screws pull their own joints together.',
      'Not checked: your clamps. Forces of two measured ones are used.',
    ],
  };
}

function pressureCount(clamps: number, total: Newtons, { word, display }: Given): Answered {
  const force = CLAMP_FORCE[word('clamp') as ClampKind];
  const weight = (newtons: Newtons) => formatWeight(forceWeight(newtons), display);
  const face = formatStress(clampPressure(word('wood') as WoodHardness), display);
  const because = `${weight(total)} in all (${face} on the face) / ${weight(force.value)} a clamp`;
  return {
    name: 'by_pressure',
    say: 'by pressure',
    figure: figure(clamps, 'count', because, force.source),
  };
}

function spacingCount(clamps: number, spacing: Sourced<Mm>, { display }: Given): Answered {
  const first = formatLength(FIRST_CLAMP.value, display);
  const because = `first ${first} from each end, then no more than ${formatLengthExact(spacing.value, display)} apart`;
  return {
    name: 'by_spacing',
    say: 'by spacing',
    figure: figure(clamps, 'count', because, spacing.source),
  };
}

function spacingGiven(given: Given): Sourced<Mm> {
  if (!given.has('board')) return CLAMP_SPACING;
  const spread = spacingFor(given.number('board'), given.number('caul'));
  return { value: Math.min(spread, WIDEST_CLAMP_SPACING.value), source: SPREAD_RULE };
}
