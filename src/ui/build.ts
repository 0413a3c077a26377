import { keptBoards } from '../plan/kept-boards.js';
import type { Plan } from '../plan/plan.js';
import { toldToday } from '../plan/told-day.js';
import { problemWords } from '../recipe/problem-words.js';
import { atBench, isSameBench } from '../workbook/at-bench.js';
import type { Event } from '../workbook/events.js';
import { advance, progressOf } from '../workbook/progress.js';
import { record } from '../workbook/start-workbook.js';
import type { Progress, Workbook } from '../workbook/workbook.js';
import type { Build } from './screen.js';
import type { Loaded, Services } from './services.js';

export type Opened =
  | { readonly ok: true; readonly build: Build; readonly notice: string | undefined }
  | { readonly ok: false; readonly problem: string; readonly held?: boolean };

/** What a plan is made with. Handed in: it is loaded only after the first screen. */
export type Planner = Pick<Services, 'plan' | 'onDay'>;

/** A workbook from the shelf, planned and followed up to its last event; else why not. */
export function openBuild(loaded: Loaded, planner: Planner): Opened {
  if (!loaded.ok) return loaded;
  const { workbook, recipe } = loaded;
  const progress = progressOf(workbook.events);
  const made = planner.plan(
    recipe,
    workbook.answers,
    workbook.display,
    atBench(workbook, progress),
  );
  if (!made.ok) {
    const words = made.problems.map(problem => problemWords(problem).problem).join(' ');
    return { ok: false, problem: `"${workbook.name}" can't be planned. ${words}` };
  }
  return {
    ok: true,
    build: { workbook, recipe, plan: onToldDay(made.plan, progress, planner), progress },
    notice: loaded.notice,
  };
}

type OnDay = { readonly toldAtMs: number | undefined; readonly plan: Plan };

/** What a plan was made from that follows the day that was told, and what was made last. */
const bases = new WeakMap<Plan, Plan>();
const latest = new WeakMap<Plan, OnDay>();

/** The plan with the waits of glue at the warmth that was told in this session. */
export function onToldDay(
  plan: Plan,
  { days, lastAtMs }: Progress,
  { onDay }: Pick<Planner, 'onDay'>,
): Plan {
  const base = bases.get(plan) ?? plan;
  const told = toldToday(days, 'glue', lastAtMs ?? 0);
  const before = latest.get(base);
  if (before !== undefined && before.toldAtMs === told?.atMs) return before.plan;
  const made = onDay(base, told);
  bases.set(made, base);
  latest.set(base, { toldAtMs: told?.atMs, plan: made });
  return made;
}

/** The build after these events: planned anew where something was measured, or was taken back. */
export function recorded(build: Build, events: readonly Event[], planner: Planner): Build {
  const workbook = events.reduce(record, withBoards(build, planner));
  const progress = events.reduce<Progress | undefined>(
    (now, event) => (event.kind === 'taken-back' ? undefined : now && advance(now, event)),
    build.progress,
  );
  return followed(build, { workbook, progress: progress ?? progressOf(workbook.events) }, planner);
}

/** A build that an older program began keeps its boards from its next entry on: from then on no program renumbers them. */
function withBoards({ workbook, recipe, plan, progress }: Build, planner: Planner): Workbook {
  if (workbook.boards !== undefined) return workbook;
  const isAsPlanned = atBench(workbook, progress) === undefined;
  const made = isAsPlanned ? undefined : planner.plan(recipe, workbook.answers, workbook.display);
  if (made?.ok === false) return workbook;
  return { ...workbook, boards: keptBoards((made?.plan ?? plan).purchases) };
}

type Later = Pick<Build, 'workbook' | 'progress'>;

/** The same build with a journal that went on from its own. */
export function followed(build: Build, { workbook, progress }: Later, planner: Planner): Build {
  const same = isSameBench(build.progress, progress);
  const made = same
    ? undefined
    : planner.plan(build.recipe, workbook.answers, workbook.display, atBench(workbook, progress));
  const base = made?.ok === true ? made.plan : build.plan;
  return { ...build, workbook, progress, plan: onToldDay(base, progress, planner) };
}
