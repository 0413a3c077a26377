import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { isAnyBegun } from '../workbook/next-step.js';
import { progressOf } from '../workbook/progress.js';
import { ringsAtMs } from '../workbook/timers.js';
import { buildFiles, idOfFile } from './build-files.js';
import { type Found, findWorkbook } from './load-workbook.js';
import type { ShelfEntry } from './shelf.js';

/** The folders of a data folder: the builder's own builds, and apart from them the example. */
export function buildFolders(folder: string): Folders {
  return { own: join(folder, 'builds'), example: join(folder, 'example') };
}

/** All builds below a data folder. */
export function buildsIn(folder: string): readonly ShelfEntry[] {
  return listBuilds(buildFolders(folder));
}

type Folders = { readonly own: string; readonly example: string };

/** All builds, the one saved last at the front; those that can't be opened last. */
export function listBuilds({ own, example }: Folders): readonly ShelfEntry[] {
  const entries = [...entriesIn(own, false), ...entriesIn(example, true)];
  return entries.sort((one, other) => other.savedAtMs - one.savedAtMs);
}

function entriesIn(folder: string, example: boolean): readonly ShelfEntry[] {
  return [...idsIn(folder)].map(id => entryOf(folder, id, example));
}

/** A folder that is not there yet holds no builds. */
function idsIn(folder: string): ReadonlySet<string> {
  try {
    return new Set(readdirSync(folder).flatMap(name => idOfFile(name) ?? []));
  } catch {
    return new Set();
  }
}

/** Where the file is damaged the save before it stands in, as it will when the build is opened. */
function entryOf(folder: string, id: string, example: boolean): ShelfEntry {
  const { main, previous } = buildFiles(folder, id);
  const found = findWorkbook(main);
  if (found.state === 'fine') return summary(found, example);
  const before = findWorkbook(previous);
  const mayStandIn = found.state === 'damaged' || found.state === 'missing';
  if (mayStandIn && before.state === 'fine') return summary(before, example);
  return troubled(id, example, 'why' in found ? found.why : 'it is not there');
}

function summary({ workbook, envelope }: Extract<Found, { state: 'fine' }>, example: boolean) {
  const progress = progressOf(workbook.events);
  const { done, timers } = progress;
  return {
    id: workbook.id,
    name: workbook.name,
    recipe: workbook.recipe,
    example,
    putAway: workbook.putAway === true,
    begun: isAnyBegun(progress),
    stepsDone: Math.min(done.size, envelope.stepsInAll),
    stepsInAll: envelope.stepsInAll,
    ...(envelope.next ? { next: envelope.next } : {}),
    savedAtMs: envelope.savedAtMs,
    timers: timers
      .filter(timer => !timer.silenced)
      .map(timer => ({ name: timer.name, endsAtMs: ringsAtMs(timer), then: timer.then })),
  };
}

function troubled(id: string, example: boolean, trouble: string): ShelfEntry {
  return {
    id,
    name: id,
    recipe: '',
    example,
    putAway: false,
    begun: false,
    stepsDone: 0,
    stepsInAll: 0,
    savedAtMs: 0,
    timers: [],
    trouble,
  };
}
