import { Text } from 'ink';
import { render } from 'ink-testing-library';
import { SIXTEENTHS } from '../../src/measure/displays.js';
import { makePlan } from '../../src/plan/make-plan.js';
import { onDay } from '../../src/plan/on-day.js';
import { usualAnswers } from '../../src/recipe/questions.js';
import { App } from '../../src/ui/app.js';
import { opener, type Screens } from '../../src/ui/page.js';
import type { Ask, Key, Screen, ScreenName, ShelfLine, Size } from '../../src/ui/screen.js';
import { homeScreen } from '../../src/ui/screens/home/screen.js';
import { interviewScreen } from '../../src/ui/screens/interview/screen.js';
import { keysScreen } from '../../src/ui/screens/keys/screen.js';
import type { Loaded, SaveResult, Services } from '../../src/ui/services.js';
import { Session, type Start } from '../../src/ui/session.js';
import type { Event } from '../../src/workbook/events.js';
import { startWorkbook } from '../../src/workbook/start-workbook.js';
import type { Workbook } from '../../src/workbook/workbook.js';
import { DUCKBOARD, duckboard } from './small-recipe.js';

/** Tuesday, November 3, 2026, 14:00 on the clock of wherever the test runs. */
export const START_MS = new Date(2026, 10, 3, 14, 0).getTime();

/** A clock, a disk and a terminal of which a test decides everything. */
export class Bench {
  nowMs = START_MS;
  steadyMs = 0;
  lines: readonly ShelfLine[] = [];
  saving: SaveResult = { ok: true };
  held = false;
  typedAhead = false;
  readonly saved: Workbook[] = [];
  readonly created: Workbook[] = [];
  readonly titles: string[] = [];
  readonly closed: string[] = [];
  bells = 0;
  quits = 0;

  wait(ms: number): void {
    this.nowMs += ms;
    this.steadyMs += ms;
  }

  readonly services: Services = {
    now: () => this.nowMs,
    steadyMs: () => this.steadyMs,
    list: () => this.lines,
    plan: makePlan,
    onDay,
    load: id =>
      this.held ? { ok: false, problem: 'It is open elsewhere.', held: true } : this.#loaded(id),
    look: id => this.#loaded(id),
    takeOver: id => this.#loaded(id),
    close: id => this.closed.push(id),
    alike: id => {
      const { name, answers } = workbookNamed(id);
      return { ok: true, interview: { recipe: duckboard(), answers, from: name } };
    },
    relabel: (id, { name, putAway }) => {
      this.lines = this.lines.map(line => (line.id === id ? { ...line, name, putAway } : line));
      return this.saving;
    },
    carry: id => ({ ok: true, file: `/garage/${id}.notchbook.json` }),
    example: () => this.#loaded('example'),
    create: ({ name, answers }) => {
      const workbook = workbookNamed(name, { answers });
      this.created.push(workbook);
      return { ok: true, workbook, recipe: duckboard() };
    },
    save: ({ workbook }) => {
      if (this.saving.ok) this.saved.push(workbook);
      return this.saving;
    },
    isTypedAhead: () => this.typedAhead,
    bell: () => {
      this.bells += 1;
    },
    title: text => this.titles.push(text),
    suspend: () => undefined,
    quit: () => {
      this.quits += 1;
    },
  };

  #loaded(id: string): Loaded {
    return { ok: true, workbook: workbookNamed(id), recipe: duckboard() };
  }
}

export function workbookNamed(name: string, about: Partial<Workbook> = {}): Workbook {
  const recipe = duckboard();
  const workbook = startWorkbook({
    id: name,
    name,
    recipe: recipe.id,
    recipeText: DUCKBOARD,
    display: SIXTEENTHS,
    answers: usualAnswers(recipe),
    example: false,
    nowMs: START_MS,
  });
  return { ...workbook, ...about };
}

/** A screen that shows which key came last and asks for what the test says. */
function bare(name: ScreenName, askFor: (key: Key) => readonly Ask[]): Screen<string> {
  return {
    name,
    title: () => `the ${name} screen`,
    open: () => '-',
    press: (_, key) => ({ state: key.name, asks: askFor(key) }),
    view: ({ state }) => <Text>{`last key ${state}`}</Text>,
    hints: () => [{ key: 'x', does: `something on ${name}` }],
  };
}

export type ProgramOptions = {
  readonly bench?: Bench;
  readonly size?: Size;
  readonly ascii?: boolean;
  readonly asks?: readonly Ask[];
  /** What the screens of a build ask for at a key. */
  readonly askFor?: (key: Key, bench: Bench) => readonly Ask[];
  readonly confirms?: boolean;
  readonly recipes?: Start['recipes'];
  /** Real ones in place of the bare ones. */
  readonly screens?: Partial<Screens>;
};

/** The program on a bench of the test's own: home, interview and keys are real. */
export function programOn(options: ProgramOptions = {}) {
  const { bench = new Bench(), size = { columns: 80, rows: 24 }, ascii = false } = options;
  const askFor = (key: Key) => options.askFor?.(key, bench) ?? leaving(key);
  const made = (name: ScreenName) =>
    opener({ ...bare(name, askFor), confirms: () => options.confirms ?? false });
  const screens: Screens = {
    home: opener(homeScreen),
    interview: opener(interviewScreen),
    keys: opener(keysScreen),
    plan: made('plan'),
    step: made('step'),
    timers: made('timers'),
    pause: made('pause'),
    resume: made('resume'),
    mistake: made('mistake'),
    measure: made('measure'),
    day: made('day'),
    ...options.screens,
  };
  const session = new Session({
    services: bench.services,
    screens,
    recipes: options.recipes ?? (() => [duckboard()]),
    display: SIXTEENTHS,
    look: { ascii, styled: true },
    size,
    asks: options.asks ?? [],
  });
  return { bench, session };
}

function leaving({ name }: Key): readonly Ask[] {
  return name === 'escape' ? [{ kind: 'leave' }] : [];
}

export function stepDone(atMs: number, step = 'cut-runners/2x4@914.40'): Event {
  return { kind: 'step-done', atMs, step };
}

/** Lets effects run and keys be handled. */
export function aMoment(ms = 20): Promise<void> {
  return new Promise(resolve => setTimeout(resolve, ms));
}

/** The program in the testing library's terminal, which is 100 columns wide whatever is said. */
export async function shownOn(options: ProgramOptions = {}) {
  const { bench, session } = programOn(options);
  const app = render(<App session={session} />);
  await aMoment();
  const lines = () => (app.lastFrame() ?? '').split('\n').map(line => line.trimEnd());
  return {
    bench,
    session,
    lines,
    text: () => lines().join('\n'),
    /** One read after the other. */
    async press(...reads: readonly string[]) {
      for (const read of reads) {
        app.stdin.write(read);
        await aMoment();
      }
    },
    /** Waits for text, at most two seconds. */
    async until(wanted: string) {
      for (let tries = 0; tries < 100 && !lines().join('\n').includes(wanted); tries += 1) {
        await aMoment();
      }
      return lines().join('\n');
    },
    close: () => app.unmount(),
  };
}
