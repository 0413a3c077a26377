import { describe, expect, test } from 'vitest';
import { stepScreen } from '../../../src/ui/screens/step/screen.js';
import type { Event } from '../../../src/workbook/events.js';
import { benchBuild, usedOn } from '../../support/measured-build.js';
import { TUESDAY_MS } from '../../support/open-build.js';
import { screenPage } from '../../support/screen-page.js';

const atMs = TUESDAY_MS;
const visited: Event = { kind: 'step-visited', atMs, step: 'lay-out' };
const filled = (count: number): readonly Event[] =>
  count === 0 ? [visited] : [visited, { kind: 'piece-done', atMs, step: 'lay-out', count }];

const PLAN = benchBuild().plan;
const STEP = PLAN.steps.find(({ id }) => id === 'lay-out');

function pageAfter(count: number): string {
  const used = usedOn(stepScreen, benchBuild(filled(count)));
  return screenPage(stepScreen, used.state, used.at);
}

// By hand, for the seat of 48 in: 13 slats on two rails, two screws a crossing: 52. Four feet under the end panels with
// two screws each: 8. Twelve panels of four corners with two screws, less the shoulders that the seat rails stand in.
describe('screws are counted out cup by cup', () => {
  test('as many in each cup as its joint takes', () => {
    const cup = (joint: string) => STEP?.cups?.find(it => it.joint === joint)?.count;
    expect([cup('Slat to seat rail'), cup('Foot to end panel')]).toEqual([52, 8]);
  });

  test('all cups hold what the steps of the build drive', () => {
    const cups = STEP?.cups?.reduce((sum, { count }) => sum + count, 0);
    const driven = PLAN.steps
      .filter(({ id }) => id !== 'lay-out')
      .flatMap(({ settings }) => settings.filter(({ name }) => name === 'Screws'))
      .reduce((sum, { text }) => sum + Number.parseInt(text, 10), 0);
    expect(cups).toBe(driven);
  });

  test('screws out of one box follow each other, so that each box is opened once', () => {
    const boxes = STEP?.cups?.map(({ what }) => what) ?? [];
    const turns = boxes.filter((what, at) => what !== boxes[at - 1]);
    expect(new Set(turns).size).toBe(turns.length);
  });

  test('the next cup is the large figure, and the count goes by cups', () => {
    const first = STEP?.cups?.[0];
    const third = STEP?.cups?.[2];
    expect(pageAfter(0)).toContain(`${first?.what}, for`);
    expect(pageAfter(0)).toContain('█');
    expect(pageAfter(2)).toContain(`2 of ${STEP?.cups?.length} cups`);
    expect(pageAfter(2)).toContain(`for ${third?.joint.toLowerCase()}`);
  });
});
