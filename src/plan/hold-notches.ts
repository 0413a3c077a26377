import { allowedStresses } from '../materials/beam-allowed.js';
import { standingSection, verdictOf } from '../materials/beam-check.js';
import { strengthOf } from '../materials/design-values-species.js';
import { PERSON } from '../materials/loads.js';
import {
  judgeNotch,
  markedLimit,
  NOTCH_LIMIT_SOURCE,
  notchLimits,
} from '../materials/notch-limits.js';
import {
  NOTCH_EN_SOURCE,
  NOTCH_SHEAR_SOURCE,
  notchedShearEn,
  notchedShearNds,
  wholeEndShear,
} from '../materials/notch-shear.js';
import { COMPUTED } from '../measure/figure.js';
import { figure, sourceText } from '../measure/figure-text.js';
import { forceWeight } from '../measure/force.js';
import { formatLengthExact } from '../measure/format-length.js';
import { formatNumber } from '../measure/format-number.js';
import type { Mm } from '../measure/quantities.js';
import { atMost } from '../measure/tolerance.js';
import { formatWeight } from '../measure/weight.js';
import type { Model } from '../model/part.js';
import type { HoldInputs, HoldRow, SeatRole } from './hold-row.js';
import {
  type BeamNotch,
  type Bearings,
  beamNotches,
  bearingsOf,
  partsAt,
  standingSizes,
} from './hold-spans.js';

type Notched = { readonly bearings: Bearings; readonly notch: BeamNotch };
type Told = { readonly role: SeatRole; readonly inputs: HoldInputs };

/** Each different notch in the beams of a seat: what it leaves, and whether the usual rule allows it. */
export function notchHoldRows(
  model: Model,
  role: SeatRole,
  inputs: HoldInputs,
): readonly HoldRow[] {
  const all = partsAt(model, role.beams).flatMap(beam => {
    const bearings = bearingsOf(model, beam, role.on);
    return bearings === undefined ? [] : beamNotches(bearings).map(notch => ({ bearings, notch }));
  });
  const kinds = new Map(all.map(notched => [kindOf(notched), notched]));
  return [...kinds.values()].map((notched, i) => {
    const row = notchRow(notched, { role, inputs });
    return i === 0 ? row : { ...row, id: `${row.id}/${i + 1}` };
  });
}

function kindOf({ bearings, notch }: Notched): string {
  return [bearings.beam.path, ...Object.values(notch).map(rounded)].join();
}

/** Notches that differ by what binary arithmetic leaves behind the point are the same. */
function rounded(value: string | number): string {
  return typeof value === 'number' ? value.toFixed(2) : value;
}

function notchRow(notched: Notched, told: Told): HoldRow {
  const { notch } = notched;
  if (notch.at === 'support') return endRow(notched.bearings, notch, told);
  return notch.at === 'span' ? spanRow(notched.bearings, notch, told) : sideRow(notch.depth, told);
}

type EndCut = Extract<BeamNotch, { at: 'support' }>;

/**
 * A notch over a support, with one heavy person sitting right beside it. A notch on the pressed edge
 * that lies wholly over its support costs nothing by the NDS; the row also tells what the wood beside
 * it carries alone, so that nobody has to rely on that.
 */
