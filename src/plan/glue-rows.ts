import { type AgeBand, helperShare } from '../materials/helper-ages.js';
import { COMMON_PRACTICE, COMPUTED, type Figure } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import type { Minutes } from '../measure/quantities.js';
import type { Model, Part } from '../model/part.js';
import { listWords } from '../text/list.js';
import { count } from '../text/plural.js';
import { clampLines } from './clamp-lines.js';
import { BATCH_SOURCE } from './glue-batch.js';
import { type GlueUp, glueUps } from './glue-ups.js';
import { openTimer } from './open-time.js';
import type { GluePlan, Step, StepTimer } from './plan.js';
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
  /** One after the other, how much of what the step counts is in each; empty where it counts something else. */
  readonly sizes: readonly number[];
  /** The kind of each, by its place in `kinds`. */
  readonly order: readonly number[];
  /** From the first brush stroke of one of them until its clamps have to go on. */
  readonly open: StepTimer;
  /** Of the glue, from the first brush stroke of one of them. */
  readonly openMinutes: Minutes;
  /** Those who brush and close; a helper who needs the lead beside them is not counted. */
  readonly people: 1 | 2;
  /** Clamps for one of them; 0 where brads hold until the glue has set. */
  readonly clampsEach: number;
  /** Screws or brads hold every joint while the glue sets; else clamps alone do. */
  readonly fixed: boolean;
  /** Glue-ups that stand in clamps at once when nobody waits. */
  readonly atOnce: number;
  readonly clamps: Figure;
  /** False when not even one joint can be closed within the open time. */
  readonly fits: boolean;
};

type Given = {
  readonly model: Model;
  readonly glue: Pick<GluePlan, 'openTime' | 'clampTime'>;
};

/** The glue-ups of a step before it is known how long the step takes. */
export type SplitStep = Omit<GlueUpRow, 'atOnce' | 'clamps'>;

/** How every step that closes glued joints is split, in the order of the steps. */
export function splitSteps(
  build: readonly Step[],
  { helper, ...given }: Given & { readonly helper: AgeBand | undefined },
): readonly SplitStep[] {
  return build.flatMap(step => splitStep(step, handsAt(step, helper), given) ?? []);
}

/** The glue-ups of these steps with the clamps that they want at the pace of the steps. */
export function glueUpRows(
  split: readonly SplitStep[],
  build: readonly Step[],
  glue: Given['glue'],
): readonly GlueUpRow[] {
  return split.flatMap(row => {
    const step = build.find(({ id }) => id === row.step);
    return step === undefined ? [] : [atPace(row, step, glue)];
  });
}

/** How one step is split for so many hands, at its pace; nothing where it closes no glued joint. */
export function glueUpRow(step: Step, people: 1 | 2, given: Given): GlueUpRow | undefined {
  const split = splitStep(step, people, given);
  return split && atPace(split, step, given.glue);
}

function splitStep(step: Step, people: 1 | 2, given: Given): SplitStep | undefined {
  const joints = selectJoints(given.model, step.joins).filter(({ glue }) => glue);
  if (joints.length === 0) return undefined;
  const partById = partsById(given.model);
  const ids = new Set(joints.flatMap(({ from, into }) => [from, into]));
  const parts = [...ids].flatMap(id => partById.get(id) ?? []);
  const open = { openMinutes: given.glue.openTime.value };
  return splitOf(step, glueUps({ parts, joints }, open, people), { parts, people, given });
}

const known = new WeakMap<Model, ReadonlyMap<string, Part>>();

function partsById(model: Model): ReadonlyMap<string, Part> {
  const before = known.get(model);
  if (before !== undefined) return before;
  const made = new Map(model.parts.map(part => [part.id, part]));
  known.set(model, made);
  return made;
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

function splitOf(
  step: Step,
  ups: readonly GlueUp[],
  { parts, people, given }: RowParts,
): SplitStep {
  const { glue } = given;
  const names = new Map(parts.map(({ id, name }) => [id, name.toLowerCase()]));
  const clampsEach = Math.max(...ups.map(up => up.clamps + clampLines(up.joints)));
  const kinds = kindsOf(ups, names);
  return {
    step: step.id,
    title: step.title,
    count: figure(
      ups.length,
      'count',
      `as many joints at once as fit the ${glue.openTime.value} min of open time, each panel for itself`,
      BATCH_SOURCE,
    ),
    kinds: kinds.map(({ kind }) => kind),
    sizes: sizesOf(step, ups),
    order: ups.map(up => kinds.findIndex(({ all }) => all.includes(up))),
    openMinutes: glue.openTime.value,
    open: openTimer(step.id, glue.openTime.value, clampsEach > 0 ? 'clamps' : 'brads'),
    people,
    clampsEach,
    fixed: ups.every(({ joints }) => joints.every(it => it.with !== 'glue')),
    fits: ups.every(up => up.fits),
  };
}

/** The quicker one glue-up follows the other, the more of them stand in clamps at once. */
function atPace(split: SplitStep, { minutes }: Step, { clampTime }: Given['glue']): GlueUpRow {
  const { clampsEach, count: ups } = split;
  const pace = Math.max(1, minutes.value / ups.value);
  const atOnce = Math.min(ups.value, Math.ceil(clampTime.value / pace));
  const clamps = figure(
    clampsEach * atOnce,
    'count',
    `${clampsEach} for each glue-up, ${atOnce} of them in clamps at once: one begins about every ${Math.round(pace)} min and stays ${clampTime.value} min`,
    COMMON_PRACTICE,
  );
  return { ...split, atOnce, clamps };
}

/** What the step counts of each glue-up: its joints, or the pieces that it sets. */
function sizesOf({ tally, bright }: Step, ups: readonly GlueUp[]): readonly number[] {
  if (tally === undefined) return [];
  const set = new Set(bright);
  const seen = new Set<string>();
  const sizes = ups.map(({ joints, parts }) => {
    if (tally.of === 'joint') return joints.length;
    const own = parts.filter(id => set.has(id) && !seen.has(id));
    for (const id of own) seen.add(id);
    return own.length;
  });
  return sizes.reduce((sum, size) => sum + size, 0) === tally.count ? sizes : [];
}

type Kind = { readonly kind: GlueUpKind; readonly all: readonly GlueUp[] };

function kindsOf(ups: readonly GlueUp[], names: ReadonlyMap<string, string>): readonly Kind[] {
  const alike = new Map<string, GlueUp[]>();
  for (const up of ups) {
    const key = `${piecesOf(up, names)} ${up.joints.length} ${Math.ceil(up.minutes - 1e-9)}`;
    alike.set(key, [...(alike.get(key) ?? []), up]);
  }
  return [...alike.values()].flatMap(same => {
    const [first] = same;
    if (first === undefined) return [];
    const minutes = Math.max(...same.map(up => up.minutes));
    const kind: GlueUpKind = {
      count: same.length,
      pieces: piecesOf(first, names),
      joints: first.joints.length,
      minutes: figure(minutes, 'min', minutesWords(first, minutes), COMPUTED),
      order: first.order,
    };
    return [{ kind, all: same }];
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
