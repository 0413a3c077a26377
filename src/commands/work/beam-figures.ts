import { type BeamCase, type BeamCheck, checkBeam, sagText } from '../../materials/beam-check.js';
import { assumedWords } from '../../materials/design-values-species.js';
import { SAG_LIMITS } from '../../materials/sag-limits.js';
import type { Section } from '../../materials/section.js';
import type { Species } from '../../materials/species.js';
import { figure } from '../../measure/figure-text.js';
import { formatLength } from '../../measure/format-length.js';
import { formatNumber } from '../../measure/format-number.js';
import type { Display, Kilograms, Mm } from '../../measure/quantities.js';
import { sameLength } from '../../measure/tolerance.js';
import { formatWeight } from '../../measure/weight.js';
import type { Answered } from './rule.js';

/** A beam that was asked about, checked. */
export type WorkedBeam = {
  readonly beam: BeamCase;
  readonly section: Section;
  readonly species: Species;
  readonly check: BeamCheck;
  readonly longest: Mm | undefined;
  readonly better: string;
  readonly display: Display;
};

/** The largest load, the share that is used, the sag, and the longest span for this load. */
export function beamFigures(worked: WorkedBeam): readonly Answered[] {
  const { beam, check, longest, display } = worked;
  const { source } = beam.wood.values;
  const share = formatNumber(check.governing.share * 100, 0);
  const asked = formatWeight(beam.load.weight, display);
  return [
    {
      name: 'most_load',
      say: 'carries up to',
      figure: figure(check.mostLoad, 'kg', `${asked} over ${share}%`, source),
    },
    {
      name: 'used',
      say: 'strength used',
      figure: figure(check.governing.share * 100, 'percent', check.governing.words, source),
    },
    {
      name: 'sag',
      say: 'sag',
      figure: figure(check.sag, 'mm', partWords(check, 'sag'), source),
    },
    {
      name: 'own_sag',
      say: 'of its own weight',
      figure: figure(ownSag(worked), 'mm', ownWords(worked), worked.species.density12.source),
    },
    ...(longest === undefined
      ? []
      : [
          {
            name: 'longest_span',
            say: 'supports within',
            figure: figure(
              longest,
              'mm',
              `${asked} holds there with a tenth of the strength to spare and no softer than span / ${SAG_LIMITS.seat.value}; rounded down`,
              source,
            ),
          },
        ]),
  ];
}

function partWords({ parts }: BeamCheck, of: string): string {
  return parts.find(part => part.of === of)?.words ?? '';
}

/** Sag of the bare boards for good, at the density they have at 12 % moisture. */
function ownSag({ beam, display, ...worked }: WorkedBeam): Mm {
  const weight = ownWeight({ beam, display, ...worked }) * beam.boards;
  const use = { ...beam.use, time: 'permanent' } as const;
  return checkBeam({ ...beam, use, load: { kind: 'spread', weight } }, display).sag;
}

function ownWeight({ beam, section, species }: WorkedBeam): Kilograms {
  const cubicMeters = (section.thickness * section.width * beam.span) / 1e9;
  return species.density12.value * cubicMeters;
}

function ownWords(worked: WorkedBeam): string {
  const { species, display } = worked;
  return `${formatWeight(ownWeight(worked), display)} of ${species.name} in each board, in the end; wet boards weigh more`;
}

/** Verdict, what to change, both ways round, one span either way, and what is not checked. */
export function beamNotes(worked: WorkedBeam): readonly string[] {
  const { beam, section, check, better } = worked;
  const { board, stands } = beam.use;
  const rolls = stands === 'edge' && board.width > 2 * board.thickness;
  return [
    `A ${section.name} ${stands === 'edge' ? 'on edge' : 'laid flat'}: ${check.verdict}, taken as ${assumedWords(beam.wood, board.thickness)}.`,
    ...(better === '' ? [] : [better]),
    ...bothWays(worked),
    ...spanSteps(worked),
    ...(rolls
      ? ['Deeper than twice its thickness: hold its ends or its upper edge so that it cannot roll.']
      : []),
    'Not checked: knots, splits and rot, how its ends are fixed, what stands below. The stamp on the board comes first. For decks, balconies, stairs and roofs ask the local code or a licensed engineer.',
  ];
}

/** The same board on edge and flat, load and sag in one line each. */
function bothWays({ beam, section, display }: WorkedBeam): readonly string[] {
  if (sameLength(section.thickness, section.width)) return [];
  return (['edge', 'flat'] as const).map(stands => {
    const check = checkBeam({ ...beam, use: { ...beam.use, stands } }, display);
    return `${stands === 'edge' ? 'On edge' : 'Flat'}: carries ${formatWeight(check.mostLoad, display)}; under ${formatWeight(beam.load.weight, display)} it sags ${sagText(check.sag, display)}.`;
  });
}

const STEP = 1 / 5;

/** Sag at this span and a fifth shorter and longer. */
function spanSteps({ beam, display }: WorkedBeam): readonly string[] {
  const steps = [1 - STEP, 1, 1 + STEP].map(times => {
    const span = beam.span * times;
    const { sag } = checkBeam({ ...beam, span }, display);
    return `${sagText(sag, display)} over ${formatLength(span, display)} (span / ${formatNumber(span / sag, 0)})`;
  });
  return [`Sag: ${steps.join(', ')}.`];
}
