import { expect, test } from 'vitest';
import { clampsAtOnce } from '../../src/plan/clamps-at-once.js';
import { toolsPage } from '../../src/plan/pages/work-pages.js';
import { pageLines } from '../../src/text/page-lines.js';
import { planOf, project } from '../support/projects.js';

const plan = planOf(project('planter-bench'));
const [row] = plan.glueUps;
if (row === undefined) throw new Error('no glue');
const number = (value: number) => ({ ...row.clamps, value });

/** Four panels of two clamps in 56 min, then rails of four clamps, begun at this minute. */
function clamps(railsFrom: number) {
  return clampsAtOnce({
    glueUps: [
      { step: 'panels', count: number(4), clampsEach: 2, clamps: number(8) },
      { step: 'rails', count: number(1), clampsEach: 4, clamps: number(4) },
    ],
    glue: { clampTime: number(60) },
    time: {
      sessions: [
        {
          turns: [
            { step: 'panels', who: 'both', from: 0, to: 56 },
            { step: 'rails', who: 'both', from: railsFrom, to: railsFrom + 11 },
          ],
        },
      ],
    },
  });
}

// By hand: panels are closed at 14, 28, 42 and 56 and stay an hour in clamps, the first until 74. Rails begun at 62
// or at 70 meet all four: 8 + 4, and two hold the ledger. Begun at 117 they meet none: 8 for the panels, and the ledger's two.
test('rails that are clamped while four panels still are want clamps of their own', () => {
  expect(clamps(62)).toBe(14);
  expect(clamps(70)).toBe(14);
  expect(clamps(117)).toBe(10);
});

test('the list of tools says how many, and what to do with fewer', () => {
  const text = pageLines(toolsPage(plan), 120).join(' ').replace(/\s+/g, ' ');
  const wanted = Number(/bar clamps: (\d+)/.exec(text)?.[1]);
  const alone = Math.max(...plan.glueUps.map(({ clamps: own }) => own.value));
  expect(wanted).toBeGreaterThanOrEqual(alone + 2);
  expect(text).toContain(`Bar clamps: ${wanted} are on at once`);
  expect(text).toMatch(/With fewer, wait until the first come off/);
});
