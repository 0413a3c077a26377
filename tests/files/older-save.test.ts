import { copyFileSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, expect, test } from 'vitest';
import { PLANNER, withRecipe } from '../../src/commands/kept-build.js';
import { openShelf } from '../../src/files/open-shelf.js';
import { keptBoards } from '../../src/plan/kept-boards.js';
import { rackNow } from '../../src/plan/rack-now.js';
import { cutStepsOf, goodPieces } from '../../src/plan/work-so-far.js';
import { benchOf } from '../../src/ui/bench-of.js';
import { openBuild, recorded } from '../../src/ui/build.js';
import type { Build } from '../../src/ui/screen.js';
import { ahead } from '../support/journal.js';

/**
 * A bench that was begun and sawn half with the program as it was days ago, keys pressed by hand: two seat rails of
 * 48 in, then eighteen of the twenty-five pieces of 18 in, one of them split on the way with 12 in sound, a note, and
 * two pauses. It holds no boards, none of the answers asked since, and the recipe of that day.
 */
const ID = 'bench-with-planter-endsroof-bench';
const FILE = fileURLToPath(new URL('data/half-sawn.json', import.meta.url));

/** The evening after it was left. */
const NEXT_EVENING = Date.UTC(2026, 11, 1, 18);

const homes: string[] = [];

afterEach(() => {
  for (const home of homes.splice(0)) rmSync(home, { recursive: true });
});

function shelfWithIt() {
  const home = mkdtempSync(join(tmpdir(), 'older-'));
  homes.push(home);
  mkdirSync(join(home, 'builds'));
  copyFileSync(FILE, join(home, 'builds', `${ID}.json`));
  return openShelf(home, () => NEXT_EVENING);
}

function opened(shelf: ReturnType<typeof shelfWithIt>): Build {
  const found = shelf.load(ID);
  if (!found.ok) throw new Error(found.words);
  expect(found.notice).toBe(undefined);
  const build = openBuild(withRecipe(found.workbook), PLANNER);
  if (!build.ok) throw new Error(build.problem);
  return build.build;
}

/** How many pieces of each length are cut, in inches. */
function cut({ plan, progress }: Build): Readonly<Record<string, number>> {
  const counts = cutStepsOf(plan).map(it => [it.step.big?.text ?? '', goodPieces(it, progress)]);
  return Object.fromEntries(counts.filter(([, count]) => count !== 0));
}

test('a bench half sawn with an older program opens where it was left', () => {
  const build = opened(shelfWithIt());
  expect(cut(build)).toEqual({ '48 in': 2, '18 in': 18 });
  expect(build.progress.notes.map(({ text }) => text)).toEqual([
    'board 4 has a split at the far end',
  ]);
  expect(build.progress.rackChanges).toMatchObject([{ kind: 'spoiled', mark: 'B' }]);
});

// Sawn are 2 x 48 in, 18 x 18 in and the 18 in that were lost, a blade of 1/8 in with each, and 3/8 in to square each
// board that is begun. Ten boards of 10 ft lay there at first, and the 12 in that are sound of the lost piece.
test('its boards are as long as they were left', () => {
  const build = opened(shelfWithIt());
  const boards = rackNow('2x4', benchOf(build))?.rack.boards ?? [];
  const begun = boards.filter(({ kind }) => kind === 'started').length;
  const left = boards.reduce((sum, { length }) => sum + length, 0) / 25.4;
  const sawn = 2 * (48 + 1 / 8) + 19 * (18 + 1 / 8) + begun * (3 / 8);
  expect(left).toBeCloseTo(10 * 120 - sawn + 12, 6);
});

test('it goes on: the next pieces are counted, saved and found again, with its boards', () => {
  const shelf = shelfWithIt();
  const before = opened(shelf);
  const at18 = cutStepsOf(before.plan).find(({ step }) => step.big?.text === '18 in');
  const step = at18?.step.id ?? '';
  const events = Array.from({ length: 7 }, (_, at) => {
    const atMs = NEXT_EVENING + at * 60_000;
    return { kind: 'piece-done', atMs, step, count: 1 } as const;
  });
  const after = recorded(
    recorded(before, [{ kind: 'resumed', atMs: NEXT_EVENING }], PLANNER),
    [...events, { kind: 'step-done', atMs: NEXT_EVENING + 500_000, step }],
    PLANNER,
  );
  expect(shelf.save(after.workbook, ahead(36))).toMatchObject({ ok: true });
  shelf.close(ID);
  const again = opened(shelf);
  expect(cut(again)).toEqual({ '48 in': 2, '18 in': 25 });
  expect(again.workbook.boards).toEqual(keptBoards(before.plan.purchases));
});
