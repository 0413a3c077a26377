import { weightForce } from '../measure/force.js';
import { formatLength, formatLengthExact } from '../measure/format-length.js';
import { formatNumber } from '../measure/format-number.js';
import { inches, toInches } from '../measure/inch.js';
import type { Display, Kilograms, Mm } from '../measure/quantities.js';
import { formatStress } from '../measure/stress.js';
import { formatWeight } from '../measure/weight.js';
import { type Allowed, allowedStresses, type BeamUse } from './beam-allowed.js';
import {
  type BeamEffect,
  type BeamSection,
  bendingStress,
  evenlyLoaded,
  loadedInMiddle,
  rigidityOf,
  sectionProperties,
} from './beams.js';
import type { WoodStrength } from './design-values-species.js';
import { type EndNotch, notchedShearEn, notchedShearNds, wholeEndShear } from './notch-shear.js';

/** Spread over the whole span, or at any one point, over a short stretch of it. */
export type BeamLoad =
  | { readonly kind: 'spread'; readonly weight: Kilograms }
  | { readonly kind: 'point'; readonly weight: Kilograms; readonly over: Mm };

/** A board, or several that share the load alike, on two supports. */
export type BeamCase = {
  readonly use: BeamUse;
  readonly wood: WoodStrength;
  readonly boards: number;
  readonly span: Mm;
  readonly load: BeamLoad;
  /** Sag is looked at where it passes the span divided by this. */
  readonly sagRatio: number;
  readonly notch?: EndNotch;
};

export type HoldVerdict = 'holds by this sum' | 'look again' | 'does not hold by this sum';

/** One comparison: `share` is the part of the limit that is used. */
export type BeamPart = {
  readonly of: 'bending' | 'shear' | 'notch' | 'sag';
  readonly share: number;
  readonly words: string;
};

export type BeamCheck = {
  readonly parts: readonly BeamPart[];
  /** The strength check that is used up most. */
  readonly governing: BeamPart;
  readonly sag: Mm;
  /** The largest load of this kind that every strength check lets pass. */
  readonly mostLoad: Kilograms;
  readonly verdict: HoldVerdict;
  readonly because: string;
};

/** Over this share of the limit a board's knots and the next heavier person deserve a second look. */
export const CLOSE_TO_LIMIT = 0.9;

/** The board as it stands: breadth and depth in the direction of the load. */
export function standingSection({ board, stands }: BeamUse): BeamSection {
  return stands === 'edge'
    ? { breadth: board.thickness, depth: board.width }
    : { breadth: board.width, depth: board.thickness };
}

/**
 * Bending, shear, shear at a notch and sag of a board under a load, with the largest load that
 * strength lets pass. Own weight is not counted.
 * @example a 2x4 on edge, redwood No. 2, 45 in between posts, 250 lb: bending 0.85 of its limit
 */
export function checkBeam(beam: BeamCase, display: Display): BeamCheck {
  const allowed = allowedStresses(beam.wood.values, beam.use, display);
  const section = standingSection(beam.use);
  const effect = effectOf(beam, section, allowed);
  const worked = { beam, section, allowed, effect, display };
  const sagging = sagPart(worked);
  const strength = [bendingPart(worked), shearPart(worked), ...notchPart(worked)];
  const governing = strength.reduce((worst, part) => (part.share > worst.share ? part : worst));
  return {
    parts: [...strength, sagging],
    governing,
    sag: effect.sag,
    mostLoad: governing.share === 0 ? Number.POSITIVE_INFINITY : beam.load.weight / governing.share,
    verdict: verdictOf(governing.share, sagging.share),
    because: [...strength, sagging].map(({ words }) => words).join('; '),
  };
}

/** Strength decides whether it holds; sag and a limit that is nearly used up ask for a second look. */
export function verdictOf(strengthShare: number, sagShare = 0): HoldVerdict {
  const full = 1 + 1e-9;
  if (!(strengthShare <= full)) return 'does not hold by this sum';
  if (strengthShare > CLOSE_TO_LIMIT || !(sagShare <= full)) return 'look again';
  return 'holds by this sum';
}