function endRow(bearings: Bearings, notch: EndCut, { role, inputs }: Told): HoldRow {
  const { display } = inputs;
  const { carries, alone, byNds } = endStrength(bearings, notch, inputs);
  const { depth } = standingSizes(bearings.beam);
  const say = (length: Mm) => formatLengthExact(length, display);
  const limit = markedLimit(notchLimits(depth, 'end').deepest, display);
  const within = atMost(notch.depth, limit);
  const pressed = notch.edge === 'top';
  const wholly = atMost(notch.beyond, 0);
  const place = pressed
    ? `on the upper edge, which is pressed${wholly ? ', and wholly over its support' : ''}`
    : 'on the lower edge, which is stretched';
  const rule = within
    ? `the usual quarter of the depth, ${say(limit)}, is kept`
    : `it is deeper than the usual quarter of the depth, ${say(limit)}${pressed ? ', a rule made for joists notched from below' : ''}`;
  const share = PERSON.value / carries;
  const verdict = verdictOf(share);
  const holdsAlone = atMost(PERSON.value, alone);
  const second = !within && !(pressed && holdsAlone);
  return {
    id: `${role.id}/notch`,
    say: `${role.say}: notch at its end`,
    sum: `${say(notch.depth)} deep of ${say(depth)} ${place}; the end carries ${formatWeight(carries, display)} in shear, the ${say(depth - notch.depth)} beside the notch alone ${formatWeight(alone, display)}; ${rule}`,
    value: figure(
      carries,
      'kg',
      `${formatWeight(PERSON.value, display)} beside the support uses ${formatNumber(share * 100, 0)}%`,
      COMPUTED,
    ),
    limit: `at least ${formatWeight(PERSON.value, display)}`,
    verdict: verdict === 'holds by this sum' && second ? 'look again' : verdict,
    better:
      verdict === 'holds by this sum' && !second
        ? ''
        : `Notch it on top, over its support only, and no deeper than ${say(limit)}; or let a block under it carry its whole depth.`,
    source: `${sourceText(byNds ? NOTCH_SHEAR_SOURCE : NOTCH_EN_SOURCE)}; ${sourceText(NOTCH_LIMIT_SOURCE)}`,
  };
}

function endStrength({ beam }: Bearings, notch: EndCut, { species, wet, display }: HoldInputs) {
  const { thickness, width } = beam.section;
  const { depth, breadth } = standingSizes(beam);
  const stands = depth >= breadth ? 'edge' : 'flat';
  const use = { board: { thickness, width }, stands, wet, time: 'ten-years' } as const;
  const { values } = strengthOf(species, width);
  const sum = { section: standingSection(use), allowed: allowedStresses(values, use, display) };
  const byNds = values.kind === 'nds';
  const carries = byNds ? notchedShearNds(notch, sum) : notchedShearEn(notch, sum);
  const left = (depth - notch.depth) / depth;
  const alone = Math.min(carries, wholeEndShear(sum) * Math.max(0, left));
  return { carries: forceWeight(carries), alone: forceWeight(alone), byNds };
}

type SpanCut = Extract<BeamNotch, { at: 'span' }>;

function spanRow(bearings: Bearings, notch: SpanCut, { role, inputs }: Told): HoldRow {
  const { display } = inputs;
  const { depth, breadth } = standingSizes(bearings.beam);
  const place = notch.share > 1 / 3 && notch.share < 2 / 3 ? 'middle' : 'outer';
  const judged = judgeNotch(
    {
      memberDepth: depth,
      memberThickness: breadth,
      place,
      edge: notch.edge,
      depth: notch.depth,
      length: notch.length,
    },
    display,
  );
  const kept = judged.verdict === 'within the rule';
  return {
    id: `${role.id}/span-notch`,
    say: `${role.say}: notch between its supports`,
    sum: `${formatLengthExact(notch.depth, display)} deep and ${formatLengthExact(notch.length, display)} long; ${judged.because}`,
    value: figure(notch.depth, 'mm', 'depth of the notch', COMPUTED),
    limit: `at most ${formatLengthExact(markedLimit(judged.deepest, display), display)}`,
    verdict: kept ? 'holds by this sum' : 'does not hold by this sum',
    better: kept ? '' : 'Move the notch over a support, or make it shallower.',
    source: sourceText(NOTCH_LIMIT_SOURCE),
  };
}

function sideRow(depth: Mm, { role, inputs }: Told): HoldRow {
  const { display } = inputs;
  return {
    id: `${role.id}/side-cut`,
    say: `${role.say}: cut into its side`,
    sum: `${formatLengthExact(depth, display)} high, neither from above nor from below: no rule here covers it`,
    value: figure(depth, 'mm', 'height of the cut', COMPUTED),
    limit: 'not known',
    verdict: 'look again',
    better: 'Keep such cuts away from the middle third of the span.',
    source: sourceText(NOTCH_LIMIT_SOURCE),
  };
}
