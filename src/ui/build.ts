import { problemWords } from '../recipe/problem-words.js';
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
  const made = plan(recipe, workbook.answers, workbook.display);
  if (!made.ok) {
    const words = made.problems.map(problem => problemWords(problem).problem).join(' ');
    return { ok: false, problem: `"${workbook.name}" can't be planned. ${words}` };
  }
  const progress = progressOf(workbook.events);
  return {
    ok: true,
    build: { workbook, recipe, plan: made.plan, progress },
    notice: loaded.notice,
  };
}

/** The build after these events. */
export function recorded(build: Build, events: readonly Event[]): Build {
  const workbook = events.reduce(record, build.workbook);
  return { ...build, workbook, progress: progressOf(workbook.events) };
}
