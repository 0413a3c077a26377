import { judgeNotch, markedLimit, NOTCH_LIMIT_SOURCE } from '../materials/notch-limits.js';
import { COMPUTED } from '../measure/figure.js';
import { figure, sourceText } from '../measure/figure-text.js';
import { formatLengthExact } from '../measure/format-length.js';
import type { Mm } from '../measure/quantities.js';
import { lengthKey } from '../measure/tolerance.js';
import type { Model } from '../model/part.js';
import { endNotchRow, type Told } from './hold-end-notch.js';
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
  return typeof value === 'number' ? lengthKey(value) : value;
}

function notchRow(notched: Notched, told: Told): HoldRow {
  const { notch } = notched;
  if (notch.at === 'support') return endNotchRow(notched.bearings, notch, told);
  return notch.at === 'span' ? spanRow(notched.bearings, notch, told) : sideRow(notch.depth, told);
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
