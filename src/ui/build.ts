import { problemWords } from '../recipe/problem-words.js';
import { atBench, isSameBench } from '../workbook/at-bench.js';
import type { Event } from '../workbook/events.js';
import { progressOf } from '../workbook/progress.js';
import { record } from '../workbook/start-workbook.js';
import type { Build } from './screen.js';
import type { Loaded, Services } from './services.js';

export type Opened =
  | { readonly ok: true; readonly build: Build; readonly notice: string | undefined }
  | { readonly ok: false; readonly problem: string; readonly held?: boolean };

/** A workbook from the shelf, planned and followed up to its last event; else why not. */
export function openBuild(loaded: Loaded, plan: Services['plan']): Opened {
  if (!loaded.ok) return loaded;
  const { workbook, recipe } = loaded;
  const progress = progressOf(workbook.events);
  const made = plan(recipe, workbook.answers, workbook.display, atBench(progress));
  if (!made.ok) {
    const words = made.problems.map(problem => problemWords(problem).problem).join(' ');
    return { ok: false, problem: `"${workbook.name}" can't be planned. ${words}` };
  }
  return {
    ok: true,
    build: { workbook, recipe, plan: made.plan, progress },
    notice: loaded.notice,
  };
}

/** The build after these events: planned anew where something was measured, or was taken back. */
export function recorded(build: Build, events: readonly Event[], plan: Services['plan']): Build {
  const workbook = events.reduce(record, build.workbook);
  const progress = progressOf(workbook.events);
  if (isSameBench(build.progress, progress)) return { ...build, workbook, progress };
  const made = plan(build.recipe, workbook.answers, workbook.display, atBench(progress));
  return { ...build, workbook, progress, plan: made.ok ? made.plan : build.plan };
}
