import { describe, expect, test } from 'vitest';
import { bestSight, closer, nextSide, pictureOf, turned } from '../../src/ui/pictures.js';
import { planSubject } from '../../src/ui/screens/plan/subject.js';
import { subjectOf } from '../../src/ui/screens/step/subject.js';
import { benchPlan } from '../support/open-build.js';

const plan = benchPlan();
const LARGE = { columns: 140, rows: 37, ascii: false };

function subjectAt(id: string) {
  const step = plan.steps.find(one => one.id === id);
  if (step === undefined) throw new Error(`no step ${id}`);
  return subjectOf(step, plan);
}

describe('looking round', () => {
  test('four quarter turns come back to where one stood', () => {
    const start = { view: 'corner-right', close: 0 } as const;
    const seen = [1, 2, 3, 4].reduce(
      sights => [...sights, turned(sights.at(-1) ?? start, 1)],
      [start as ReturnType<typeof turned>],
    );
    expect(new Set(seen.map(({ view }) => view)).size).toBe(4);
    expect(seen.at(-1)).toEqual(start);
    expect(turned(turned(start, 1), -1)).toEqual(start);
  });

  test('the sides come one after the other, then a corner', () => {
    const side = (view: Parameters<typeof nextSide>[0]['view']) =>
      nextSide({ view, close: 0 }).view;
    expect([side('front'), side('end'), side('above'), side('corner-left')]).toEqual([
      'end',
      'above',
      'corner-right',
      'front',
    ]);
  });

  test('closer goes through joint and screws, and back to the whole', () => {
    const subject = subjectAt('seat-rails');
    let sight = bestSight(subject, LARGE);
    const titles = [];
    do {
      sight = closer(sight, subject);
      titles.push(pictureOf(subject, sight, LARGE).title);
    } while (sight.close > 0);
    expect(titles).toEqual([
      'Panel rail onto seat rail, close up',
      expect.stringMatching(/^Panel rail onto seat rail: 1 x No\. 10 x 3 in$/),
      'From the front right corner',
    ]);
  });

  test('a step that cuts notches shows the sheet of each piece that gets one', () => {
    const subject = subjectAt('notch-rails');
    const sheets = subject.closeUps().map(({ draw }) => draw('corner-right').title);
    expect(sheets).toEqual([
      expect.stringMatching(/^B Panel rail, 12 of them/),
      expect.stringMatching(/^E Panel rail, 8 of them/),
    ]);
  });

  test('of the whole piece a section comes first', () => {
    const subject = planSubject(plan);
    const sight = closer({ view: 'front', close: 0 }, subject);
    expect(pictureOf(subject, sight, LARGE).title).toContain('Section through planter box');
  });

  test('where a corner would be a thicket, a side is shown', () => {
    const subject = subjectAt('slats');
    expect(bestSight(subject, LARGE).view).toBe('corner-right');
    expect(bestSight(subject, { columns: 60, rows: 12, ascii: false }).view).toBe('above');
  });
});
