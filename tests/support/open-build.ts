import { readFileSync } from 'node:fs';
import { SIXTEENTHS } from '../../src/measure/displays.js';
import { makePlan } from '../../src/plan/make-plan.js';
import type { Plan } from '../../src/plan/plan.js';
import { usualAnswers } from '../../src/recipe/questions.js';
import { readRecipe } from '../../src/recipe/read.js';
import type { Recipe } from '../../src/recipe/recipe.js';
import type { Ask, Build, Context, Key, Screen, Size } from '../../src/ui/screen.js';
import type { Event } from '../../src/workbook/events.js';
import { progressOf } from '../../src/workbook/progress.js';
import { smallPlan } from './small-plan.js';

/** Tuesday, November 3, 2026, 14:00 on the clock of wherever the test runs. */
export const TUESDAY_MS = new Date(2026, 10, 3, 14, 0).getTime();
export const MINUTE_MS = 60_000;

const NO_RECIPE: Recipe = {
  format: 1,
  id: 'small-bench',
  title: 'Small bench',
  about: '',
  groups: [],
  boards: [],
  assemblies: [],
  whole: {
    id: '',
    takes: [],
    sizes: [],
    parts: [],
    layouts: [],
    stacks: [],
    places: [],
    notches: [],
    joints: [],
    at: { line: 1, column: 1 },
  },
  fit: [],
  holds: [],
  steps: [],
};

/** A build of the small plan, or of another, after these events. */
export function buildAfter(events: readonly Event[], plan: Plan = smallPlan()): Build {
  return {
    workbook: {
      id: 'bench',
      name: 'Garden bench',
      recipe: plan.recipe,
      recipeText: '',
      display: plan.display,
      answers: {},
      createdAtMs: TUESDAY_MS,
      events,
      example: false,
    },
    recipe: NO_RECIPE,
    plan,
    progress: progressOf(events),
  };
}

/** The bench of the project file at its usual answers. */
export function benchPlan(): Plan {
  const text = readFileSync(
    new URL('../../projects/planter-bench/recipe.yaml', import.meta.url),
    'utf8',
  );
  const read = readRecipe(text);
  if (!read.ok) throw new Error('the bench has problems');
  const made = makePlan(read.recipe, usualAnswers(read.recipe), SIXTEENTHS);
  if (!made.ok) throw new Error('the bench cannot stand there');
  return made.plan;
}

/** Every caution of a plan was heard, and the helper was signed off for every tool. */
export function allTold({ cautions, tools }: Plan, atMs: number = TUESDAY_MS): readonly Event[] {
  return [
    ...cautions.map(({ id }): Event => ({ kind: 'briefed', atMs, caution: id })),
    { kind: 'tools-briefed', atMs, tools: tools.map(({ id }) => id) },
  ];
}

/** The room that a screen has in a window of that many columns: 80x24 leaves 18 rows, 60x20 14. */
export const ROOM: Readonly<Record<number, Size>> = {
  60: { columns: 60, rows: 14 },
  80: { columns: 80, rows: 18 },
  120: { columns: 120, rows: 34 },
};

export function contextWith(build: Build | undefined, rest: Partial<Context> = {}): Context {
  return {
    size: { columns: 80, rows: 18 },
    nowMs: TUESDAY_MS,
    display: SIXTEENTHS,
    ascii: false,
    recipes: () => [],
    shelf: [],
    build,
    looking: false,
    interview: undefined,
    stepSeen: undefined,
    under: undefined,
    ...rest,
  };
}

/** Keys by name, `space`, `page-down`; anything of one character is that character. */
export function keyOf(name: string): Key {
  if (name.length === 1) return { name: 'character', text: name };
  if (name.startsWith('typed:')) return { name: 'typed', text: name.slice('typed:'.length) };
  return { name } as Key;
}

/** A screen in use: keys go in, what is recorded is recorded, what else is asked for is kept. */
export function usedWith<State>(screen: Screen<State>, at: Context) {
  let state = screen.open(at);
  let context = at;
  const asks: Ask[] = [];
  return {
    press(name: string) {
      const outcome = screen.press(state, keyOf(name), context);
      state = outcome.state;
      for (const ask of outcome.asks) {
        asks.push(ask);
        if (ask.kind !== 'record' || context.build === undefined) continue;
        const events = [...context.build.workbook.events, ...ask.events];
        context = { ...context, build: buildAfter(events, context.build.plan) };
      }
      return this;
    },
    /** What another screen recorded. */
    record(events: readonly Event[]) {
      const { build } = context;
      if (build === undefined) throw new Error('no build is open');
      const all = [...build.workbook.events, ...events];
      context = { ...context, build: buildAfter(all, build.plan) };
      return this;
    },
    wait(ms: number) {
      context = { ...context, nowMs: context.nowMs + ms };
      return this;
    },
    resized(size: Size) {
      context = { ...context, size };
      return this;
    },
    get state() {
      return state;
    },
    get at() {
      return context;
    },
    asks,
  };
}
