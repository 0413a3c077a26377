import { expect, test } from 'vitest';
import { inches, toInches } from '../../../src/measure/inch.js';
import { cutPieces } from '../../../src/plan/as-cut.js';
import { rackNow } from '../../../src/plan/rack-now.js';
import { benchOf } from '../../../src/ui/bench-of.js';
import type { Build } from '../../../src/ui/screen.js';
import { outlook } from '../../../src/ui/screens/measure/outlook.js';
import type { Event } from '../../../src/workbook/events.js';
import { benchBuild } from '../../support/measured-build.js';
import { TUESDAY_MS } from '../../support/open-build.js';

/** Board 3 of ten of 10 ft is bad from 30 in to 96 in. */
const BAD: Event = {
  kind: 'board-spoiled',
  atMs: TUESDAY_MS + 1000,
  section: '2x4',
  place: 2,
  board: 'board 3',
  from: inches(30),
  to: inches(96),
  then: '',
  buy: '',
};

/** Feet of each board of 2x4 that the plan buys or that slips ask for, as on the page of boards. */
function feetToBuy(build: Build): readonly number[] {
  const planned = build.plan.purchases
    .filter(({ section }) => section === '2x4')
    .flatMap(({ buy }) => buy.flatMap(({ length, count }) => Array(count).fill(length.value)));
  const boards = rackNow('2x4', benchOf(build))?.rack.boards ?? [];
  const slips = boards.filter(({ kind }) => kind === 'to-buy').map(({ length }) => length);
  return [...planned, ...slips].map(it => toInches(it) / 12).sort((a, b) => a - b);
}

function narrower(width: number, bad: Event) {
  const build = benchBuild([bad]);
  const measured = new Map([['2x4.width', inches(width)]]);
  const cut = cutPieces(build.plan, build.progress);
  const lines = outlook(build, measured, cut).blocks.flatMap(it => it.lines);
  const taken: Event = {
    kind: 'size-measured',
    atMs: TUESDAY_MS + 2000,
    step: 'set-up',
    what: '2x4.width',
    readings: [inches(width)],
    value: inches(width),
    isTaken: true,
    cut,
  };
  return {
    told: lines.filter(line => line.startsWith('2x4: ')),
    before: feetToBuy(build),
    after: feetToBuy(benchBuild([bad, taken])),
  };
}

// Narrower posts and rails make longer slats and keepers: a board more by the plan. The board that the slip asked for
// has room for the same pieces, so whoever bought both would have one left over.
test('a board that a slip asked for already is not told again when a width is measured', () => {
  const { told, before, after } = narrower(3.25, BAD);
  expect(after).toEqual(before);
  expect(told).toEqual([]);
});

test('what is told is what the page of boards has more of than before, and less', () => {
  const allOfBoard1 = { ...BAD, place: 0, board: 'board 1', from: 0, to: inches(120) };
  const { told, before, after } = narrower(3.25, allOfBoard1);
  const more = (feet: number) =>
    after.filter(it => it === feet).length - before.filter(it => it === feet).length;
  expect([...new Set([...before, ...after])]).toEqual([10, 12]);
  expect(told).toEqual([
    `2x4: to buy besides, ${more(12)} x 12 ft`,
    `2x4: not to buy any more, ${-more(10)} x 10 ft. Bought already? Enter it: m at a step, "A board came to the rack"`,
  ]);
});
