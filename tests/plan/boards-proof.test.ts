import { describe, expect, test } from 'vitest';
import { boardsProofBlocks } from '../../src/plan/pages/boards-proof.js';
import { planScreen } from '../../src/ui/screens/plan/screen.js';
import { buildAfter, contextWith, TUESDAY_MS, usedWith } from '../support/open-build.js';
import { type RackInTest, rackPlan } from '../support/rack-plan.js';
import { viewLines } from '../support/screen-page.js';

/** The rows of the sum as printed. */
function rowsOf(about: RackInTest): readonly string[] {
  const { plan, setting } = rackPlan(about);
  return boardsProofBlocks(plan, setting).flatMap(block =>
    block.kind === 'list' ? block.items : block.kind === 'words' ? [block.text] : [],
  );
}

const number = (text: string | undefined): number => Number(text);

describe('why the boards cannot cost less, on paper', () => {
  const about: RackInTest = {
    pieces: [
      ['A', 48, 2],
      ['B', 34.5, 6],
      ['C', 21, 4],
    ],
    store: [
      [96, 748],
      [120, 998],
    ],
  };
  const rows = rowsOf(about);

  test('every row is a product that is right, and the last sentence has their sum', () => {
    const worths = rows.flatMap(row => {
      const found = /^(\d+) x \S+ .* at ([\d.]+) = ([\d.]+)$/.exec(row);
      if (found === null) return [];
      const [, count, each, all] = found;
      expect(number(count) * number(each)).toBeCloseTo(number(all), 6);
      return [number(all)];
    });
    expect(worths).toHaveLength(3);
    const least = /cost at least ([\d.]*\d)/.exec(rows.join(' '))?.[1];
    expect(worths.reduce((sum, it) => sum + it, 0)).toBeCloseTo(number(least), 6);
  });

  // The pieces on a board: squaring 1/4 in and every cut 1/8 in, the last one may end flush.
  test('no board holds pieces worth more than it costs, whatever is put on it', () => {
    const each = new Map(
      rows.flatMap(row => {
        const found = /^\d+ x (\S+) .* at ([\d.]+) =/.exec(row);
        return found === null ? [] : [[found[1] ?? '', number(found[2])] as const];
      }),
    );
    for (const [length, cents] of about.store) {
      for (let a = 0; a <= 2; a++)
        for (let b = 0; b <= 6; b++)
          for (let c = 0; c <= 4; c++) {
            const takes = a * 48.125 + b * 34.625 + c * 21.125 - 0.125;
            if (takes > length - 0.375) continue;
            const worth =
              a * (each.get('A') ?? 0) + b * (each.get('B') ?? 0) + c * (each.get('C') ?? 0);
            expect(worth).toBeLessThanOrEqual((cents ?? 0) / 100 + 1e-9);
          }
    }
  });

  test('stands first where the page of boards is asked where its figures are from', () => {
    const { plan, setting } = rackPlan(about);
    const build = buildAfter([{ kind: 'build-started', atMs: TUESDAY_MS }], plan);
    const answers = { offers: { kind: 'offers', value: setting.offers } } as const;
    const context = contextWith({ ...build, workbook: { ...build.workbook, answers } });
    const used = usedWith(planScreen, context).press('5').press('?');
    const text = viewLines(planScreen, used.state, used.at).join('\n');
    expect(text).toContain('2x4: the sum that proves it');
    expect(text).toContain('Count every piece at what it is worth');
  });
});
