import { jointDrawings, screwDrawings } from '../../../drawing/joint/joint-drawings.js';
import type { Plan } from '../../../plan/plan.js';
import type { Subject } from '../../pictures.js';

/** The finished piece, and closer the sheets of its joints. */
export function planSubject(plan: Plan): Subject {
  const { model, display } = plan;
  return {
    id: 'whole piece',
    model,
    display,
    bright: [],
    standing: undefined,
    closeUps: () => [...jointDrawings(plan), ...screwDrawings(plan)],
  };
}
