import { SIXTEENTHS } from '../../src/measure/displays.js';
import { makePlan } from '../../src/plan/make-plan.js';
import { onDay } from '../../src/plan/on-day.js';
import { usualAnswers } from '../../src/recipe/questions.js';
import type { Answers } from '../../src/recipe/values.js';
import { openBuild, recorded } from '../../src/ui/build.js';
import type { Ask, Build, Context, Screen } from '../../src/ui/screen.js';
import type { Event } from '../../src/workbook/events.js';
import { contextWith, keyOf, TUESDAY_MS } from './open-build.js';
import { project, projectText } from './projects.js';

const PLANNER = { plan: makePlan, onDay };
const BENCH = project('planter-bench');
export const ANSWERS = usualAnswers(BENCH);

/** The bench with planter ends, begun, with its plan made as the program makes it. */
export function benchBuild(events: readonly Event[] = [], answers: Answers = ANSWERS): Build {
  const workbook = {
    id: 'bench',
    name: 'Roof bench',
    recipe: 'planter-bench',
    recipeText: projectText('planter-bench'),
    display: SIXTEENTHS,
    answers,
    createdAtMs: TUESDAY_MS,
    events: [{ kind: 'build-started', atMs: TUESDAY_MS } as const, ...events],
    example: false,
  };
  const opened = openBuild({ ok: true, workbook, recipe: BENCH }, PLANNER);
  if (!opened.ok) throw new Error(opened.problem);
  return opened.build;
}

/** A screen on a build that is planned anew as the program does it. */
export function usedOn<State>(screen: Screen<State>, build: Build, rest: Partial<Context> = {}) {
  let at = contextWith(build, rest);
  let state = screen.open(at);
  const asks: Ask[] = [];
  const used = {
    /** Keys by name, apart by blanks; a word in quotes is typed sign by sign. */
    press(keys: string) {
      for (const word of keys.match(/"[^"]*"|\S+/g) ?? []) {
        const names = word.startsWith('"') ? Array.from(word.slice(1, -1), typedKey) : [word];
        for (const name of names) one(name);
      }
      return used;
    },
    get state() {
      return state;
    },
    get at() {
      return at;
    },
    get build(): Build {
      if (at.build === undefined) throw new Error('no build is open');
      return at.build;
    },
    asks,
  };
  function one(name: string) {
    const outcome = screen.press(state, keyOf(name), at);
    state = outcome.state;
    for (const ask of outcome.asks) {
      asks.push(ask);
      if (ask.kind !== 'record' || at.build === undefined) continue;
      at = { ...at, build: recorded(at.build, ask.events, PLANNER) };
    }
    at = { ...at, nowMs: at.nowMs + 400 };
  }
  return used;
}

function typedKey(sign: string): string {
  return sign === ' ' ? 'space' : sign;
}
