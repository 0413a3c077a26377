import { describe, expect, test } from 'vitest';
import { planScreen } from '../../../src/ui/screens/plan/screen.js';
import { buildAfter, contextWith, TUESDAY_MS, usedWith } from '../../support/open-build.js';
import { viewLines } from '../../support/screen-page.js';

function pressed(keys: string) {
  const used = usedWith(planScreen, contextWith(buildAfter([])));
  for (const key of keys.split(' ')) used.press(key);
  return used;
}

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
