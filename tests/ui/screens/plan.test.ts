import { describe, expect, test } from 'vitest';
import { planPages } from '../../../src/ui/screens/plan/pages.js';
import { planScreen } from '../../../src/ui/screens/plan/screen.js';
import { tabRows } from '../../../src/ui/screens/plan/tabs.js';
import {
  benchPlan,
  buildAfter,
  contextWith,
  TUESDAY_MS,
  usedWith,
} from '../../support/open-build.js';
import { viewLines } from '../../support/screen-page.js';

function pressed(keys: string) {
  const used = usedWith(planScreen, contextWith(buildAfter([])));
  for (const key of keys.split(' ')) used.press(key);
  return used;
}

describe.each([60, 80, 120])('the tabs in a window of %i columns', columns => {
  /** Something is done, so that care sheet and record are there: thirteen pages. */
  const built = buildAfter([{ kind: 'step-done', atMs: TUESDAY_MS, step: 'measure' }]);
  const pages = planPages(built);

  test.each(pages.map(({ name }, number) => [name, number] as const))(
    'every name can be read beside [%s]',
    (name, number) => {
      const rows = tabRows(pages, number, columns);
      for (const page of pages) expect(rows.join('\n')).toContain(page.name);
      expect(rows.join('\n')).toMatch(new RegExp(`\\[(?:\\S )?${name}\\]`));
      expect(rows.filter(row => row.length > columns)).toEqual([]);
      expect(rows).toHaveLength(columns < 100 ? 2 : 1);
    },
  );

  test('none moves when another page is turned to', () => {
    const bare = (seen: number) =>
      tabRows(pages, seen, columns).map(row => row.replace(/[[\]]/g, ' ').trimEnd());
    for (const [number] of pages.entries()) expect(bare(number)).toEqual(bare(0));
  });
});

describe('turning the pages of the plan', () => {
  test.each([
    ['a number', '4', 3],
    ['zero is the tenth', '0', 9],
    ['right', 'right', 1],
    ['left from the first is the last', 'left', 11],
    ['space, where the page is at its end', 'space', 1],
    ['the view key shows the drawing', '4 v', 0],
  ])('%s', (_, keys, page) => {
    expect(pressed(keys).state.page).toBe(page);
  });

  test.each(['w', '3', '6', '8'])('by windows, page %s begins each time with an entry', letter => {
    const used = usedWith(planScreen, contextWith(buildAfter([], benchPlan()))).press(letter);
    const { page } = used.state;
    const seen: string[] = [];
    while (used.state.page === page) {
      const [tabs = '', , , first = ''] = viewLines(planScreen, used.state, used.at);
      expect(tabs).toContain('1 Drawing');
      seen.push(first);
      const before = used.state.top;
      used.press('space');
      if (used.state.page === page) expect(used.state.top).toBeGreaterThan(before);
    }
    expect(seen.length).toBeGreaterThan(1);
    // The last window ends with the page, wherever it begins then.
    expect(seen.slice(0, -1).filter(line => line.startsWith('  '))).toEqual([]);
  });

  test.each([
    ['w', 'Words'],
    ['c', 'Care'],
    ['r', 'Record'],
  ])('%s is the letter of a page that has no number: %s', (letter, name) => {
    const built = buildAfter([{ kind: 'step-done', atMs: TUESDAY_MS, step: 'measure' }]);
    const used = usedWith(planScreen, contextWith(built)).press(letter);
    expect(planPages(built)[used.state.page]?.name).toBe(name);
  });

  test('the view key turns the drawing', () => {
    const viewAfter = (keys: string) => pressed(keys).state.sight.view;
    expect(viewAfter('v')).toBe('end');
    expect(viewAfter('v v v')).toBe('corner-right');
    expect(viewAfter('v v v v v v v')).toBe('front');
    expect(viewAfter('2 v')).toBe('front');
  });

  test('? shows the rule and the source of each figure, and back', () => {
    const used = pressed('4 ?');
    const lines = viewLines(planScreen, used.state, used.at);
    expect(lines).toContain('- 48 in less two posts of 1-1/2 in');
    expect(lines).toContain('- Source: arithmetic on this plan');
    expect(used.press('?').state.asked).toBe(false);
  });

  test('enter begins to build and notes the first step', () => {
    expect(pressed('enter').asks).toEqual([
      { kind: 'record', events: [{ kind: 'step-visited', atMs: TUESDAY_MS, step: 'measure' }] },
      { kind: 'go', to: 'step' },
    ]);
  });

  test('a goes back to the answers', () => {
    expect(pressed('a').asks).toEqual([
      { kind: 'begin-interview', recipe: 'small-bench', answers: {} },
    ]);
  });

  test('a page scrolls to its end and no further', () => {
    const used = pressed('8 end down down');
    const { top } = used.state;
    expect(used.press('down').state.top).toBe(top);
    expect(used.press('home').state.top).toBe(0);
  });
});
