import { describe, expect, test } from 'vitest';
import { inches } from '../../src/measure/inch.js';
import { settingsNow } from '../../src/plan/cut-step-now.js';
import { type KeptBoards, keptBoards } from '../../src/plan/kept-boards.js';
import { makePlan } from '../../src/plan/make-plan.js';
import { onDay } from '../../src/plan/on-day.js';
import { boardsPage } from '../../src/plan/pages/boards-page.js';
import type { Plan } from '../../src/plan/plan.js';
import { layOut, paperSheets } from '../../src/print/print-paper.js';
import { benchOf } from '../../src/ui/bench-of.js';
import { openBuild, recorded } from '../../src/ui/build.js';
import type { Build } from '../../src/ui/screen.js';
import type { Event } from '../../src/workbook/events.js';
import { fromSaved, toSaved } from '../../src/workbook/saved.js';
import { benchBuild } from '../support/measured-build.js';
import { TUESDAY_MS } from '../support/open-build.js';
import { paperAsk } from '../support/paper.js';
import { sheetText } from '../support/paper-page.js';

const PLANNER = { plan: makePlan, onDay };
const BUILD = benchBuild();
const TODAY = keptBoards(BUILD.plan.purchases);

/** What the build with these boards looks like once it is saved and opened again. */
function opened(boards: KeptBoards, events: readonly Event[] = []): Build {
  const { workbook, recipe } = benchBuild(events);
  const read = fromSaved(toSaved({ ...workbook, boards }));
  if (!read.ok) throw new Error('damaged');
  const found = openBuild({ ok: true, workbook: read.workbook, recipe }, PLANNER);
  if (!found.ok) throw new Error(found.problem);
  return found.build;
}

/** Another program's plan of the same boards: the first two of the 2x4 have each other's number. */
const SWAPPED = TODAY.map(kept => {
  const [first, second, ...others] = kept.boards;
  if (kept.section !== '2x4' || first === undefined || second === undefined) return kept;
  return { ...kept, boards: [second, first, ...others] };
});

/** The marks that a plan cuts from each 2x4, in the order of the numbers. */
function marksByNumber({ purchases }: Plan): readonly string[] {
  const boards = purchases.find(({ section }) => section === '2x4')?.boards ?? [];
  return boards.map(({ number, cuts }) => `${number}: ${cuts.map(({ mark }) => mark).join('')}`);
}

/** What the stops of 2x4 say, as on the pages of the steps. */
function stops(build: Build): string {
  return build.plan.steps
    .filter(({ id }) => id.includes('/2x4@'))
    .flatMap(step => settingsNow(step, benchOf(build)).map(({ text }) => text))
    .join('\n');
}

/** The parts of the paper that tell the numbers of boards. */
function onPaper({ plan, workbook, progress }: Build): string {
  const ask = paperAsk({ plan, build: { workbook, progress }, pages: ['boards', 'steps'] });
  const out = layOut(ask);
  return paperSheets(ask, out)
    .map(sheet => sheetText(sheet, ask.paper, out.pack.measure.rule))
    .join('\n');
}

function barOf(number: string, { plan }: Build): string {
  const bars = boardsPage(plan).blocks.flatMap(it => (it.kind === 'bars' ? it.bars : []));
  return bars.find(({ name }) => name === number)?.text ?? '';
}

describe('a build keeps the numbers that are written on its wood', () => {
  const build = opened(SWAPPED);
  const [one = '', two = ''] = marksByNumber(BUILD.plan);

  test('where the program of today would number the same boards otherwise', () => {
    const [first, second, ...others] = marksByNumber(build.plan);
    expect(first?.slice(3)).toBe(two.slice(3));
    expect(second?.slice(3)).toBe(one.slice(3));
    expect(others).toEqual(marksByNumber(BUILD.plan).slice(2));
    expect(build.plan.warnings).toEqual(BUILD.plan.warnings);
  });

  test('at the stops, on the page of boards and on paper', () => {
    // By today's plan three feet come off board 2 and the posts beside a rail off board 1.
    expect(stops(BUILD)).toMatch(/16 x post: 4 from board 1;/);
    expect(stops(build)).toMatch(/16 x post: 4 from board 2;/);
    expect(barOf('2', build)).toBe(barOf('1', BUILD));
    expect(barOf('1', build)).toBe(barOf('2', BUILD));
    expect(onPaper(BUILD)).toMatch(/post: 4 from board 1;/);
    expect(onPaper(build)).toMatch(/post: 4 from board 2;/);
    expect(onPaper(build)).not.toMatch(/post: 4 from board 1;/);
  });

  test('when a width is measured later', () => {
    const measured: Event = {
      kind: 'size-measured',
      atMs: TUESDAY_MS + 1,
      step: BUILD.plan.steps[0]?.id ?? '',
      what: '2x4.width',
      readings: [inches(3.4375)],
      value: inches(3.4375),
      isTaken: true,
      cut: [],
    };
    const after = opened(SWAPPED, [measured]);
    expect(stops(opened(TODAY, [measured]))).toMatch(/16 x post: 4 from board 1;/);
    expect(stops(after)).toMatch(/16 x post: 4 from board 2;/);
  });

  test('and pays for them what it paid, with the proof as long as it costs the same', () => {
    const bought = ({ plan }: Build) =>
      plan.purchases.map(({ buy, cost, proof }) => ({ buy, cost: cost.value, proof }));
    expect(bought(build)).toEqual(bought(BUILD));
  });
});

