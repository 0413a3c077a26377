import { describe, expect, test } from 'vitest';
import { readingRows } from '../../../src/ui/screens/step/reading.js';
import { workRows } from '../../../src/ui/screens/step/work-rows.js';
import type { Row } from '../../../src/ui/widgets/rows.js';
import type { Event } from '../../../src/workbook/events.js';
import { benchPlan, buildAfter, contextWith, TUESDAY_MS } from '../../support/open-build.js';

const BENCH = benchPlan();
const TOLD: readonly Event[] = BENCH.cautions.map(({ id }) => ({
  kind: 'briefed',
  atMs: TUESDAY_MS,
  caution: id,
}));
/** Signs that figures, bars and pictures are drawn with: read aloud they are noise. */
const DRAWN = /[█░▒│┌┐└┘─├┤]/;

/** What a screen reader says of these rows. */
function said(rows: readonly Row[]): string {
  return rows.map(({ text, told = text }) => told).join('\n');
}

describe.each(BENCH.steps)('who listens at "$title"', step => {
  const counted: Event = { kind: 'piece-done', atMs: TUESDAY_MS, step: step.id, count: 1 };
  const events = step.tally === undefined ? TOLD : [...TOLD, counted];
  const work = {
    step,
    build: buildAfter(events, BENCH),
    at: contextWith(buildAfter(events, BENCH)),
  };

  test.each([80, 60])('hears figure and count as words, in %i columns', columns => {
    const style = { columns, large: true, roomy: false, shortNotes: false };
    const text = said(workRows(work, style).body);
    expect(text).not.toMatch(DRAWN);
    if (step.big !== undefined) expect(text).toContain(step.big.text);
    if (step.tally !== undefined) expect(text).toContain(`1 of ${step.tally.count} `);
  });

  test('hears what the picture of the helper shows, and no line of it', () => {
    const text = said(readingRows('helper', work));
    expect(text).not.toMatch(DRAWN);
    if (step.bright.length > 0) expect(text).toMatch(/view.*: .* wide and .* high|Being added/);
  });
});
