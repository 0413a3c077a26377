import { formatLengthExact } from '../../measure/format-length.js';
import type { Display, Mm } from '../../measure/quantities.js';
import { atMost, lessThan, sameLength } from '../../measure/tolerance.js';
import { bounds } from '../../model/box.js';
import type { Box, Contact, Part } from '../../model/part.js';
import type { PlanterRow } from '../../plan/planter.js';
import { edgeStrokes } from '../edges.js';
import { brightPatches } from '../patches.js';
import { potsInSection } from '../pots.js';
import { type Face, whatIsSeen } from '../seen.js';
import { BLANK, type DimensionLine, type Drawing, type Patch } from '../strokes.js';
import { toOrigin } from '../to-origin.js';
import { leans } from './leans.js';

export type SectionInput = {
  readonly row: PlanterRow;
  readonly parts: readonly Part[];
  readonly contacts: readonly Contact[];
  readonly display: Display;
};

/**
 * A planter cut through the middle of its first pot and seen from the front: cut wood hatched, boards that
 * touch leaning differently; behind it what one sees; pots in dash-dots, since they are no wood.
 */
export function drawSection({ row, parts, contacts, display }: SectionInput): Drawing {
  const title = `Section through ${row.name.toLowerCase()}, seen from the front`;
  const all = bounds(parts.map(({ box }) => box));
  if (all === undefined) return { ...BLANK, title, inWords: `${title}: no board stands there.` };
  const plane = planeOf(row, all);
  const kept = parts.map(part => part.solid.flatMap(box => behind(box, plane)));
  const seen = whatIsSeen(kept.flatMap((solid, part) => solid.map(box => faceOf(box, part))));
  const cut = new Set(parts.flatMap((part, at) => (isCut(part, plane) ? [at] : [])));
  const lean = leans(parts, contacts);
  const patches = brightPatches(seen, cut, at => parts[at]?.id ?? '').map(
    (patch): Patch => ({ ...patch, look: 'cut', lean: lean.get(patch.part) ?? 'right' }),
  );
  const pots = row.first.pots.filter(pot => Math.abs(pot.y - plane) < pot.diameter / 2);
  const drawnPots = potsInSection(pots);
  const drawn: Drawing = {
    ...BLANK,
    title,
    strokes: [...edgeStrokes(seen, new Set()), ...drawnPots.strokes],
    patches,
    labels: drawnPots.labels,
    notes: [
      `Hatched is cut wood${pots.length > 0 ? '; dash-dots are pots' : ''}.`,
      ...(row.places > 1 ? [`One of ${row.places} alike.`] : []),
    ],
    inWords: words(title, row, display),
  };
  const placed = toOrigin(drawn, [
    { u: all.min.x, v: all.min.z },
    { u: all.max.x, v: all.max.z },
  ]);
  return { ...placed, dimensions: figures(row, all, display) };
}

/** Through the middle of the first pot; of the box where there is none. */
export function planeOf({ first }: PlanterRow, all: Box): Mm {
  return first.pots[0]?.y ?? (all.min.y + all.max.y) / 2;
}

/** What of a box lies at the plane or behind it. */
function behind({ min, max }: Box, plane: Mm): readonly Box[] {
  if (atMost(max.y, plane)) return [];
  return [{ min: { ...min, y: Math.max(min.y, plane) }, max }];
}

function isCut({ solid }: Part, plane: Mm): boolean {
  return solid.some(({ min, max }) => lessThan(min.y, plane) && lessThan(plane, max.y));
}

function faceOf({ min, max }: Box, part: number): Face {
  return { part, depth: min.y, u: { from: min.x, to: max.x }, v: { from: min.z, to: max.z } };
}

type Wanted = Pick<DimensionLine, 'along' | 'side' | 'row'> & {
  readonly from: Mm;
  readonly to: Mm;
};

/** Inside first, since pots see only that; then the blocks and the rim; then the whole. */
function figures(row: PlanterRow, all: Box, display: Display): readonly DimensionLine[] {
  const { floor, pots } = row.first;
  const [first] = pots;
  const z = (at: Mm) => at - all.min.z;
  const x = (at: Mm) => at - all.min.x;
  const middle = x((all.min.x + all.max.x) / 2);
  const half = row.inside.long.value / 2;
  const up = (from: Mm, to: Mm, side: 'left' | 'right', at = 0): Wanted => ({
    along: 'v',
    side,
    row: at,
    from: z(from),
    to: z(to),
  });
  const wanted: readonly Wanted[] = [
    { along: 'u', side: 'below', row: 0, from: middle - half, to: middle + half },
    up(floor, all.max.z, 'left'),
    ...(first === undefined
      ? []
      : [
          up(floor, first.foot, 'right'),
          up(first.foot, first.foot + first.height, 'right'),
          up(first.foot + first.height, all.max.z, 'right'),
        ]),
    up(all.min.z, all.max.z, 'left', 1),
    { along: 'u', side: 'below', row: 1, from: 0, to: x(all.max.x) },
  ];
  return wanted
    .filter(({ from, to }) => lessThan(from, to) && !sameLength(from, to))
    .map(it => ({ ...it, text: formatLengthExact(it.to - it.from, display), bright: false }));
}

function words(title: string, row: PlanterRow, display: Display): string {
  const length = (value: Mm) => formatLengthExact(value, display);
  const pots = row.pots.map(
    ({ number, blocks, rim }) =>
      `Pot ${number}: ${blocks}; rim ${length(rim.value)} below the edge.`,
  );
  const { long, high } = row.inside;
  return `${title}: ${length(long.value)} wide and ${length(high.value)} high inside. ${pots.join(' ')}`;
}
