import { existsSync, mkdirSync } from 'node:fs';
import type { Workbook } from '../workbook/workbook.js';
import { isWorkbookId } from '../workbook/workbook-id.js';
import { type BuildFiles, buildFiles } from './build-files.js';
import { diskTrouble } from './disk-trouble.js';
import type { SaveOutcome } from './keep.js';
import { buildFolders, listBuilds } from './list-builds.js';
import { type OpenBuild, openBuild, releaseBuild, saveBuild } from './open-build.js';
import { lookAt } from './read-build.js';
import { relabel } from './relabel.js';
import type { Ahead, Label, Opened, Shelf } from './shelf.js';
import { sweepTemps } from './temp-name.js';

type Session = {
  /** The builder's own, and the example that everybody may play with. */
  readonly folders: { readonly own: string; readonly example: string };
  readonly open: Map<string, OpenBuild>;
  readonly now: () => number;
};

/**
 * The builds below a data folder: `builds/` and, apart from them, `example/`. Clears away what killed
 * programs left behind; makes no folder before the first save. `now` is the wall clock in epoch ms.
 */
export function openShelf(folder: string, now: () => number): Shelf {
  const folders = buildFolders(folder);
  const session: Session = { folders, open: new Map(), now };
  for (const each of [folder, folders.own, folders.example]) sweepTemps(each, now());
  return {
    list: () => listBuilds(folders),
    load: id => load(session, id, 'if free'),
    look: id => look(session, id),
    takeOver: id => load(session, id, 'in any case'),
    create: (workbook, ahead) => create(session, workbook, ahead),
    save: (workbook, ahead) => save(session, workbook, ahead),
    relabel: (id, label) => relabelBuild(session, id, label),
    close: id => close(session, id),
    release: () => release(session),
  };
}

function load(session: Session, id: string, claim: 'if free' | 'in any case'): Opened {
  const files = filesOf(session, id);
  if (files === undefined) return { ok: false, why: 'missing', words: missingWords(id) };
  // Opened again in this session: its own lock must not stand in the way.
  close(session, id);
  const { build, opened } = openBuild({ files, nowMs: session.now(), claim });
  if (build !== undefined) session.open.set(id, build);
  return opened;
}

function look(session: Session, id: string): Opened {
  const files = filesOf(session, id);
  if (files === undefined) return { ok: false, why: 'missing', words: missingWords(id) };
  const found = lookAt(files);
  if (!found.ok) return { ok: false, why: 'damaged', words: found.words };
  return { ok: true, workbook: found.workbook, notice: undefined };
}

function missingWords(id: string): string {
  return `There is no build called ${JSON.stringify(id)}.`;
}

/** None where there are no files by that id; an id from a command line is no path. */
function filesOf({ folders }: Session, id: string): BuildFiles | undefined {
  if (!isWorkbookId(id)) return undefined;
  return [folders.own, folders.example].map(folder => buildFiles(folder, id)).find(isThere);
}

function isThere({ main, previous }: BuildFiles): boolean {
  return existsSync(main) || existsSync(previous);
}

function create(session: Session, workbook: Workbook, ahead: Ahead): SaveOutcome {
  const { id, example } = workbook;
  if (!isWorkbookId(id)) throw new Error(`not an id for a build: ${id}`);
  if (filesOf(session, id) !== undefined) return taken(id);
  const folder = example ? session.folders.example : session.folders.own;
  const files = buildFiles(folder, id);
  try {
    mkdirSync(folder, { recursive: true });
  } catch (error) {
    return { ok: false, ...diskTrouble(error, files.main) };
  }
  const build: OpenBuild = { files, rev: 0, lock: undefined };
  const outcome = saveBuild(build, { workbook, ahead, nowMs: session.now() });
  if (outcome.ok) session.open.set(id, build);
  else releaseBuild(build);
  return outcome;
}

function taken(id: string): SaveOutcome {
  const words = `There is a build called ${id} already. Give this one another name.`;
  return { ok: false, problem: 'other', words };
}

function save({ open, now }: Session, workbook: Workbook, ahead: Ahead): SaveOutcome {
  const build = open.get(workbook.id);
  if (build === undefined) throw new Error(`saved before it was opened: ${workbook.id}`);
  return saveBuild(build, { workbook, ahead, nowMs: now() });
}

function relabelBuild(session: Session, id: string, label: Label): SaveOutcome {
  const files = filesOf(session, id);
  if (files === undefined) return { ok: false, problem: 'other', words: missingWords(id) };
  if (session.open.has(id)) {
    const words =
      'It is open here, since its last steps are not on disk yet. Make room for them first.';
    return { ok: false, problem: 'other', words };
  }
  return relabel(files, label, session.now());
}

function close({ open }: Session, id: string): void {
  const build = open.get(id);
  if (build !== undefined) releaseBuild(build);
  open.delete(id);
}

function release({ open }: Session): void {
  for (const build of open.values()) releaseBuild(build);
  open.clear();
}
