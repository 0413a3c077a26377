import { formatLength } from '../measure/format-length.js';
import type { Display, Mm } from '../measure/quantities.js';
import type { Point } from '../model/part.js';
import type { Plan, Step } from '../plan/plan.js';
import type { StandingPot } from '../plan/planter.js';
import { areaOf, type Convex } from './corner/convex.js';
import type { Way } from './corner/corner-arrows.js';
import { type Eye, onPaper } from './corner/corner-sight.js';
import { outline } from './joint/faces-of-piece.js';
import { type PaperBox, SIGHTS, type Sight } from './sight.js';
import type { Drawing, PaperPoint, Stroke } from './strokes.js';

/** The pots that a step sets in, each where it will stand; in the first planter where several are alike. */
export function potsOf({ planters }: Plan, step: Step): readonly StandingPot[] {
  return planters.flatMap(({ steps, first }) => (steps.includes(step.id) ? first.pots : []));
}

/** What is drawn of pots. They are no wood: dash-dots, as in the section. */
export type DrawnPots = Pick<Drawing, 'strokes' | 'rings' | 'labels'>;

/** From which side pots are seen, where the drawing has its origin, and whether they are being set in. */
type PotSight = {
  readonly sight: Sight;
  readonly origin: PaperPoint;
  readonly bright: boolean;
};

/** Pots squarely from a side; circles from above. */
export function potsFromSide(
  pots: readonly StandingPot[],
  { sight: { u: across, v: up }, origin, bright }: PotSight,
): DrawnPots {
  const drawn = pots.map(pot => {
    const middle = { x: pot.x, y: pot.y, z: pot.foot + pot.height / 2 };
    const at = { u: middle[across] - origin.u, v: middle[up] - origin.v };
    const radius = pot.diameter / 2;
    const label = { text: nameOf(pot), at, bright };
    if (up !== 'z') return { strokes: [], rings: [{ at, radius, bright }], labels: [label] };
    const box: PaperBox = {
      u: { from: at.u - radius, to: at.u + radius },
      v: { from: at.v - pot.height / 2, to: at.v + pot.height / 2 },
    };
    return { strokes: outline(box, 'phantom', bright), rings: [], labels: [label] };
  });
  return {
    strokes: drawn.flatMap(({ strokes }) => strokes),
    rings: drawn.flatMap(({ rings }) => rings),
    labels: drawn.flatMap(({ labels }) => labels),
  };
}

/** Pots as a section shows them, seen from the front; not yet moved to the corner of the paper. */
export function potsInSection(pots: readonly StandingPot[]): DrawnPots {
  return potsFromSide(pots, { sight: SIGHTS.front, origin: { u: 0, v: 0 }, bright: false });
}

/** A pot drawn so far above its place. */
export type LiftedPot = { readonly pot: StandingPot; readonly by: Mm };

/** A round pot from a corner: its rim, the near half of its foot, both sides, and all that it covers. */
export function potFromCorner(
  { pot, by }: LiftedPot,
  eye: Eye,
): DrawnPots & { readonly covers: Convex } {
  const foot = pot.foot + by;
  const rim = foot + pot.height;
  const [rimRound, footRound] = [circle(pot, rim, eye), circle(pot, foot, eye)];
  const sides = [0, CORNERS / 2].flatMap(at => line(rimRound[at], footRound[at]));
  const round = [...rimRound.slice(CORNERS / 2), ...rimRound.slice(0, 1)];
  const covers = [...footRound.slice(0, CORNERS / 2 + 1), ...round];
  const middle = onPaper({ x: pot.x, y: pot.y, z: foot + pot.height / 2 }, eye);
  return {
    strokes: [
      ...rimRound.flatMap((from, at) => line(from, rimRound[(at + 1) % CORNERS])),
      ...footRound.slice(0, CORNERS / 2).flatMap((from, at) => line(from, footRound[at + 1])),
      ...sides,
    ],
    rings: [],
    labels: [{ text: nameOf(pot), at: middle, bright: true }],
    // Round to the left, as all shapes go.
    covers: areaOf(covers) < 0 ? covers.toReversed() : covers,
  };
}

/** The way of a lifted pot down to its place. */
export function wayOfPot({ pot: { x, y, foot }, by }: LiftedPot): Way {
  return { from: { x, y, z: foot + by }, to: { x, y, z: foot } };
}

/** A pot for someone who hears the drawing: "Pot 1, 11-1/2 in high and 10-3/4 in across, goes onto its blocks." */
export function potInWords({ number, height, diameter }: StandingPot, display: Display): string {
  const length = (value: Mm) => formatLength(value, display);
  return `Pot ${number}, ${length(height)} high and ${length(diameter)} across, goes onto its blocks.`;
}

function nameOf({ number }: StandingPot): string {
  return `pot ${number}`;
}

/** So many corners make a circle on any paper. */
const CORNERS = 32;

/** A level circle, from where it is farthest to one side over the near half to the other side. */
function circle({ x, y, diameter }: StandingPot, z: number, eye: Eye): readonly PaperPoint[] {
  // One side lies at (-y, x) of the direction to the eye, a quarter turn from it.
  const side: Point = { x: -eye.y, y: eye.x, z: 0 };
  const radius = diameter / 2 / Math.SQRT2;
  return Array.from({ length: CORNERS }, (_, at) => {
    const turn = (at / CORNERS) * 2 * Math.PI;
    const [cos, sin] = [Math.cos(turn) * radius, Math.sin(turn) * radius];
    return onPaper(
      { x: x + side.x * cos + eye.x * sin, y: y + side.y * cos + eye.y * sin, z },
      eye,
    );
  });
}

function line(from: PaperPoint | undefined, to: PaperPoint | undefined): readonly Stroke[] {
  if (from === undefined || to === undefined) return [];
  return [{ from, to, kind: 'phantom', bright: true }];
}
