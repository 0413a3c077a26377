import type { Mm } from '../measure/quantities.js';
import type { Joint, Part } from '../model/part.js';
import type { Plan, Step } from '../plan/plan.js';
import type { StandingPot } from '../plan/planter.js';
import { selectJoints } from '../plan/select.js';
import { type Focus, focusOn } from './apart/focus.js';
import { movedBy, type Pulled, pullApart } from './apart/pull-apart.js';
import { heldBefore, setsFinished } from './apart/units.js';
import { waysBack } from './apart/ways-back.js';
import { CORNER_SIGHTS } from './corner/corner-sight.js';
import { drawCorner } from './corner/corner-view.js';
import type { Placed } from './corner/wood-in-sight.js';
import { partNames } from './part-names.js';
import { type LiftedPot, potsOf } from './pots.js';
import { stepSubject } from './step-subject.js';
import type { CornerView, Drawing } from './strokes.js';

/**
 * The picture of a step from a corner, to be understood without words: boards being added are filled,
 * drawn off their places, and arrows show where they go. Where the same is done several times, one of the
 * places is shown. Pieces that are only cut yet are shown in the finished piece.
 */
export function drawStepCorner(plan: Plan, step: Step, view: CornerView): Drawing {
  const { model, display } = plan;
  const names = partNames(plan);
  const subject = stepSubject(step);
  const isBright = new Set(subject.bright);
  if (subject.standing === undefined) {
    const placed = model.parts.map(part => ({ part, bright: isBright.has(part.id) }));
    return drawCorner({ view, placed, display, names, wall: true });
  }
  const { focus, made } = focusOf(plan, step);
  const held = heldBefore(madeBefore(plan, step), { ...focus, made }, model.contacts);
  const pulled = pullApart({ ...focus, held, contacts: model.contacts });
  const moved = new Map(
    pulled.flatMap(one => one.unit.map(({ id }) => [id, movedBy(one)] as const)),
  );
  // Where finished things are set in place, what stays is what they are set against.
  const isFinished = setsFinished({ ...focus, made });
  const placed = placedParts(focus, isBright).map(({ part, bright }): Placed => {
    const by = moved.get(part.id);
    if (by === undefined) return { part, bright: bright && !(isFinished && moved.size > 0) };
    return { part, bright, moved: by };
  });
  const drawing = drawCorner({
    view,
    placed,
    pots: liftedPots(potsOf(plan, step), focus),
    display,
    names: namesIn(pulled, names),
    dashes: !isFinished,
    ways: waysBack(pulled, CORNER_SIGHTS[view].eye),
  });
  if (focus.places < 2) return drawing;
  return { ...drawing, notes: [`One of ${focus.places} places where the same is done.`] };
}

/** Pots clear of all wood: they are set in last, from above. */
function liftedPots(pots: readonly StandingPot[], { standing }: Focus): readonly LiftedPot[] {
  const top = Math.max(...standing.map(({ box }) => box.max.z));
  return pots.map(pot => ({ pot, by: top + CLEAR - pot.foot }));
}

const CLEAR: Mm = 30;

/** What hangs together in so many boards is one thing, and nobody looks for its pieces; by looking. */
const ONE_THING = 20;

function namesIn(pulled: readonly Pulled[], names: ReadonlyMap<string, string>) {
  const large = pulled.filter(({ unit }) => unit.length > ONE_THING).flatMap(({ unit }) => unit);
  const unnamed = new Set(large.map(({ id }) => id));
  return new Map([...names].filter(([id]) => !unnamed.has(id)));
}

/** How many boards the picture of a step from a corner has to show. */
export function boardsInPicture(plan: Plan, step: Step): number {
  if (stepSubject(step).standing === undefined) return plan.model.parts.length;
  const { bright, standing } = focusOf(plan, step).focus;
  return new Set([...bright, ...standing]).size;
}

/** What is looked at, where the same is done in several places, and the joints that are made. */
function focusOf({ model }: Plan, step: Step): { focus: Focus; made: readonly Joint[] } {
  const { bright, standing = [] } = stepSubject(step);
  const [isBright, isThere] = [new Set(bright), new Set(standing)];
  const made = selectJoints(model, step.joins);
  const focus = focusOn({
    bright: model.parts.filter(({ id }) => isBright.has(id)),
    standing: model.parts.filter(({ id }) => isThere.has(id)),
    made,
  });
  return { focus, made };
}

/** Joints of the steps before. */
function madeBefore({ steps, model }: Plan, step: Step): readonly Joint[] {
  const names = steps.slice(0, steps.indexOf(step)).flatMap(({ joins }) => joins);
  return selectJoints(model, names);
}

/** Each board once, though what is set in place may have been standing before. */
function placedParts(
  { bright, standing }: { readonly bright: readonly Part[]; readonly standing: readonly Part[] },
  isBright: ReadonlySet<string>,
): readonly Placed[] {
  return [
    ...standing.filter(({ id }) => !isBright.has(id)).map(part => ({ part, bright: false })),
    ...bright.map(part => ({ part, bright: true })),
  ];
}
