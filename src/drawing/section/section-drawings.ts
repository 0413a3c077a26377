import type { Plan } from '../../plan/plan.js';
import type { JointDrawing } from '../joint/joint-drawings.js';
import { drawSection } from './planter-section.js';

/** A section through each different planter. */
export function sectionDrawings(plan: Plan): readonly JointDrawing[] {
  const { model, display } = plan;
  return plan.planters.map((row, at) => {
    const own = new Set(row.first.parts);
    const parts = model.parts.filter(({ id }) => own.has(id));
    const { contacts } = model;
    return {
      key: at === 0 ? row.name : `${row.name} ${at + 1}`,
      title: `Section through ${row.name.toLowerCase()}`,
      draw: () => drawSection({ row, parts, contacts, display }),
    };
  });
}
