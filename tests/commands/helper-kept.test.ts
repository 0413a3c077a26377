import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { prepareDesk } from '../../src/commands/prepare-desk.js';
import { SIXTEENTHS } from '../../src/measure/displays.js';
import { usualAnswers } from '../../src/recipe/questions.js';
import { openBuild, recorded } from '../../src/ui/build.js';
import type { Build } from '../../src/ui/screen.js';
import type { Event } from '../../src/workbook/events.js';
import { libraryOf } from '../support/library.js';

const HOME = mkdtempSync(join(tmpdir(), 'helper-'));
afterAll(() => rmSync(HOME, { recursive: true }));

let nowMs = Date.UTC(2026, 10, 24, 18);
const HOUR_MS = 3_600_000;

/** The program as it is started anew. */
function desk() {
  return prepareDesk({
    folder: HOME,
    library: libraryOf(),
    display: SIXTEENTHS,
    now: () => nowMs,
    workingFolder: HOME,
  });
}

function begin(name: string): {
  build: Build;
  save: (build: Build, events: readonly Event[]) => void;
} {
  const { services, recipes } = desk();
  const recipe = recipes().find(({ id }) => id === 'planter-bench');
  if (recipe === undefined) throw new Error('no bench');
  const answers = usualAnswers(recipe);
  const opened = openBuild(services.create({ recipe: recipe.id, name, answers }), services);
  if (!opened.ok) throw new Error(opened.problem);
  const save = (build: Build, events: readonly Event[]) => {
    expect(services.save(recorded(build, events, services))).toEqual({ ok: true });
  };
  return { build: opened.build, save };
}

describe('a helper who comes back for the next build', () => {
  test('is known by what was signed off, in a program that was started anew', () => {
    const first = begin('Porch bench');
    expect(first.build.progress.helperBefore).toBe(undefined);
    const signedMs = nowMs + HOUR_MS;
    first.save(first.build, [
      { kind: 'tools-briefed', atMs: signedMs, tools: ['miter-saw', 'tape'] },
      { kind: 'step-done', atMs: signedMs + HOUR_MS, step: 'talk' },
    ]);
    nowMs += 30 * 24 * HOUR_MS;
    const { build } = begin('Roof bench');
    expect(build.progress.helperBefore?.tools.get('miter-saw')).toBe(signedMs);
    expect(build.progress.helperBefore).toMatchObject({ alone: 0, together: 1 });
  });

  test('and starts from nothing where another one came meanwhile', () => {
    const { build, save } = begin('Third bench');
    save(build, [{ kind: 'helper-changed', atMs: nowMs }]);
    expect(begin('Fourth bench').build.progress.helperBefore).toBe(undefined);
  });
});
