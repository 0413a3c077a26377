import { join } from 'node:path';
import { buildFiles } from '../../src/files/build-files.js';
import { findWorkbook } from '../../src/files/load-workbook.js';
import { openShelf } from '../../src/files/open-shelf.js';
import { SIXTEENTHS } from '../../src/measure/displays.js';
import type { Step } from '../../src/plan/plan.js';
import { usualAnswers } from '../../src/recipe/questions.js';
import type { Event } from '../../src/workbook/events.js';
import { progressOf } from '../../src/workbook/progress.js';
import { startWorkbook } from '../../src/workbook/start-workbook.js';
import type { Progress } from '../../src/workbook/workbook.js';
import { allTold } from './open-build.js';
import { planOf, project, projectText } from './projects.js';

const RECIPE = 'planter-bench';
const ID = 'porch';

/** The bench with its usual answers, saved in a folder of the test. */
export type BuildOnDisk = {
  readonly steps: readonly Step[];
  readonly folder: string;
  /** Where it stands by its file alone; an error where the file can't be read. */
  readonly saved: () => Progress;
  readonly events: () => readonly Event[];
};

/** Saves a bench called "Porch" of which every step before `before` is done and all cautions heard. */
export function benchOnDisk(home: string, before: (step: Step) => boolean): BuildOnDisk {
  const recipe = project(RECIPE);
  const plan = planOf(recipe);
  const { steps } = plan;
  const nowMs = Date.now();
  const workbook = startWorkbook({
    id: ID,
    name: 'Porch',
    recipe: RECIPE,
    recipeText: projectText(RECIPE),
    display: SIXTEENTHS,
    answers: usualAnswers(recipe),
    example: false,
    nowMs,
  });
  const first = steps.findIndex(before);
  const done = steps
    .slice(0, first)
    .map(({ id }): Event => ({ kind: 'step-done', atMs: nowMs, step: id }));
  const told = (['glue', 'seal'] as const).map(
    (work): Event => ({ kind: 'day-told', atMs: nowMs, work }),
  );
  const events =
    first === 0 ? workbook.events : [...workbook.events, ...allTold(plan, nowMs), ...told, ...done];
  const shelf = openShelf(home, Date.now);
  const next = steps[first]?.title ?? '';
  const outcome = shelf.create({ ...workbook, events }, { stepsInAll: steps.length, next });
  shelf.release();
  if (!outcome.ok) throw new Error(outcome.words);
  const files = buildFiles(join(home, 'builds'), ID);
  const read = () => {
    const found = findWorkbook(files.main);
    if (found.state !== 'fine') throw new Error(`${files.main} is ${found.state}`);
    return found.workbook.events;
  };
  return { steps, folder: files.folder, saved: () => progressOf(read()), events: read };
}
