import type { Mm } from '../measure/quantities.js';
import { intersect } from '../model/box.js';
import { AXES, type Box, type Joint, type Part } from '../model/part.js';
import type { Plan, Step } from '../plan/plan.js';
import { selectJoints } from '../plan/select.js';
import { movedBy, pullApart } from './apart/pull-apart.js';
import { waysBack } from './apart/ways-back.js';
import { CORNER_SIGHTS } from './corner/corner-sight.js';
import { drawCorner } from './corner/corner-view.js';
import { jointDrawings, screwDrawings } from './joint/joint-drawings.js';
import { partNames } from './part-names.js';
import type { CornerView, Drawing } from './strokes.js';

/** Something near at hand: a joint, a notch, the places of screws. Sheets look the same from any corner. */
export type CloseUp = { readonly draw: (view: CornerView) => Drawing };

/** What one may want to see closer at a step: its notches, or its joints and where their screws go. */
export function closeUps(plan: Plan, step: Step): readonly CloseUp[] {
  if (step.phase === 'notch') {
    const bright = new Set(step.bright);
    const marks = new Set(
      plan.cutList.filter(row => row.pieces.some(id => bright.has(id))).map(({ mark }) => mark),
    );
    return jointDrawings(plan).filter(({ key }) => marks.has(key));
  }
  const joints = selectJoints(plan.model, step.joins);
  // Front and back feet are two rules with one name: they look alike.
  const firsts = new Map<string, Joint>();
  for (const joint of joints) if (!firsts.has(joint.name)) firsts.set(joint.name, joint);
  return [...firsts.values()].flatMap(first => {
    const close: CloseUp = { draw: view => drawJointClose(plan, first, view) };
    const ofRule = joints.filter(({ rule }) => rule === first.rule);
    const screws = screwDrawings(plan).filter(({ from, into }) =>
      ofRule.some(joint => joint.from === from && joint.into === into),
    );
    return [close, ...screws];
  });
}

/** How much of the boards is seen round a joint, in sizes of the place where they touch. */
const ROUND = 1;
const LEAST: Mm = 60;

/** Both boards of a joint round the place where they touch, the one under the heads drawn off. */
function drawJointClose(plan: Plan, joint: Joint, view: CornerView): Drawing {
  const near = grown(joint.patch);
  const parts = plan.model.parts.filter(({ id }) => id === joint.from || id === joint.into);
  const cut = parts.map(part => cutTo(part, near));
  const from = cut.filter(({ id }) => id === joint.from);
  const into = cut.filter(({ id }) => id === joint.into);
  const pulled = pullApart({
    bright: from,
    standing: into,
    held: [],
    contacts: plan.model.contacts,
  });
  const names = partNames(plan);
  const eye = CORNER_SIGHTS[view].eye;
  const moved = pulled[0] === undefined ? undefined : movedBy(pulled[0]);
  const drawing = drawCorner({
    view,
    display: plan.display,
    names,
    ways: waysBack(pulled, eye),
    placed: [
      ...into.map(part => ({ part, bright: false })),
      ...from.map(part => ({ part, bright: true, ...(moved === undefined ? {} : { moved }) })),
    ],
  });
  const title = `${joint.name}, close up`;
  return { ...drawing, title, inWords: `${title}. ${drawing.inWords}` };
}

function grown({ min, max }: Box): Box {
  const by = Math.max(
    LEAST,
    ROUND * Math.min(...AXES.map(axis => max[axis] - min[axis]).filter(it => it > 0)),
  );
  return {
    min: { x: min.x - by, y: min.y - by, z: min.z - by },
    max: { x: max.x + by, y: max.y + by, z: max.z + by },
  };
}

/** A part as far as it reaches into a box. */
function cutTo(part: Part, near: Box): Part {
  const solid = part.solid.flatMap(box => intersect(box, near) ?? []);
  return { ...part, solid, box: intersect(part.box, near) ?? part.box };
}
