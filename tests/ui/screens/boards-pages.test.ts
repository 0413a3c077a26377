import { describe, expect, test } from 'vitest';
import { SIXTEENTHS } from '../../../src/measure/displays.js';
import { COMPUTED } from '../../../src/measure/figure.js';
import { feet, inches } from '../../../src/measure/inch.js';
import { boardsPage } from '../../../src/plan/pages/boards-page.js';
import type { CutRow, Plan } from '../../../src/plan/plan.js';
import { purchases } from '../../../src/plan/purchases.js';
import { settingOf } from '../../../src/plan/setting.js';
import { bodyLines } from '../../../src/text/page-lines.js';
import { planScreen } from '../../../src/ui/screens/plan/screen.js';
import { buildAfter, contextWith, ROOM, usedWith } from '../../support/open-build.js';
import { screenPage } from '../../support/screen-page.js';
import { smallPlan } from '../../support/small-plan.js';

const figure = (value: number) =>
  ({ value: inches(value), unit: 'mm', because: '', source: COMPUTED }) as const;

type Told = readonly [mark: string, length: number, count: number, section: string];

const SIZES: Readonly<Record<string, readonly [number, number]>> = {
  '2x4': [1.5, 3.5],
  '1x2': [0.75, 1.5],
};

function row([mark, length, count, section]: Told, turn: number): CutRow {
  const [thickness = 0, width = 0] = SIZES[section] ?? [];
  return {
    mark,
    name: mark,
    uses: [],
    pieces: [],
    section,
    width: figure(width),
    thickness: figure(thickness),
    length: figure(length),
    count,
    turn,
    notches: [],
  };
}

/** Rails and slats of 2x4 with one board on hand, and keeper strips that are cheaper ripped from 1x4. */
function planWith(cents: boolean): Plan {
  const priced = <T extends { cents: number }>({ cents: price, ...offer }: T) =>
    cents ? { ...offer, cents: price } : offer;
  const bought = purchases(
    [
      row(['A', 48, 2, '2x4'], 1),
      row(['B', 21, 4, '2x4'], 3),
      row(['C', 34.5, 6, '2x4'], 2),
      row(['K', 40, 6, '1x2'], 4),
    ],
    {
      ...settingOf({}, SIXTEENTHS),
      offers: [
        { section: '2x4', length: feet(8), cents: 748 },
        { section: '2x4', length: feet(10), cents: 998 },
        { section: '1x2', length: feet(8), cents: 298 },
        { section: '1x4', length: feet(8), cents: 428 },
      ].map(priced),
      onHand: [{ section: '2x4', length: inches(52), count: 1 }],
    },
  );
  const cost = bought.reduce((sum, purchase) => sum + purchase.cost.value, 0);
  const plan = smallPlan();
  return { ...plan, purchases: bought, cost: { ...plan.cost, value: cost } };
}

/** The page of boards from its top, and after paging down, against the pages that were looked at. */
async function page(name: string, look: { columns: number; ascii?: boolean; priced?: boolean }) {
  const { columns, ascii = false, priced = true } = look;
  const size = ROOM[columns];
  if (size === undefined) throw new Error('no such window');
  const at = contextWith(buildAfter([], planWith(priced)), { size, ascii });
  const used = usedWith(planScreen, at).wait(400);
  used.press('5').wait(400);
  const top = screenPage(planScreen, used.state, used.at);
  used.press('page-down').wait(400);
  const below = screenPage(planScreen, used.state, used.at);
  const text = `${top}\n${below}`;
  await expect(text).toMatchFileSnapshot(`../../pages/${name}-${columns}.txt`);
}

const CEDAR: Plan['answers'] = [
  { id: 'species', say: 'Which wood will it be?', text: 'Western redcedar' },
  { id: 'dryness', say: 'How dry are the boards?', text: 'surfaced dry (S-DRY stamp)' },
];

/** The page of boards as one reads it in the aisle. */
function inTheAisle(priced: boolean): readonly string[] {
  return bodyLines(boardsPage({ ...planWith(priced), answers: CEDAR }).blocks, 80);
}

describe('in the aisle', () => {
  test('the wood is named before any board', () => {
    expect(inTheAisle(true)[0]).toBe('Wood: Western redcedar, surfaced dry (S-DRY stamp).');
  });

  test('columns for prices are there where a price is known, and left out where none is', () => {
    expect(inTheAisle(true)[2]).toBe('Board       Count  Length  Each  Together');
    expect(inTheAisle(false)[2]).toBe('Board  Count  Length');
  });
});

describe('boards to buy on the screen', () => {
  test.each([80, 60])('are drawn to scale in a window of %i columns', columns =>
    page('plan-boards', { columns }),
  );

  test('are drawn in plain characters', () =>
    page('plan-boards-ascii', { columns: 80, ascii: true }));

  test('say nothing of ripping where there are no prices', () =>
    page('plan-boards-unpriced', { columns: 80, priced: false }));
});
