import { verdictOf } from '../materials/beam-check.js';
import { PERSON } from '../materials/loads.js';
import { markedLimit, NOTCH_LIMIT_SOURCE, notchLimits } from '../materials/notch-limits.js';
import type { NotchedEnd } from '../materials/notched-end.js';
import { COMPUTED, type Figure } from '../measure/figure.js';
import { figure, sourceText } from '../measure/figure-text.js';
import { formatLengthExact } from '../measure/format-length.js';
import type { Display, Mm } from '../measure/quantities.js';
import { atMost } from '../measure/tolerance.js';
import { formatWeight } from '../measure/weight.js';
import { placedEnd } from './hold-beam.js';
import type { HoldInputs, HoldRow, SeatRole } from './hold-row.js';
import { type BeamNotch, type Bearings, standingSizes } from './hold-spans.js';

/** Whose beam it is, and where it stands. */
export type Told = { readonly role: SeatRole; readonly inputs: HoldInputs };

type EndCut = Extract<BeamNotch, { at: 'support' }>;

/**
 * A notch over a support, with one heavy person sitting right beside it. A notch on the pressed edge
 * that lies wholly over its support costs nothing by the NDS; the row also tells what the wood beside
 * it carries alone, so that nobody has to rely on that.
 */
export function endNotchRow(bearings: Bearings, notch: EndCut, { role, inputs }: Told): HoldRow {
  const { display } = inputs;
  const end = placedEnd(bearings, notch, inputs);
  const { depth } = standingSizes(bearings.beam);
  const limit = markedLimit(notchLimits(depth, 'end').deepest, display);
  const within = atMost(notch.depth, limit);
  const excused = notch.edge === 'top' && atMost(PERSON.value, end.alone);
  const byShear = verdictOf(PERSON.value / end.carries);
  const verdict = byShear === 'holds by this sum' && !within && !excused ? 'look again' : byShear;
  return {
    id: `${role.id}/notch`,
    say: `${role.say}: notch at its end`,
    sum: sumWords(notch, { depth, limit, end, display }),
    value: carried(end, display),
    limit: `at least ${formatWeight(PERSON.value, display)}`,
    verdict,
    better:
      verdict === 'holds by this sum'
        ? ''
        : `Notch it on top, over its support only, and no deeper than ${formatLengthExact(limit, display)}; or let a block under it carry its whole depth.`,
    source: `${sourceText(end.source)}; ${sourceText(NOTCH_LIMIT_SOURCE)}`,
  };
}

function carried({ carries }: NotchedEnd, display: Display): Figure {
  const share = Math.round((PERSON.value / carries) * 100);
  const because = `${formatWeight(PERSON.value, display)} beside the support uses ${share}%`;
  return figure(carries, 'kg', because, COMPUTED);
}

type Sum = {
  readonly depth: Mm;
  readonly limit: Mm;
  readonly end: NotchedEnd;
  readonly display: Display;
};

function sumWords(notch: EndCut, { depth, limit, end, display }: Sum): string {
  const say = (length: Mm) => formatLengthExact(length, display);
  const pressed = notch.edge === 'top';
  const wholly = atMost(notch.beyond, 0) ? ', and wholly over its support' : '';
  const place = pressed
    ? `on the upper edge, which is pressed${wholly}`
    : 'on the lower edge, which is stretched';
  const rule = atMost(notch.depth, limit)
    ? `the usual quarter of the depth, ${say(limit)}, is kept`
    : `it is deeper than the usual quarter of the depth, ${say(limit)}${pressed ? ', a rule made for joists notched from below' : ''}`;
  return `${say(notch.depth)} deep of ${say(depth)} ${place}; the end carries ${formatWeight(end.carries, display)} in shear, the ${say(depth - notch.depth)} beside the notch alone ${formatWeight(end.alone, display)}; ${rule}`;
}
