import { spawnSync } from 'node:child_process';
import { expect } from 'vitest';
import type { Step } from '../../src/plan/plan.js';
import type { BenchScreen } from './at-the-bench.js';

const START = new URL('../../src/start.mjs', import.meta.url).pathname;

/** The steps of the bench as the command line plans it anew, with these words added. */
export function freshSteps(...words: readonly string[]): readonly Step[] {
  const args = [START, 'plan', 'planter-bench', '--as', 'json', ...words];
  const { stdout, stderr, status } = spawnSync(process.execPath, args, {
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
  });
  if (status !== 0) throw new Error(stderr);
  return JSON.parse(stdout).steps;
}

/**
 * Every figure that the page of a step shows is the one of a plan made anew: its title, the large number,
 * and each setting by its name. Which board a piece comes from, how far in it may begin to leave a knot out, and
 * what has to be clamped, is no figure of the piece: a builder has the boards that were bought.
 */
export function expectFresh(screen: BenchScreen, steps: readonly Step[]): void {
  const step = steps[(screen.step ?? 0) - 1];
  if (step === undefined) throw new Error(`no step ${screen.step} in a plan of ${steps.length}`);
  expect(screen.steps).toBe(steps.length);
  expect(screen.words).toContain(step.title);
  if (screen.words.includes(` Before: ${step.title}`)) return;
  const rows = screen.text.split('\n').filter(row => !row.startsWith(step.title));
  for (const { name } of step.settings.filter(({ name }) => name !== 'Knots' && name !== 'Clamp')) {
    const texts = step.settings.filter(one => one.name === name).map(({ text }) => pieces(text));
    const shown = rows.filter(row => row.startsWith(`${name}  `) || row.startsWith(`${name} `));
    for (const row of shown) {
      // A picture may stand beside it.
      const [words = ''] = row.slice(name.length).trim().split(/ {4,}/);
      const said = pieces(words);
      expect(
        texts.some(text => text.startsWith(said) || said.startsWith(text)),
        `step ${screen.step}, "${row}", planned anew: ${texts.join(' | ')}`,
      ).toBe(true);
    }
  }
}

/** `12 x panel rail: 6 each from boards 3 and 4` is told apart from which boards they are. */
export function pieces(text: string): string {
  return text.replace(/: (\d+ (each )?)?from boards? \d.*$/, '');
}
