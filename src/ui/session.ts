import type { Display } from '../measure/quantities.js';
import type { Recipe } from '../recipe/recipe.js';
import { type Clocks, clockChanged, clockJumpMs } from '../workbook/clock-changed.js';
import { alarmsOf, isBellDue, isRinging } from './alarms.js';
import { perform, saved } from './asks.js';
import { setBackNow } from './clock-set.js';
import { asksToWorkHere, isLooking, lookedAgain, workHere } from './looking.js';
import type { Page, Screens } from './page.js';
import { alarms, contextOf, isTooSmall, type Program } from './program.js';
import type { Ask, Key, ShelfLine, Size } from './screen.js';
import type { Services } from './services.js';
import type { Look } from './theme.js';
import { isBlind, NOT_TAKEN } from './typed-ahead.js';

export type Start = {
  readonly services: Services;
  readonly screens: Screens;
  readonly recipes: () => readonly Recipe[];
  readonly display: Display;
  readonly look: Look;
  readonly size: Size;
  /** What is asked for before the first key: an interview or a build named on the command line. */
  readonly asks: readonly Ask[];
  /** To be told at once, such as a folder that will not last. */
  readonly notice?: string | undefined;
};

/** A second enter within this is a glove that bounced. */
const BOUNCE_MS = 250;
const NEVER = Number.NEGATIVE_INFINITY;

/**
 * The one place where the state of the program is kept. Keys and ticks come in one after the other,
 * each sees what the one before left, and nothing is shown that was to be saved and was not tried.
 */
export class Session {
  readonly #start: Start;
  #program: Program;
  #clocks: Clocks;
  /** The program as it was seen when the keys that come now were typed. */
  #seen: Program;
  readonly #listeners = new Set<() => void>();

  constructor(start: Start) {
    this.#start = start;
    const { services, screens } = start;
    this.#clocks = { wallMs: services.now(), steadyMs: services.steadyMs() };
    const empty = emptyProgram(start);
    const open = { ...empty, pages: [screens.home(contextOf(empty))] };
    this.#program = start.asks.reduce<Program>(
      (program, ask) => perform(program, ask, start),
      open,
    );
    this.#seen = this.#program;
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  readonly snapshot = (): Program => this.#program;

