import type { Display, SquareMm } from '../measure/quantities.js';
import type { Model, Part } from '../model/part.js';
import type { StandingPot } from '../plan/planter.js';
import { type AddedKind, addedKinds, type Lying, partKind } from './added-kinds.js';
import { marksOn } from './corner/corner-marks.js';
import { addedDimensions, overallDimensions } from './dimension-lines.js';
import { edgeStrokes } from './edges.js';
import { inWords } from './in-words.js';
import { brightPatches } from './patches.js';
import { potsFromSide } from './pots.js';
import { type Face, whatIsSeen } from './seen.js';
import {
  boundsOf,
  cornersOf,
  movedTo,
  nearDepth,
  type PaperBox,
  paperBox,
  SIGHTS,
  type Sight,
} from './sight.js';
import {
  type Arrow,
  BLANK,
  type Drawing,
  type PaperPoint,
  type SquareView,
  type Stroke,
  WALL,
} from './strokes.js';

export type ViewInput = {
  readonly model: Model;
  readonly view: SquareView;
  /** Ids of the parts that are being added. */
  readonly bright: ReadonlySet<string>;
  /** Ids of the parts that stand there already; parts in neither set are not drawn. */
  readonly standing: ReadonlySet<string>;
  readonly display: Display;
  readonly dimensions: 'overall' | 'added' | 'lengths';
  /** Pots that are set in. */
  readonly pots?: readonly StandingPot[];
  /** What boards that are being added are called, by part id: each name is written once. */
  readonly names?: ReadonlyMap<string, string>;
};

/** The ids of all parts, to draw the finished piece. */
export function allParts(model: Model): ReadonlySet<string> {
  return new Set(model.parts.map(part => part.id));
}

/**
 * A view of some of the boards with hidden lines removed, in mm, its lower left corner at the origin.
 * Boards being added are bright and filled; where nothing is seen of any of a kind, those of the kind
 * get a hidden outline. With no boards to draw, the drawing is empty and says so in words.
 */
export function drawView(input: ViewInput): Drawing {
  const sight = SIGHTS[input.view];
  const shown = shownParts(input);
  const corner = boundsOf(shown.flatMap(part => part.solid.map(box => paperBox(box, sight))));
  if (corner === undefined) return emptyDrawing(sight);
  const paper = movedTo(corner, corner);
  const seen = whatIsSeen(
    shown.flatMap((part, number) => facesOf(part, number, { sight, corner })),
  );
  const isBright = (part: Part) => input.bright.has(part.id);
  const bright = new Set(shown.flatMap((part, number) => (isBright(part) ? [number] : [])));
  const lying = shown.filter(isBright).map(part => lyingOf(part, { sight, corner }));
  const kinds = addedKinds(lying, sight);
  const behind = lying.filter(one => !seen.parts.has(shown.indexOf(one.part)));
  const seenKinds = new Set(lying.filter(it => !behind.includes(it)).map(it => partKind(it.part)));
  const dashed = behind.filter(it => !seenKinds.has(partKind(it.part)));
  const origin = { u: corner.u.from, v: corner.v.from };
  const pots = potsFromSide(input.pots ?? [], { sight, origin, bright: true });
  const patches = brightPatches(seen, bright, number => shown[number]?.id ?? '');
  return {
    ...BLANK,
    title: sight.title,
    width: paper.u.to,
    height: paper.v.to,
    strokes: [
      ...edgeStrokes(seen, bright),
      ...dashed.flatMap(one => outline(one.box)),
      ...pots.strokes,
    ],
    rings: pots.rings,
    labels: pots.labels,
    patches,
    marks: marksOn(patches, input.names ?? new Map()),
    dimensions:
      input.dimensions === 'overall'
        ? overallDimensions(paper, input.display)
        : addedDimensions(
            input.dimensions === 'added' ? kinds : kinds.map(lengthOnly),
            paper,
            input.display,
          ),
    arrows: input.dimensions === 'overall' ? wallArrows(sight, paper) : [],
    inWords: inWords(
      { sight, paper, kinds, standing: shown.length - lying.length, behind: behind.length },
      input.display,
    ),
  };
}

/** Of a piece that stands nowhere yet only its length matters. */
function lengthOnly(kind: AddedKind): AddedKind {
  return { ...kind, offset: undefined, gap: undefined };
}

function shownParts({ model, bright, standing }: Shown): readonly Part[] {
  return model.parts.filter(({ id }) => bright.has(id) || standing.has(id));
}

type Shown = Pick<ViewInput, 'model' | 'bright' | 'standing'>;

/** How much is seen of what is being added when one looks squarely from a side, in square mm. */
export function areaSeen(input: Shown, view: SquareView): SquareMm {
  const sight = SIGHTS[view];
  const shown = shownParts(input);
  const faces = shown.flatMap((part, number) =>
    part.solid.map(
      (box): Face => ({ ...paperBox(box, sight), part: number, depth: nearDepth(box, sight) }),
    ),
  );
  const { us, vs, partAt } = whatIsSeen(faces);
  let area = 0;
  for (let j = 0; j + 1 < vs.length; j += 1) {
    const high = (vs[j + 1] ?? 0) - (vs[j] ?? 0);
    for (let i = 0; i + 1 < us.length; i += 1) {
      const part = shown[partAt(i, j)];
      if (part !== undefined && input.bright.has(part.id))
        area += high * ((us[i + 1] ?? 0) - (us[i] ?? 0));
    }
  }
  return area;
}

/** Share of the drawing that the arrow is long, and how far beside the piece it begins. */
const ARROW = 1 / 4;
const AIR = 1 / 8;

/** Which way the wall is, beside the drawing; nothing where one looks toward it. */
function wallArrows({ u, v }: Sight, paper: PaperBox): readonly Arrow[] {
  const arrow = (from: PaperPoint, to: PaperPoint): readonly Arrow[] => [
    { from, to, kind: 'toward', text: WALL },
  ];
  const [wide, high] = [paper.u.to, paper.v.to];
  if (v === 'y') {
    const at = (share: number) => ({ u: wide / 2, v: high * (1 + share) });
    return arrow(at(AIR), at(AIR + ARROW));
  }
  if (u !== 'y') return [];
  const at = (share: number) => ({ u: wide * (1 + share), v: 0 });
  return arrow(at(AIR), at(AIR + ARROW));
}

function emptyDrawing(sight: Sight): Drawing {
  return { ...BLANK, title: sight.title, inWords: `${sight.title}: no board stands here yet.` };
}

type Paper = { readonly sight: Sight; readonly corner: PaperBox };

function facesOf(part: Part, number: number, { sight, corner }: Paper): readonly Face[] {
  return part.solid.map(box => ({
    ...movedTo(paperBox(box, sight), corner),
    part: number,
    depth: nearDepth(box, sight),
  }));
}

function lyingOf(part: Part, { sight, corner }: Paper): Lying {
  const boxes = part.solid.map(box => paperBox(box, sight));
  return { part, box: movedTo(boundsOf(boxes) ?? paperBox(part.box, sight), corner) };
}

function outline(box: PaperBox): readonly Stroke[] {
  const corners = cornersOf(box);
  return corners.map((from, i) => {
    const to = corners[(i + 1) % corners.length] ?? from;
    return { from, to, kind: 'hidden', bright: true };
  });
}
