import { inches } from '../../src/measure/inch.js';
import type { Model } from '../../src/model/part.js';
import { type BoardInTest, boxOf, pieceOf } from './boards.js';

type Corner = readonly [number, number, number];
type InInches = {
  readonly id: string;
  readonly name: string;
  readonly at: Corner;
  readonly size: Corner;
};

/** Dressed 2x4: 1-1/2 x 3-1/2 in; 1x3: 3/4 x 2-1/2 in (American Softwood Lumber Standard, PS 20). */
const THICK = 1.5;
const WIDE = 3.5;
const THIN = 0.75;
const SLIM = 2.5;

const DEPTH = 17;
const SEAT = 48;
const PLANTER = 18;
const FOOT = 1.5;
const SEAT_TOP = 18;
const BOX_TOP = 16;

/**
 * A bench 84 in wide with a slatted seat of 48 in between two planters, made up for tests of drawings:
 * every kind of board that such a piece has, at sizes that no project file can change.
 */
export function smallBench(): Model {
  return pieceOf([
    ...seat(),
    ...planter('planter/left', 0),
    ...planter('planter/right', PLANTER + SEAT),
  ]);
}

/** From a corner and sizes in inches to a board in mm. */
function board({ id, name, at, size }: InInches): BoardInTest {
  const to: Corner = [at[0] + size[0], at[1] + size[1], at[2] + size[2]];
  return { id, name, from: inMm(at), to: inMm(to) };
}

function inMm(corner: Corner): Corner {
  return [inches(corner[0]), inches(corner[1]), inches(corner[2])];
}

function times<T>(count: number, make: (i: number) => T): T[] {
  return Array.from({ length: count }, (_, i) => make(i));
}

function seat(): BoardInTest[] {
  const railTop = SEAT_TOP - THICK;
  const height = railTop - FOOT;
  const gap = (SEAT - 12 * WIDE) / 13;
  const slats = times(12, i =>
    board({
      id: `seat_slat/${i + 1}`,
      name: 'Seat slat',
      at: [PLANTER + gap + i * (WIDE + gap), 0, railTop],
      size: [WIDE, DEPTH, THICK],
    }),
  );
  const rails = times(2, i =>
    board({
      id: `seat_rail/${i + 1}`,
      name: 'Seat rail',
      at: [PLANTER + THICK, i === 0 ? THICK : DEPTH - 2 * THICK, railTop - WIDE],
      size: [SEAT - 2 * THICK, THICK, WIDE],
    }),
  );
  return [
    ...panel('end_panel/left', { at: [PLANTER, 0, FOOT], along: 'y', width: DEPTH, height }),
    ...panel('end_panel/right', {
      at: [PLANTER + SEAT - THICK, 0, FOOT],
      along: 'y',
      width: DEPTH,
      height,
    }),
    ...rails,
    ...slats,
    ...feet('foot', PLANTER, SEAT),
  ];
}

function planter(id: string, x: number): BoardInTest[] {
  const height = BOX_TOP - FOOT;
  const width = PLANTER - 2 * THICK;
  const side = (name: string, dx: number) =>
    panel(`${id}/${name}`, { at: [x + dx, 0, FOOT], along: 'y', width: DEPTH, height });
  const face = (name: string, y: number) =>
    panel(`${id}/${name}`, { at: [x + THICK, y, FOOT], along: 'x', width, height });
  const gap = (DEPTH - 2 * THICK - 3 * WIDE) / 4;
  const planks = times(3, i =>
    board({
      id: `${id}/plank/${i + 1}`,
      name: 'Floor plank',
      at: [x + THICK + 1 / 8, THICK + gap + i * (WIDE + gap), FOOT + WIDE],
      size: [width - 1 / 4, WIDE, THIN],
    }),
  );
  return [
    ...side('west', 0),
    ...side('east', PLANTER - THICK),
    ...face('front', 0),
    ...face('back', DEPTH - THICK),
    ...feet(`${id}/foot`, x, PLANTER),
    ...planks,
  ];
}

function feet(id: string, x: number, width: number): BoardInTest[] {
  return times(4, i =>
    board({
      id: `${id}/${i + 1}`,
      name: 'Foot',
      at: [x + (i % 2) * (width - WIDE), i < 2 ? 0 : DEPTH - WIDE, 0],
      size: [WIDE, WIDE, FOOT],
    }),
  );
}

type PanelSize = {
  readonly at: Corner;
  readonly along: 'x' | 'y';
  readonly width: number;
  readonly height: number;
};

/** Two posts between two rails that lie with a tongue over the posts' ends, infill slats between. */
function panel(id: string, size: PanelSize): BoardInTest[] {
  const { width, height } = size;
  const opening = width - 2 * WIDE;
  const count = Math.floor(opening / (SLIM + THIN));
  const gap = (opening - count * SLIM) / (count + 1);
  const half = WIDE / 2;
  const piece = (name: string, i: number, span: PanelSpan) =>
    inPanel(size, { id: `${id}/${name.toLowerCase().replace(' ', '_')}/${i + 1}`, name, span });
  return [
    ...times(2, i =>
      piece('Post', i, {
        from: i * (width - WIDE),
        over: WIDE,
        up: half,
        tall: height - WIDE,
        deep: THICK,
      }),
    ),
    ...times(2, i =>
      tongued(
        piece('Panel rail', i, {
          from: 0,
          over: width,
          up: i * (height - WIDE),
          tall: WIDE,
          deep: THICK,
        }),
        { along: size.along, isTop: i === 1 },
      ),
    ),
    ...times(count, i =>
      piece('Infill slat', i, {
        from: WIDE + gap + i * (SLIM + gap),
        over: SLIM,
        up: WIDE + 1 / 16,
        tall: height - 2 * WIDE - 1 / 8,
        deep: THIN,
      }),
    ),
  ];
}

/** Where a board stands in a panel: along it, upward, and how far into it. */
type PanelSpan = {
  readonly from: number;
  readonly over: number;
  readonly up: number;
  readonly tall: number;
  readonly deep: number;
};

function inPanel(
  { at, along }: PanelSize,
  { id, name, span }: { id: string; name: string; span: PanelSpan },
): BoardInTest {
  const [x, y, z] = at;
  return along === 'x'
    ? board({
        id,
        name,
        at: [x + span.from, y, z + span.up],
        size: [span.over, span.deep, span.tall],
      })
    : board({
        id,
        name,
        at: [x, y + span.from, z + span.up],
        size: [span.deep, span.over, span.tall],
      });
}

/** A panel rail less the half of its width that the posts stand in. */
function tongued(
  rail: BoardInTest,
  { along, isTop }: { along: 'x' | 'y'; isTop: boolean },
): BoardInTest {
  const wide = inches(WIDE);
  const [x0, y0, z0] = rail.from;
  const [x1, y1, z1] = rail.to;
  const middle = (z0 + z1) / 2;
  const [inset, inward] = along === 'x' ? [wide, 0] : [0, wide];
  const tongue = isTop ? [middle, z1] : [z0, middle];
  const shoulder = isTop ? [z0, middle] : [middle, z1];
  return {
    ...rail,
    solid: [
      boxOf([x0, y0, tongue[0] ?? z0], [x1, y1, tongue[1] ?? z1]),
      boxOf(
        [x0 + inset, y0 + inward, shoulder[0] ?? z0],
        [x1 - inset, y1 - inward, shoulder[1] ?? z1],
      ),
    ],
  };
}
