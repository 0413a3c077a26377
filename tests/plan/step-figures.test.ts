import { describe, expect, test } from 'vitest';
import { toInches } from '../../src/measure/inch.js';
import { nextMark } from '../../src/plan/piece-mark.js';
import type { Plan, Step } from '../../src/plan/plan.js';
import { cutStepsOf } from '../../src/plan/work-so-far.js';
import { planOf, project } from '../support/projects.js';

const PLAN = planOf(project('planter-bench'));

function step(words: string, plan: Plan = PLAN): Step {
  const found = plan.steps.find(({ title }) => title.includes(words));
  if (found === undefined) throw new Error(`no step ${words}`);
  return found;
}

function setting(of: Step, name: string): readonly string[] {
  return of.settings.filter(it => it.name === name).map(({ text }) => text);
}

/** The room for knots that is told of a board: `1-7/8 in each on boards 3 to 5 and 9` tells it of board 4 too. */
function roomOn(number: number, words: string): string | undefined {
  const told = words.replace(/^.*in all: /, '').split('; ');
  return told.flatMap(part => {
    const [, room, boards = ''] = /^([\d/-]+) in(?: each)? on boards? (.*)$/.exec(part) ?? [];
    const among = boards.split(/, | and /).some(run => {
      const [first = 0, last = first] = run.split(' to ').map(Number);
      return first <= number && number <= last;
    });
    return room !== undefined && among ? [room] : [];
  })[0];
}

/** 3-7/8 as a number. */
function inchesIn(text: string): number {
  const [whole = '0', fraction] = text.includes('-') ? text.split('-') : ['0', text];
  const [over = '0', under = '1'] = (fraction ?? '0').split('/');
  return text.includes('/') ? Number(whole) + Number(over) / Number(under) : Number(text);
}

describe('a step that sets a row has its marks', () => {
  test('thirteen slats of 3-1/2 in over 48 in, each mark rounded alone', () => {
    // 48 less 13 x 3-1/2 is 2-1/2 in for 14 gaps: 0.17857 in; near edges at gap + k (3-1/2 + gap).
    const gap = 2.5 / 14;
    const [marks = ''] = setting(step('Screw the seat slats'), 'Marks');
    const read = marks
      .replace(/ in from one end.*$/, '')
      .split(', ')
      .map(inchesIn);
    const wanted = Array.from({ length: 13 }, (_, k) => gap + k * (3.5 + gap));
    expect(read).toHaveLength(13);
    read.forEach((mark, k) => {
      expect(Math.abs(mark - (wanted[k] ?? 0))).toBeLessThanOrEqual(1 / 32 + 1e-9);
    });
  });

  test('panels of two widths have a line each, where they are filled and not again', () => {
    expect(setting(step('Fill the planter panels'), 'Marks')).toHaveLength(2);
    expect(setting(step('Put the planter boxes together'), 'Marks')).toEqual([]);
  });
});

describe('a step at the saw says how much of each board may be cut out with a knot', () => {
  test.each(cutStepsOf(PLAN).map(it => [it.step.title, it] as const))('%s', (_, cutting) => {
    const [words = ''] = setting(cutting.step, 'Knots');
    const purchase = PLAN.purchases.find(({ section }) => section === cutting.section);
    if (purchase === undefined) throw new Error('no boards');
    const marks = new Set(cutting.rows.map(({ mark }) => mark));
    const { kerf, trim, boards } = purchase;
    for (const { number, length, cuts } of boards) {
      if (!cuts.some(({ mark }) => marks.has(mark))) continue;
      // Squaring cut and its blade, the pieces, a blade between each two: what is left can be skipped.
      const used = cuts.reduce((sum, cut) => sum + cut.length + kerf, trim + kerf - kerf);
      const free = toInches(length - used);
      const told = roomOn(number, words);
      // A hair of arithmetic below 1/4 in is 1/4 in.
      if (free < 1 / 4 - 1e-9) expect(told).toBe(undefined);
      else if (boards.length > 1)
        expect(inchesIn(told ?? '')).toBeCloseTo(Math.floor(free * 16 + 1e-3) / 16, 6);
    }
  });
});

describe('what is written on the piece under the saw', () => {
  const cutting = cutStepsOf(PLAN).find(({ step: it }) => it.title.includes('25 at 18 in'));
  if (cutting === undefined) throw new Error('no step at 18 in');
  const after = (count: number) => ({
    tallies: new Map([[cutting.step.id, count]]),
    done: new Set<string>(),
    rackChanges: [],
  });

  test.each([
    [0, 'B1'],
    [1, 'B2'],
    [11, 'B12'],
    [12, 'C1'],
    [24, 'C13'],
    [25, undefined],
  ])('after %i pieces', (count, mark) => {
    expect(nextMark(cutting, after(count))).toBe(mark);
  });
});
