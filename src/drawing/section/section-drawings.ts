import { bounds } from '../../model/box.js';
import type { Plan } from '../../plan/plan.js';
import type { JointDrawing } from '../joint/joint-drawings.js';
import type { Drawing, Stroke } from '../strokes.js';
import { drawSection, planeOf } from './planter-section.js';

/** A section through each different planter. */
export function sectionDrawings(plan: Plan): readonly JointDrawing[] {
  const { model, display } = plan;
  return plan.planters.map((row, at) => {
    const own = new Set(row.first.parts);
    const parts = model.parts.filter(({ id }) => own.has(id));
    const { contacts } = model;
    return {
      key: at === 0 ? row.name : `${row.name} ${at + 1}`,
      draw: () => drawSection({ row, parts, contacts, display }),
    };
  });
}

/** The view from above with a line where each section is cut, a little longer than the planter. */
export function withCuttingPlanes(above: Drawing, { model, planters }: Plan): Drawing {
  const { min } = model.overall;
  const strokes = planters.flatMap((row): readonly Stroke[] => {
    const own = new Set(row.first.parts);
    const all = bounds(model.parts.filter(({ id }) => own.has(id)).map(({ box }) => box));
    if (all === undefined) return [];
    const beyond = (all.max.x - all.min.x) * BEYOND;
    const v = planeOf(row, all) - min.y;
    const [from, to] = [all.min.x - beyond - min.x, all.max.x + beyond - min.x];
    return [{ from: { u: from, v }, to: { u: to, v }, kind: 'cutting-plane', bright: false }];
  });
  if (strokes.length === 0) return above;
  const note = 'The section is cut along the dash-dots and seen from the front.';
  return { ...above, strokes: [...above.strokes, ...strokes], notes: [...above.notes, note] };
}

const BEYOND = 1 / 12;
