import { describe, expect, test } from 'vitest';
import { SIXTEENTHS } from '../../src/measure/displays.js';
import { inches } from '../../src/measure/inch.js';
import { shortPiece } from '../../src/plan/short-piece.js';
import { shortLines, shortVerdict } from '../../src/plan/short-words.js';
import { planOf, project } from '../support/projects.js';

const PLAN = planOf(project('planter-bench'), {});

function row(name: string) {
  const found = PLAN.cutList.find(it => it.name === name);
  if (found === undefined) throw new Error(`no ${name}`);
  return found;
}

function shortBy(name: string, by: number) {
  const it = row(name);
  return shortPiece(it, it.length.value - inches(by), PLAN);
}

describe('a piece that measures short is judged by what its ends meet', () => {
  // As the bench is built: posts stand between the rails, keepers between the posts; slats and the tongues of the
  // panel rails end in the air.
  test.each([
    ['Seat slat', []],
    ['Panel rail', []],
    ['Post', ['panel rail']],
    ['Keeper strip', ['post']],
  ])('the ends of the %s meet: %j', (name, meets) => {
    expect(shortBy(name, 1 / 16)?.meets).toEqual(meets);
  });

  // Common practice: 1/32 in is what a stop gives, a gap of 1/16 in is let be, a blade's width only shows.
  test.each([
    ['Post', 1 / 16, true],
    ['Post', 3 / 32, false],
    ['Seat slat', 1 / 8, true],
    ['Seat slat', 3 / 16, false],
  ])('a %s that is %d in short may be used: %s', (name, by, isGood) => {
    expect(shortBy(name, by)?.isGood).toBe(isGood);
  });

  test('what is as long as it should be is not short', () => {
    expect(shortBy('Post', 0)).toBeUndefined();
    expect(shortBy('Post', -1 / 4)).toBeUndefined();
  });

  test('the answer says where the gap goes, and how a notched piece is marked', () => {
    const post = shortBy('Post', 1 / 16);
    const rail = shortBy('Panel rail', 1 / 16);
    if (post === undefined || rail === undefined) throw new Error('neither is short');
    expect(shortVerdict(post, row('Post'), SIXTEENTHS)).toBe(
      'Use it: a gap of 1/16 in does not weaken it.',
    );
    expect(shortLines(post, SIXTEENTHS, 0).join(' ')).toContain('Its ends meet the panel rail.');
    expect(shortVerdict(rail, row('Panel rail'), SIXTEENTHS)).toContain('only shows');
    expect(shortLines(rail, SIXTEENTHS, 0).join(' ')).toContain(
      'Mark its notches from the board that it meets',
    );
  });

  test('those cut before are measured too; before a first piece there are none', () => {
    const post = shortBy('Post', 1 / 16);
    if (post === undefined) throw new Error('it is not short');
    expect(shortLines(post, SIXTEENTHS, 3).at(-1)).toContain('Measure those cut before.');
    expect(shortLines(post, SIXTEENTHS, 0).join(' ')).not.toContain('before');
  });
});
