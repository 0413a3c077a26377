import { describe, expect, test } from 'vitest';
import { TRADE_WORDS } from '../../src/materials/trade-words.js';
import { wordsIn } from '../../src/materials/words-met.js';
import { wordsOfSteps } from '../../src/plan/step-words.js';
import { benchPlan } from '../support/open-build.js';

function met(...texts: readonly string[]) {
  return wordsIn(texts).map(({ word }) => word);
}

describe('words of the trade', () => {
  test('stand in the order of the alphabet, each once, each explained in a sentence', () => {
    const words = TRADE_WORDS.map(({ word }) => word);
    expect(words).toEqual([...new Set(words)].sort((a, b) => a.localeCompare(b)));
    for (const { word, means } of TRADE_WORDS) expect(means, word).toMatch(/^[A-Z].*\.$/);
  });

  test.each([
    ['Cut the Rails', ['rail']],
    ['a trailer full of boards', []],
    ['the glue-up of the panels', ['glue-up', 'panel']],
    ['Drill the clearance hole, then the pilot hole.', ['clearance hole', 'pilot hole']],
    ['half-lap', ['lap']],
    ['overlap', []],
  ])('"%s" has %j', (text, words) => {
    expect(met(text)).toEqual(words);
  });

  test('an explanation needs no word that is harder than the one it explains', () => {
    for (const { word, means } of TRADE_WORDS)
      expect(means.toLowerCase().split(/\W+/), word).not.toContain('kerf');
  });

  /** Words that a first-time helper asked about, by the field cases on notches, glue and screws. */
  test.each([
    'notch',
    'shoulder',
    'tongue',
    'flush',
    'clearance hole',
    'stop',
    'diagonal',
    'sealer',
  ])('the bench explains "%s"', word => {
    expect(wordsOfSteps(benchPlan().steps).map(it => it.word)).toContain(word);
  });
});
