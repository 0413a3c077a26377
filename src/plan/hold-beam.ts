import { allowedStresses, type BeamUse } from '../materials/beam-allowed.js';
import { betterWords } from '../materials/beam-better.js';
import {
  type BeamCase,
  type BeamCheck,
  type BeamLoad,
  checkBeam,
  standingSection,
} from '../materials/beam-check.js';
import type { LoadTime } from '../materials/design-factors-nds.js';
import { assumedWords, strengthOf } from '../materials/design-values-species.js';
import type { EndNotch } from '../materials/notch-shear.js';
import { type NotchedEnd, notchedEnd } from '../materials/notched-end.js';
import { SAG_LIMITS } from '../materials/sag-limits.js';
import { sourceText } from '../measure/figure-text.js';
import { weightForce } from '../measure/force.js';
import type { Mm } from '../measure/quantities.js';
import type { HoldInputs } from './hold-row.js';
import { type Bearings, beamNotches, type Stretch, standingSizes } from './hold-spans.js';

/** A beam of the piece under one load, checked. */
export type PlacedCheck = {
  readonly check: BeamCheck;
  readonly span: Mm;
  readonly better: string;
  readonly assumed: string;
  readonly source: string;
};

/** Load on a placed board, and for how long it stands there in all. */
export type PlacedLoad = { readonly load: BeamLoad; readonly time: LoadTime };

/**
 * Checks a board where it lies: actual section, way round, span from face to face of its supports and
 * half of the bearing that it needs on each (NDS 3.2.1), with its notches over the supports.
 */
export function checkPlaced(
  bearings: Bearings,
  { load, time }: PlacedLoad,
  { species, wet, display }: HoldInputs,
): PlacedCheck {
  const use = placedUse(bearings, wet, time);
  const wood = strengthOf(species, use.board.width);
  const { across } = allowedStresses(wood.values, use, display);
  const needed = weightForce(load.weight) / (standingSection(use).breadth * across);
  const span = bearings.clear + halfBearings(bearings, needed);
  const notch = worstNotch(bearings);
  const beam: BeamCase = {
    use,
    wood,
    boards: 1,
    span,
    load,
    sagRatio: SAG_LIMITS.seat.value,
    ...(notch === undefined ? {} : { notch }),
  };
  return {
    check: checkBeam(beam, display),
    span,
    better: betterWords(beam, { wood: species, section: bearings.beam.section }, display),
    assumed: assumedWords(wood, use.board.thickness),
    source: sourceText(wood.values.source),
  };
}

/** Half of the bearing that a load needs at either end, and no more than half of what there is. */
function halfBearings({ left, right }: Bearings, needed: Mm): Mm {
  const half = ({ from, to }: Stretch) => Math.min(needed, to - from) / 2;
  return half(left) + half(right);
}

/** What a notched end of a placed board carries under people. */
export function placedEnd(
  bearings: Bearings,
  notch: EndNotch,
  { species, wet, display }: HoldInputs,
): NotchedEnd {
  const use = placedUse(bearings, wet, 'ten-years');
  return notchedEnd(notch, { use, wood: strengthOf(species, use.board.width) }, display);
}

function placedUse({ beam }: Bearings, wet: boolean, time: LoadTime): BeamUse {
  const { thickness, width } = beam.section;
  const { depth, breadth } = standingSizes(beam);
  return { board: { thickness, width }, stands: depth >= breadth ? 'edge' : 'flat', wet, time };
}

/** The deepest notch over a support, those from below first. */
function worstNotch(bearings: Bearings): EndNotch | undefined {
  const ends = beamNotches(bearings).flatMap(notch => (notch.at === 'support' ? [notch] : []));
  const [worst] = [...ends].sort(
    (a, b) => Number(b.edge === 'bottom') - Number(a.edge === 'bottom') || b.depth - a.depth,
  );
  if (worst === undefined) return undefined;
  const { edge, depth, beyond, bearing } = worst;
  return { edge, depth, beyond, bearing };
}
