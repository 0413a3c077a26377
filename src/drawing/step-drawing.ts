import type { Mm } from '../measure/quantities.js';
import type { Plan, Step } from '../plan/plan.js';
import { movedBy } from './apart/pull-apart.js';
import { waysBack } from './apart/ways-back.js';
import { CORNER_SIGHTS } from './corner/corner-sight.js';
import { drawCorner } from './corner/corner-view.js';
import type { Placed } from './corner/wood-in-sight.js';
import type { DrawInput } from './draw.js';
import type { LiftedPot } from './pots.js';
import { type StepScene, stepScene } from './step-scene.js';
import type { CornerView, Drawing } from './strokes.js';

/**
 * The picture of a step from a corner, to be understood without words: boards being added are filled,
 * drawn off their places, and arrows show where they go. Where the same is done several times, one of the
 * places is shown. Pieces that are only cut yet are shown in the finished piece.
 */
export function drawStepCorner(
  plan: Plan,
  step: Step,
  view: CornerView,
  scene: StepScene = stepScene(plan, step),
): Drawing {
  const { bright, standing, pulled, names, isFinished, notes } = scene;
  const moved = new Map(
    pulled.flatMap(one => one.unit.map(({ id }) => [id, movedBy(one)] as const)),
  );
  const placed: readonly Placed[] = [
    ...standing.map(part => ({ part, bright: false })),
    ...bright.map((part): Placed => {
      const by = moved.get(part.id);
      return { part, bright: true, ...(by === undefined ? {} : { moved: by }) };
    }),
  ];
  const drawing = drawCorner({
    view,
    placed,
    display: plan.display,
    names,
    pots: liftedPots(scene),
    dashes: !isFinished,
    wall: scene.onlyCut,
    ways: waysBack(pulled, CORNER_SIGHTS[view].eye),
  });
  return { ...drawing, notes };
}

/** The same seen squarely, to be drawn from any side. */
export function squareInput({ model, display }: Plan, scene: StepScene): DrawInput {
  const { bright, standing, onlyCut, isFinished, pots, names } = scene;
  // Of a piece that stands nowhere yet its length matters; of what is finished only the whole.
  const figures = isFinished ? 'overall' : onlyCut ? 'lengths' : 'added';
  const ids = (parts: StepScene['bright']) => new Set(parts.map(({ id }) => id));
  return { model, display, bright: ids(bright), standing: ids(standing), figures, pots, names };
}

/** Pots clear of all wood: they are set in last, from above. */
function liftedPots({ pots, standing }: StepScene): readonly LiftedPot[] {
  const top = Math.max(...standing.map(({ box }) => box.max.z));
  return pots.map(pot => ({ pot, by: top + CLEAR - pot.foot }));
}

const CLEAR: Mm = 30;
