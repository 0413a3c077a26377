import { partKind } from '../drawing/added-kinds.js';
import { draw } from '../drawing/draw.js';
import { drawings, type NamedDrawing } from '../drawing/drawings.js';
import { stepSubject } from '../drawing/step-subject.js';
import type { Drawing } from '../drawing/strokes.js';
import { allParts } from '../drawing/view.js';
import type { Plan, Step } from '../plan/plan.js';

/**
 * Every drawing of a plan, drawn once however often it is set. Steps whose boards stand nowhere yet all
 * show the whole piece: its lines are found once for all of them. A step without boards has no picture.
 */
export function keptDrawings(plan: Plan): readonly NamedDrawing[] {
  const { model, display } = plan;
  const whole = once(() =>
    draw({ model, display, bright: allParts(model), standing: new Set() }, 'corner-right'),
  );
  return drawings(plan).flatMap(one => {
    const at = one.group === 'steps' ? plan.steps.findIndex(({ id }) => id === one.of) : -1;
    const step = plan.steps[at];
    if (step?.bright.length === 0) return [];
    const make = () =>
      step !== undefined && showsWhole(step) && isSeen(step, plan, whole())
        ? placesOf(step, at + 1, whole())
        : one.draw();
    return [{ ...one, draw: once(make) }];
  });
}

/** Does the step's picture show the whole piece, since what is worked on stands nowhere yet? */
export function showsWhole(step: Step): boolean {
  return step.bright.length > 0 && stepSubject(step).standing === undefined;
}

/** Is something seen of every kind of board that a step works on? Otherwise some have to be dashed. */
function isSeen(step: Step, { model }: Plan, { patches }: Drawing): boolean {
  const kinds = new Map(model.parts.map(part => [part.id, partKind(part)]));
  const seen = new Set(patches.map(({ part }) => kinds.get(part)));
  return step.bright.every(id => seen.has(kinds.get(id)));
}

/** The whole piece, the places of a step's boards filled. */
function placesOf(step: Step, number: number, whole: Drawing): Drawing {
  const ids = new Set(step.bright);
  return {
    ...whole,
    title: `Step ${number}: ${step.title}`,
    strokes: whole.strokes
      .filter(({ kind }) => kind === 'visible')
      .map(stroke => ({ ...stroke, bright: false })),
    patches: whole.patches.filter(({ part }) => ids.has(part)),
    inWords: `${whole.title} on the finished piece, the places of these boards filled: ${step.title}.`,
  };
}

function once<Value>(make: () => Value): () => Value {
  let made: { readonly value: Value } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
