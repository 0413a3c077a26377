import type { Event } from '../workbook/events.js';
import { RAGS_LEFT, ragsNow } from '../workbook/rags.js';
import { openBuild, recorded } from './build.js';
import { setBackMeanwhile } from './clock-set.js';
import { isLooking, NOT_NOTED } from './looking.js';
import type { Screens } from './page.js';
import { contextOf, type Program } from './program.js';
import type { Ask, ScreenName } from './screen.js';
import type { Loaded, Services } from './services.js';

type Means = { readonly services: Services; readonly screens: Screens };

/** Does what a screen asks for: disk first, then what is seen. */
export function perform(program: Program, ask: Ask, means: Means): Program {
  switch (ask.kind) {
    case 'go':
      return ask.to === 'home' ? home(program, means) : goTo(program, ask.to, means);
    case 'leave':
      return leave(program, means);
    case 'begin-interview': {
      const recipe = program.recipes().find(({ id }) => id === ask.recipe);
      if (recipe === undefined)
        return { ...program, notice: `There is no project "${ask.recipe}".` };
      return goTo(
        { ...program, interview: { recipe, answers: ask.answers ?? {} } },
        'interview',
        means,
      );
    }
    case 'start-build':
      return enter(program, means.services.create(ask), { first: 'plan', means });
    case 'open-build':
      return open(program, ask.id, means);
    case 'build-alike':
      return alike(program, ask.id, means);
    case 'relabel':
      return relabeled(program, ask, means.services);
    case 'carry':
      return carried(program, ask.id, means.services);
    case 'open-example':
      return enter(program, means.services.example(), { first: 'resume', means });
    case 'record': {
      if (program.build === undefined) throw new Error('a screen recorded without a build');
      if (isLooking(program)) return { ...program, notice: NOT_NOTED };
      return noted(program, ask.events, means.services);
    }
    case 'quit':
      return quit(program, means.services);
  }
}

/**
 * Opens a screen afresh on top; one that is in the pile already is gone back to. The plan is looked at from
 * the step, and the step is come back to, also where the build was begun from the plan.
 */
function goTo(program: Program, name: ScreenName, { screens }: Means): Program {
  const before = name === 'plan' ? -1 : program.pages.findIndex(page => page.name === name);
  const pages = before < 0 ? program.pages : program.pages.slice(0, before);
  const page = screens[name](contextOf({ ...program, pages }));
  return { ...program, pages: [...pages, page] };
}

/** The first screen, with the builds as they lie on the shelf now. */
function home(program: Program, means: Means): Program {
  return goTo(putDown(program, means.services), 'home', means);
}

function leave(program: Program, { services }: Means): Program {
  if (program.pages.length < 2) return program;
  const pages = program.pages.slice(0, -1);
  return pages.length > 1 ? { ...program, pages } : putDown({ ...program, pages }, services);
}

/** On the first screen no build is open, so that others may have it; one that is not on disk stays. */
function putDown(program: Program, services: Services): Program {
  const { build, saving } = program;
  if (build === undefined || saving.kind === 'not-saved')
    return { ...program, shelf: services.list() };
  services.close(build.workbook.id);
  const notice = leavesRags(program) ? RAGS_LEFT : program.notice;
  return {
    ...program,
    notice,
    build: undefined,
    saving: { kind: 'nothing-yet' },
    held: undefined,
    shelf: services.list(),
  };
}

/** A build that another window has open can be looked at. */
function open(program: Program, id: string, means: Means): Program {
  const { services } = means;
  const loaded = services.load(id);
  if (loaded.ok || loaded.held !== true) return enter(program, loaded, { first: 'resume', means });
  const looked = enter(program, services.look(id), { first: 'resume', means, looking: true });
  return looked.build?.workbook.id === id ? { ...looked, saving: { kind: 'looking' } } : looked;
}

/** The interview with the answers of an earlier build, to be gone through and changed. */
function alike(program: Program, id: string, means: Means): Program {
  const found = means.services.alike(id);
  if (!found.ok) return { ...program, notice: found.problem };
  return goTo({ ...program, interview: found.interview }, 'interview', means);
}

function relabeled(program: Program, ask: Extract<Ask, { kind: 'relabel' }>, services: Services) {
  const result = services.relabel(ask.id, ask);
  const shelf = services.list();
  if (!result.ok) return { ...program, shelf, notice: `Nothing was changed. ${result.problem}` };
  return { ...program, shelf };
}

function carried(program: Program, id: string, services: Services): Program {
  const result = services.carry(id);
  if (!result.ok) return { ...program, notice: result.problem };
  const notice = `Written to ${result.file}. On the other machine: notchbook import, and this file.`;
  return { ...program, notice };
}

type Entry = {
  readonly first: ScreenName;
  readonly means: Means;
  /** Another window writes it: nothing is noted here. */
  readonly looking?: boolean;
};

function enter(program: Program, loaded: Loaded, { first, means, looking }: Entry): Program {
  const opened = openBuild(loaded, means.services);
  if (!opened.ok) return { ...program, notice: opened.problem };
  const { build, notice } = opened;
  const saving = { kind: 'saved', atMs: lastSaved(program, build.workbook.id) } as const;
  const bottom = program.pages.slice(0, 1);
  const back = looking ? undefined : setBackMeanwhile(build, means.services.now());
  const entered = { ...program, build, saving, notice: notice ?? back?.notice, held: undefined };
  const there = goTo({ ...entered, pages: bottom }, first, means);
  return back === undefined ? there : noted(there, back.events, means.services);
}

function lastSaved({ shelf, nowMs }: Program, id: string): number {
  return shelf.find(line => line.id === id)?.savedAtMs ?? nowMs;
}

function noted(program: Program, events: readonly Event[], services: Services): Program {
  if (program.build === undefined) return program;
  return saved({ ...program, build: recorded(program.build, events, services) }, services);
}

/** Writes the open build; what can't be written stays here and is told until it can. */
export function saved(program: Program, services: Services): Program {
  if (program.build === undefined) return program;
  const result = services.save(program.build);
  return result.ok
    ? { ...program, saving: { kind: 'saved', atMs: program.nowMs } }
    : { ...program, saving: { kind: 'not-saved', problem: result.problem } };
}

/** Whoever only looks in on a build leaves no rags of it: they are seen to where it is worked on. */
function leavesRags(program: Program): boolean {
  const { build } = program;
  return build !== undefined && !isLooking(program) && ragsNow(build) === 'due';
}

function quit(program: Program, services: Services): Program {
  if (program.saving.kind === 'not-saved' && !program.leaving) {
    const notice = 'The last steps are not on disk. Quit once more to leave without them.';
    return { ...program, leaving: true, notice };
  }
  if (leavesRags(program) && !program.leaving) {
    const notice = `${RAGS_LEFT} Quit once more to leave all the same.`;
    return { ...program, leaving: true, notice };
  }
  services.quit();
  return program;
}