type Worked = {
  readonly beam: BeamCase;
  readonly section: BeamSection;
  readonly allowed: Allowed;
  readonly effect: BeamEffect;
  readonly display: Display;
};

/** Effect on each board. A point load is in the middle for bending and next to a support for shear. */
function effectOf(beam: BeamCase, section: BeamSection, allowed: Allowed): BeamEffect {
  const { span, load } = beam;
  const force = weightForce(load.weight) / beam.boards;
  const on = { span, rigidity: rigidityOf(section, allowed.stiffness) };
  const effect =
    load.kind === 'spread'
      ? evenlyLoaded(force / span, on)
      : { ...loadedInMiddle(force, on, load.over), shear: force };
  return { ...effect, sag: effect.sag * allowed.creep };
}

function bendingPart({ beam, section, allowed, effect, display }: Worked): BeamPart {
  const stress = bendingStress(effect.moment, section);
  const load = formatWeight(beam.load.weight / beam.boards, display);
  const where = beam.load.kind === 'spread' ? 'spread over' : 'in the middle of';
  const each = beam.boards > 1 ? ' on each board' : '';
  return {
    of: 'bending',
    share: stress / allowed.bending,
    words: `bending: ${load}${each} ${where} ${formatLength(beam.span, display)}, with a section modulus of ${modulusText(section, display)}, is ${formatStress(stress, display)}; allowed ${formatStress(allowed.bending, display)} (${allowed.words.bending})`,
  };
}

function modulusText(section: BeamSection, { system }: Display): string {
  const { modulus } = sectionProperties(section);
  return system === 'inch'
    ? `${formatNumber(modulus / inches(1) ** 3, 2)} in3`
    : `${formatNumber(modulus / 1000, 1)} cm3`;
}

function shearPart({ section, allowed, effect, display }: Worked): BeamPart {
  const stress = (1.5 * effect.shear) / (section.breadth * allowed.shearBreadth * section.depth);
  return {
    of: 'shear',
    share: stress / allowed.shear,
    words: `shear: ${formatStress(stress, display)}, allowed ${formatStress(allowed.shear, display)}`,
  };
}

function notchPart({ beam, section, allowed, effect, display }: Worked): readonly BeamPart[] {
  const { notch, wood } = beam;
  if (notch === undefined) return [];
  const sum = { section, allowed };
  const byNds = wood.values.kind === 'nds';
  const carries = byNds ? notchedShearNds(notch, sum) : notchedShearEn(notch, sum);
  const left = carries / wholeEndShear(sum);
  const edge = notch.edge === 'bottom' ? 'stretched (lower)' : 'pressed (upper)';
  const costs =
    left > 1 - 1e-9
      ? 'lies wholly over the support and costs nothing'
      : `leaves ${formatNumber(left * 100, 0)}% of the shear strength`;
  return [
    {
      of: 'notch',
      share: carries === 0 ? Number.POSITIVE_INFINITY : effect.shear / carries,
      words: `notch: ${formatLengthExact(notch.depth, display)} deep on the ${edge} edge, ${costs}`,
    },
  ];
}

function sagPart({ beam, effect, display, allowed }: Worked): BeamPart {
  const limit = beam.span / beam.sagRatio;
  const ratio = beam.span / effect.sag;
  const inEnd = allowed.creep > 1 ? ' in the end' : '';
  return {
    of: 'sag',
    share: effect.sag / limit,
    words: `sag${inEnd}: ${sagText(effect.sag, display)}, one part in ${formatNumber(ratio, 0)} of the span; more than one in ${beam.sagRatio} feels soft`,
  };
}

/** A sag as people say it: "0.05 in" or "1.3 mm". */
export function sagText(sag: Mm, { system }: Display): string {
  return system === 'inch' ? `${formatNumber(toInches(sag), 2)} in` : `${formatNumber(sag, 1)} mm`;
}
