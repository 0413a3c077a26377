import { progressOf } from '../workbook/progress.js';
import { followed, openBuild } from './build.js';
import type { Program } from './program.js';
import type { Key } from './screen.js';
import type { Loaded, Services } from './services.js';

/** The key that stops looking and works here instead. No screen has another use for it. */
export const WORK_HERE = '!';

/** A build that is open in another window, looked at: what happens there is seen here. */
export function isLooking({ saving }: Program): boolean {
  return saving.kind === 'looking';
}

/** The build as the other window has left it on disk by now; planned anew only where something was measured there. */
export function lookedAgain(program: Program, services: Services): Program {
  const { build } = program;
  if (build === undefined || !isLooking(program)) return program;
  const found = services.look(build.workbook.id);
  if (!found.ok || found.workbook.events.length === build.workbook.events.length) return program;
  const { workbook } = found;
  if (found.recipe === build.recipe) {
    const progress = progressOf(workbook.events);
    return { ...program, build: followed(build, { workbook, progress }, services) };
  }
  const opened = openBuild(found, services);
  return opened.ok ? { ...program, build: opened.build } : program;
}

/** Is this the key that asks to work here? */
export function asksToWorkHere(program: Program, key: Key): boolean {
  return isLooking(program) && key.name === 'character' && key.text === WORK_HERE;
}

/**
 * Works here from now on where the other window has closed the build; else asks, and takes it over when
 * asked once more: the other window can't note anything from then on.
 */
export function workHere(program: Program, services: Services): Program {
  const { build } = program;
  if (build === undefined) return program;
  const { id } = build.workbook;
  const loaded = program.held === id ? services.takeOver(id) : services.load(id);
  if (!loaded.ok && loaded.held === true) {
    const notice = `Work here? The other window can note nothing more then. Press ${WORK_HERE} once more.`;
    return { ...program, held: id, notice };
  }
  return goneOn(program, loaded, services);
}

function goneOn(program: Program, loaded: Loaded, services: Services): Program {
  const opened = openBuild(loaded, services);
  if (!opened.ok) return { ...program, notice: opened.problem };
  const saving = { kind: 'saved', atMs: program.nowMs } as const;
  const notice = opened.notice ?? 'You work here now.';
  return { ...program, build: opened.build, saving, held: undefined, notice };
}

/** Why something was not noted. */
export const NOT_NOTED = `Not noted: this build is open in another window. Press ${WORK_HERE} to work here.`;
