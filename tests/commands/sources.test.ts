import { describe, expect, test } from 'vitest';
import { sourcesCommand } from '../../src/commands/sources.js';
import { sourceList } from '../../src/materials/source-list.js';

function printed(as: 'text' | 'json' | 'csv' | 'markdown', width = 80): string {
  const { out, err, code } = sourcesCommand({ as, width });
  expect([err, code]).toEqual(['', 0]);
  return out;
}

describe('notchbook sources', () => {
  test('names every publication once, with its full citation', () => {
    const lines = printed('text', 240).split('\n');
    const names = new Set(sourceList().map(({ publication }) => publication));
    for (const name of names) expect(lines.filter(line => line === name)).toHaveLength(1);
    expect(lines).toContain('ANSI/AWC NDS Supplement, Design Values for Wood Construction (2018).');
  });

  // The NDS was not at hand: nothing under it may pass for seen.
  test('says which values nobody has re-checked', () => {
    const page =
      printed('text')
        .split('\n\n')
        .find(text => text.startsWith('NDS 2018')) ?? '';
    expect(page).toContain('not re-checked');
    expect(page).not.toMatch(/^seen/m);
  });

  test('the last lines count them, and the parts add up', () => {
    const last = printed('text', 240).trimEnd().split('\n\n').at(-1) ?? '';
    const [all, , ...parts] = (last.match(/\d+/g) ?? []).map(Number);
    expect(parts.reduce((sum, part) => sum + part, 0)).toBe(all);
    expect(all).toBe(sourceList().length);
  });

  test('keeps to the width', () => {
    const longest = printed('text', 60)
      .split('\n')
      .map(line => line.length);
    expect(Math.max(...longest)).toBeLessThanOrEqual(60);
  });

  test('gives JSON, CSV and Markdown with one row for each place', () => {
    const count = sourceList().length;
    expect(JSON.parse(printed('json'))).toHaveLength(count);
    expect(printed('csv').trimEnd().split('\r\n')).toHaveLength(count + 1);
    expect(printed('markdown').trimEnd().split('\n')).toHaveLength(count + 2);
  });
});