  readonly press = (key: Key): void => {
    if (isTooSmall(this.#program.size)) return;
    const { services } = this.#start;
    const now = this.#atThisMoment({ ...this.#program, notice: undefined });
    const before = rungElsewhere(this.#retried({ ...now, lastKeyMs: now.nowMs }), services);
    if (!services.isTypedAhead()) this.#seen = this.#program;
    const worksHere = asksToWorkHere(before, key);
    this.#show(
      worksHere ? workHere(before, services) : this.#pressed(lookedAgain(before, services), key),
    );
  };

  readonly tick = (): void => {
    const { nowMs: beforeMs, lastKeyMs } = this.#program;
    const { services } = this.#start;
    const program = rungElsewhere(
      lookedAgain(this.#atThisMoment(this.#program), services),
      services,
    );
    const { nowMs } = program;
    if (isBellDue(alarms(program), { beforeMs, nowMs, lastKeyMs })) services.bell();
    this.#show(program);
  };

  /** Does what a screen has put off, if it is still the one that is seen. */
  readonly settle = (put: Page): void => {
    const program = this.#program;
    const page = topPage(program) === put ? put.settle(contextOf(program)) : undefined;
    if (page === undefined) return;
    this.#show({ ...program, pages: [...program.pages.slice(0, -1), page] });
  };

  readonly resize = (size: Size): void => {
    this.#show({ ...this.#program, size, paints: this.#program.paints + 1 });
  };

  /** Paints everything afresh, at this moment: after a stop nobody knows what is on the screen. */
  readonly repaint = (): void => {
    const program = this.#atThisMoment(this.#program);
    this.#show({ ...program, paints: program.paints + 1 });
  };

  /** Says what the window is called. */
  readonly call = (title: string): void => this.#start.services.title(title);

  readonly suspend = (): void => this.#start.services.suspend();

  #show(program: Program): void {
    this.#program = program;
    for (const listener of this.#listeners) listener();
  }

  #retried(program: Program): Program {
    return program.saving.kind === 'not-saved' ? saved(program, this.#start.services) : program;
  }

  #pressed(program: Program, key: Key): Program {
    if (key.name === 'tab' && hasRinging(program)) return this.#hushed(program);
    if (isBlind(key, program, this.#seen)) return { ...program, notice: NOT_TAKEN };
    const page = topPage(program);
    const at = contextOf(program);
    if (key.name === 'enter' && page.confirms(at) && isBounce(program)) return program;
    const { page: after, asks } = page.press(key, at);
    const lastEnterMs = key.name === 'enter' ? program.nowMs : program.lastEnterMs;
    const pressed = { ...program, lastEnterMs, pages: [...program.pages.slice(0, -1), after] };
    const done = asks.reduce<Program>((now, ask) => perform(now, ask, this.#start), pressed);
    return { ...done, leaving: asks.some(({ kind }) => kind === 'quit') };
  }

  /** Says "heard" to every timer that has ended. */
  #hushed(program: Program): Program {
    const { nowMs } = program;
    const ended = alarms(program).filter(alarm => isRinging(alarm, nowMs));
    const own = ended.filter(({ elsewhere }) => elsewhere === undefined);
    const heard = new Set([...program.heard, ...ended.map(({ id }) => id)]);
    const events = own.map(
      ({ id }) => ({ kind: 'timer-silenced', atMs: nowMs, timer: id }) as const,
    );
    if (events.length === 0) return { ...program, heard };
    return perform({ ...program, heard }, { kind: 'record', events }, this.#start);
  }

  /** The program now; says so where the wall clock was set and a wait may be wrong. */
  #atThisMoment(program: Program): Program {
    const { services } = this.#start;
    const clocks = { wallMs: services.now(), steadyMs: services.steadyMs() };
    const change = clockChanged(this.#clocks, clocks);
    const jumpMs = clockJumpMs(this.#clocks, clocks);
    this.#clocks = clocks;
    const now = { ...program, nowMs: clocks.wallMs };
    if (change === 'no' || change === 'slept') return now;
    if (change === 'set back' && program.build !== undefined && !isLooking(program)) {
      const back = setBackNow(-jumpMs, clocks.wallMs);
      const moved = perform(now, { kind: 'record', events: back.events }, this.#start);
      return { ...moved, notice: back.notice };
    }
    const notice = `The clock of this computer was ${change}: check glue and sealer against a watch.`;
    return { ...now, notice };
  }
}

/** The screen that is seen. */
export function topPage({ pages }: Program): Page {
  const page = pages.at(-1);
  if (page === undefined) throw new Error('no screen is open');
  return page;
}

function hasRinging(program: Program): boolean {
  return alarms(program).some(alarm => isRinging(alarm, program.nowMs));
}

/** Where a timer of another build rings: its shelf is looked at again, since it may have been heard there. */
function rungElsewhere(program: Program, services: Services): Program {
  const rings = alarms(program).some(
    alarm => alarm.elsewhere !== undefined && isRinging(alarm, program.nowMs),
  );
  return rings ? { ...program, shelf: services.list() } : program;
}

function isBounce({ nowMs, lastEnterMs }: Program): boolean {
  return nowMs - lastEnterMs < BOUNCE_MS;
}

/** What ended in other builds before the program started is told on the shelf, and rings no more. */
function endedBefore(shelf: readonly ShelfLine[], nowMs: number): ReadonlySet<string> {
  const ended = alarmsOf(undefined, shelf, new Set()).filter(alarm => isRinging(alarm, nowMs));
  return new Set(ended.map(({ id }) => id));
}

function emptyProgram({ services, recipes, display, look, size, notice }: Start): Program {
  const shelf = services.list();
  const nowMs = services.now();
  return {
    pages: [],
    size,
    look,
    display,
    recipes,
    shelf,
    build: undefined,
    interview: undefined,
    saving: { kind: 'nothing-yet' },
    notice,
    nowMs,
    lastKeyMs: NEVER,
    lastEnterMs: NEVER,
    heard: endedBefore(shelf, nowMs),
    held: undefined,
    leaving: false,
    paints: 0,
  };
}
