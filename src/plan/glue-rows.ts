import { type AgeBand, helperShare } from '../materials/helper-ages.js';
import { COMMON_PRACTICE, COMPUTED, type Figure } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import type { Minutes } from '../measure/quantities.js';
import type { Model, Part } from '../model/part.js';
import type { StepRule } from '../recipe/recipe.js';
import { listWords } from '../text/list.js';
import { count } from '../text/plural.js';
import { clampLines } from './clamp-lines.js';
import { BATCH_SOURCE } from './glue-batch.js';
import { type GlueUp, glueUps } from './glue-ups.js';
import type { GluePlan, Step } from './plan.js';
import { selectJoints } from './select.js';

/** Glue-ups of one step that are alike. */
export type GlueUpKind = {
  readonly count: number;
  /** `2 panel rails and 2 posts`. */
  readonly pieces: string;
  readonly joints: number;
  readonly minutes: Figure;
  /** What to do in one of them, one line after the other: laid out first, squared and wiped last. */
  readonly order: readonly string[];
};

/** How a step that closes glued joints is split, so that none skins over before it is closed. */
export type GlueUpRow = {
  readonly step: string;
  readonly title: string;
  readonly count: Figure;
  readonly kinds: readonly GlueUpKind[];
  /** Those who brush and close; a helper who needs the lead beside them is not counted. */
  readonly people: 1 | 2;
  /** Clamps for one of them; 0 where brads hold until the glue has set. */
  readonly clampsEach: number;
  /** Glue-ups that stand in clamps at once when nobody waits. */
  readonly atOnce: number;
  readonly clamps: Figure;
  /** False when not even one joint can be closed within the open time. */
  readonly fits: boolean;
};

type Given = {
  readonly model: Model;
  readonly glue: GluePlan;
  /** Age of the helper; none where the lead is alone. */
  readonly helper: AgeBand | undefined;
  readonly build: readonly Step[];
};

/** The glue-ups of every step that closes glued joints, in the order of the steps. */
export function glueUpRows(rules: readonly StepRule[], given: Given): readonly GlueUpRow[] {
  const partById = new Map(given.model.parts.map(part => [part.id, part]));
  return rules.flatMap(rule => {
    const step = given.build.find(({ id }) => id === rule.id);
    if (step === undefined || rule.joins.length === 0) return [];
    const joints = selectJoints(given.model, rule.joins);
    const open = { openMinutes: given.glue.openTime.value };
    const glued = joints.filter(({ glue }) => glue);
    if (glued.length === 0) return [];
    const ids = new Set(glued.flatMap(({ from, into }) => [from, into]));
    const parts = [...ids].flatMap(id => partById.get(id) ?? []);
    const people = handsAt(step, given.helper);
    return [rowOf(step, glueUps({ parts, joints: glued }, open, people), { parts, people, given })];
  });
}

/** Tools of the glue-up itself; screws and brads come after it. */
const AT_GLUE = ['glue-brush', 'clamps'];

/** Two, where a helper of this age brushes or clamps alone; whoever wants the lead beside them makes it no faster. */
function handsAt({ care }: Step, helper: AgeBand | undefined): 1 | 2 {
  if (helper === undefined) return 1;
  return helperShare({ tools: AT_GLUE, care }, helper) === 'all' ? 2 : 1;
}

type RowParts = {
  readonly parts: readonly Part[];
  readonly people: 1 | 2;
  readonly given: Given;
};

function rowOf(step: Step, ups: readonly GlueUp[], { parts, people, given }: RowParts): GlueUpRow {
  const { glue } = given;
  const names = new Map(parts.map(({ id, name }) => [id, name.toLowerCase()]));
  const clampsEach = Math.max(...ups.map(up => up.clamps + clampLines(up.joints)));
  const pace = Math.max(1, step.minutes.value / ups.length);
  const atOnce = Math.min(ups.length, Math.ceil(glue.clampTime.value / pace));
  return {
    step: step.id,
    title: step.title,
    count: figure(
      ups.length,
      'count',
      `as many joints at once as fit the ${glue.openTime.value} min of open time, each panel for itself`,
      BATCH_SOURCE,
    ),
    kinds: kindsOf(ups, names),
    people,
    clampsEach,
    atOnce,
    clamps: figure(
      clampsEach * atOnce,
      'count',
      `${clampsEach} for each glue-up, ${atOnce} of them in clamps at once: one begins about every ${Math.round(pace)} min and stays ${glue.clampTime.value} min`,
      COMMON_PRACTICE,
    ),
    fits: ups.every(up => up.fits),
  };
}

function kindsOf(
  ups: readonly GlueUp[],
  names: ReadonlyMap<string, string>,
): readonly GlueUpKind[] {
  const alike = new Map<string, GlueUp[]>();
  for (const up of ups) {
    const key = `${piecesOf(up, names)} ${up.joints.length} ${Math.ceil(up.minutes - 1e-9)}`;
    alike.set(key, [...(alike.get(key) ?? []), up]);
  }
  return [...alike.values()].flatMap(same => {
    const [first] = same;
    if (first === undefined) return [];
    const minutes = Math.max(...same.map(up => up.minutes));
    return [
      {
        count: same.length,
        pieces: piecesOf(first, names),
        joints: first.joints.length,
        minutes: figure(minutes, 'min', minutesWords(first, minutes), COMPUTED),
        order: first.order,
      },
    ];
  });
}

function minutesWords({ joints }: GlueUp, minutes: Minutes): string {
  return `${count(joints.length, 'joint')} brushed and closed by their glued area, then clamped: ${minutes.toFixed(1)} min`;
}

function piecesOf({ parts }: GlueUp, names: ReadonlyMap<string, string>): string {
  const counts = new Map<string, number>();
  for (const id of parts) {
    const name = names.get(id) ?? id;
    counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  return listWords([...counts].map(([name, times]) => count(times, name)));
}
