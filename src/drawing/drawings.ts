import type { Plan, Step } from '../plan/plan.js';
import { assemblyDrawings } from './apart/assembly-drawings.js';
import { drawBoards } from './boards-drawing.js';
import { draw, VIEWS } from './draw.js';
import {
  type JointDrawing,
  jointDrawings,
  screwDrawings,
  templateDrawings,
} from './joint/joint-drawings.js';
import { sectionDrawings, withCuttingPlanes } from './section/section-drawings.js';
import { drawStepCorner } from './step-drawing.js';
import type { Drawing, View } from './strokes.js';
import { allParts } from './view.js';

/** What a drawing is for. */
export type DrawingGroup =
  | 'views'
  | 'assemblies'
  | 'sections'
  | 'steps'
  | 'joints'
  | 'screws'
  | 'templates'
  | 'boards';

/** A drawing that there is; it is drawn when somebody asks for it. */
export type NamedDrawing = {
  /** Unlike every other of the plan, fit for a file: `front`, `step-12`, `boards-2x4`. */
  readonly name: string;
  readonly group: DrawingGroup;
  /** What of its group it shows: a view, a section of boards, a mark, the id of a step. */
  readonly of: string;
  readonly draw: () => Drawing;
};

/** The drawing of something, drawn; undefined where there is none. */
export function drawingOf(
  drawings: readonly NamedDrawing[],
  group: DrawingGroup,
  of: string,
): Drawing | undefined {
  return drawings.find(one => one.group === group && one.of === of)?.draw();
}

/** Every drawing of a plan, in the order in which somebody builds. */
export function drawings(plan: Plan): readonly NamedDrawing[] {
  return [
    ...VIEWS.map(view => viewDrawing(view, plan)),
    ...sheets('sections', 'section', sectionDrawings(plan)),
    ...sheets('assemblies', 'apart', assemblyDrawings(plan)),
    ...plan.purchases.map(
      (purchase): NamedDrawing => ({
        name: fileName(`boards ${purchase.section}`),
        group: 'boards',
        of: purchase.section,
        draw: () => drawBoards(purchase, plan.display),
      }),
    ),
    ...sheets('joints', 'joint', jointDrawings(plan)),
    ...sheets('screws', 'screws', screwDrawings(plan)),
    ...sheets('templates', 'template', templateDrawings(plan)),
    ...plan.steps.map((step, at) => stepDrawing(step, at + 1, plan)),
  ];
}

function sheets(
  group: DrawingGroup,
  kind: string,
  drawn: readonly JointDrawing[],
): readonly NamedDrawing[] {
  return drawn.map(({ key, draw: make }) => ({
    name: fileName(`${kind} ${key}`),
    group,
    of: key,
    draw: make,
  }));
}

function viewDrawing(view: View, plan: Plan): NamedDrawing {
  const { model, display } = plan;
  const bright = new Set<string>();
  return {
    name: view,
    group: 'views',
    of: view,
    draw: () => {
      const drawing = draw({ model, display, bright, standing: allParts(model) }, view);
      return view === 'above' ? withCuttingPlanes(drawing, plan) : drawing;
    },
  };
}

function stepDrawing(step: Step, number: number, plan: Plan): NamedDrawing {
  return {
    name: `step-${number}`,
    group: 'steps',
    of: step.id,
    draw: () => ({
      ...drawStepCorner(plan, step, 'corner-right'),
      title: `Step ${number}: ${step.title}`,
    }),
  };
}

/** Lower case letters, figures and dashes: a name that every file system takes. */
function fileName(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
}