// Every board is the one it was, but one more is there than is needed: longer in all, and nothing is proven of that.
test('boards that need more than a plan of today are kept, and not called the least', () => {
  const more = TODAY.map(kept => {
    const [first, ...others] = kept.boards;
    if (kept.section !== '2x4' || first === undefined) return kept;
    const [cut, ...rest] = first.cuts;
    const { length, onHand } = first;
    const parted = [
      { length, onHand, cuts: rest },
      { length, onHand, cuts: cut === undefined ? [] : [cut] },
    ];
    return { ...kept, boards: [...parted, ...others] };
  });
  const purchase = opened(more).plan.purchases.find(({ section }) => section === '2x4');
  expect(purchase?.boards).toHaveLength(11);
  expect(purchase?.buy.map(({ count }) => count)).toEqual([11]);
  expect(purchase?.proof).toEqual({ kind: 'none', words: 'the boards that the build began with' });
});

describe('boards that cannot be those of the build', () => {
  const change = (of: (boards: KeptBoards[number]['boards']) => KeptBoards[number]['boards']) =>
    TODAY.map(kept => (kept.section === '2x4' ? { ...kept, boards: of(kept.boards) } : kept));
  const rows: readonly (readonly [string, KeptBoards])[] = [
    ['a board less', change(boards => boards.slice(1))],
    [
      'a piece twice',
      change(boards => boards.map(it => ({ ...it, cuts: [...it.cuts, ...it.cuts] }))),
    ],
    ['a length that no store sells', change(boards => boards.map(it => ({ ...it, length: 3500 })))],
    [
      'a board too short for its pieces',
      change(boards => boards.map(it => ({ ...it, length: inches(96) }))),
    ],
    [
      'pieces of another length',
      change(boards =>
        boards.map(it => ({
          ...it,
          cuts: it.cuts.map(cut => ({ ...cut, length: cut.length - 5 })),
        })),
      ),
    ],
    [
      'boards on hand that nobody has',
      change(boards => boards.map(it => ({ ...it, onHand: true }))),
    ],
    ['strips out of boards that are not ripped', TODAY.map(kept => ({ ...kept, from: '2x10' }))],
  ];
  test.each(rows)('are left out with a word: %s', (_, boards) => {
    const build = opened(boards);
    expect(marksByNumber(build.plan)).toEqual(marksByNumber(BUILD.plan));
    expect(
      build.plan.warnings.filter(words => words.includes('compare the numbers')),
    ).toContainEqual(
      expect.stringMatching(/^2x4: the boards kept with this build do not give its pieces/),
    );
  });

  test('are damage where they are no boards at all, and the place is named', () => {
    const { workbook } = BUILD;
    const saved = JSON.parse(toSaved({ ...workbook, boards: TODAY }));
    saved.boards[0].boards[2].length = '10 ft';
    expect(fromSaved(JSON.stringify(saved))).toEqual({
      ok: false,
      why: 'damaged',
      where: 'boards, entry 1, boards, entry 3, length',
    });
  });
});

describe('a build that an older program began', () => {
  const visited: Event = { kind: 'step-visited', atMs: TUESDAY_MS + 1, step: 'set-up' };

  test('keeps its boards from its next entry on', () => {
    expect(BUILD.workbook.boards).toBe(undefined);
    expect(recorded(BUILD, [visited], PLANNER).workbook.boards).toEqual(TODAY);
  });

  test('keeps those from before a width was measured: they are the ones that lie there', () => {
    const measured: Event = {
      kind: 'size-measured',
      atMs: TUESDAY_MS,
      step: 'set-up',
      what: '2x4.width',
      readings: [inches(3.25)],
      value: inches(3.25),
      isTaken: true,
      cut: [],
    };
    const build = recorded(benchBuild([measured]), [visited], PLANNER);
    expect(build.workbook.boards).toEqual(TODAY);
  });

  test('never writes them anew', () => {
    const kept = recorded(opened(SWAPPED), [visited], PLANNER).workbook.boards;
    expect(kept).toEqual(SWAPPED);
  });
});
