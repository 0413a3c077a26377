import { assemblyDrawings } from '../../../drawing/apart/assembly-drawings.js';
import { jointDrawings, screwDrawings } from '../../../drawing/joint/joint-drawings.js';
import { sectionDrawings } from '../../../drawing/section/section-drawings.js';
import { allParts } from '../../../drawing/view.js';
import type { Plan } from '../../../plan/plan.js';
import type { Subject } from '../../pictures.js';

/** The finished piece, and closer: cut through, pulled apart, and joint by joint. */
export function planSubject(plan: Plan): Subject {
  const { model, display } = plan;
  return {
    id: 'whole piece',
    input: { model, display, bright: new Set(), standing: allParts(model) },
    notes: [],
    closeUps: () => [
      ...sectionDrawings(plan),
      ...assemblyDrawings(plan),
      ...jointDrawings(plan),
      ...screwDrawings(plan),
    ],
  };
}
