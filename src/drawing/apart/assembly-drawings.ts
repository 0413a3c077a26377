import { capital } from '../../measure/capital.js';
import type { Part } from '../../model/part.js';
import type { Plan } from '../../plan/plan.js';
import { CORNER_SIGHTS } from '../corner/corner-sight.js';
import { drawCorner } from '../corner/corner-view.js';
import type { JointDrawing } from '../joint/joint-drawings.js';
import { partNames } from '../part-names.js';
import type { CornerView, Drawing } from '../strokes.js';
import { movedBy, pullApart } from './pull-apart.js';
import { waysBack } from './ways-back.js';

/** Each sub-assembly pulled apart, the first stand of it; stands of one use are alike or mirror images. */
export function assemblyDrawings(plan: Plan): readonly JointDrawing[] {
  const stands = new Map<string, string>();
  for (const { id, path } of plan.model.parts) {
    const use = path.split('.').slice(0, -1).join('.');
    const stand = id.split('.').slice(0, -1).join('.');
    if (use !== '' && !stands.has(use)) stands.set(use, stand);
  }
  return [...stands].map(([use, stand]) => {
    const parts = plan.model.parts.filter(({ id }) => isDirectlyIn(id, stand));
    const name = use.replaceAll('.', ', ').replaceAll('_', ' ');
    const title = `${capital(name)}, pulled apart`;
    return {
      key: use,
      draw: (view: CornerView = 'corner-right') => ({ ...drawApart(plan, parts, view), title }),
    };
  });
}

function isDirectlyIn(id: string, stand: string): boolean {
  return id.startsWith(`${stand}.`) && !id.slice(stand.length + 1).includes('.');
}

function drawApart(plan: Plan, parts: readonly Part[], view: CornerView): Drawing {
  const pulled = pullApart({
    bright: parts,
    standing: [],
    held: [],
    contacts: plan.model.contacts,
  });
  const moved = new Map(
    pulled.flatMap(one => one.unit.map(({ id }) => [id, movedBy(one)] as const)),
  );
  return drawCorner({
    view,
    display: plan.display,
    names: partNames(plan),
    ways: waysBack(pulled, CORNER_SIGHTS[view].eye),
    placed: parts.map(part => {
      const by = moved.get(part.id);
      return { part, bright: true, ...(by === undefined ? {} : { moved: by }) };
    }),
  });
}
