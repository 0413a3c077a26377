import { readFileSync } from 'node:fs';
import { expect } from 'vitest';
import { inches } from '../../src/measure/inch.js';
import { AXES, type Box, type Model, type Part } from '../../src/model/part.js';
import { type SetOut, type SetOutOptions, setOut } from '../../src/model/setout.js';
import { problemLine } from '../../src/recipe/problem-words.js';
import { usualAnswers } from '../../src/recipe/questions.js';
import { readRecipe } from '../../src/recipe/read.js';
import type { Recipe } from '../../src/recipe/recipe.js';
import type { Answer, Answers } from '../../src/recipe/values.js';
import { corners } from './boards.js';

/** A recipe from its text; what is wrong with it is told as a person would read it. */
export function recipeOf(text: string): Recipe {
  const read = readRecipe(text);
  if (read.ok) return read.recipe;
  throw new Error(read.problems.map(problem => problemLine(problem, 'recipe')).join('\n'));
}

export const BENCH = recipeOf(
  readFileSync(new URL('../../projects/planter-bench/recipe.yaml', import.meta.url), 'utf8'),
);

/** An answer in inches, a choice, a list of pots in inches, or a yes. */
export type Said =
  | number
  | string
  | boolean
  | readonly (readonly [height: number, diameter: number])[];

export function said(value: Said): Answer {
  if (typeof value === 'number') return { kind: 'length', value: inches(value) };
  if (typeof value === 'string') return { kind: 'choice', value };
  if (typeof value === 'boolean') return { kind: 'yes', value };
  const pots = value.map(([height, diameter]) => ({
    height: inches(height),
    diameter: inches(diameter),
  }));
  return { kind: 'items', value: pots };
}

/** The bench with its usual answers but for these. */
export function bench(
  changed: Readonly<Record<string, Said>> = {},
  options: SetOutOptions = {},
): SetOut {
  const answers: Answers = {
    ...usualAnswers(BENCH),
    ...Object.fromEntries(Object.entries(changed).map(([id, value]) => [id, said(value)])),
  };
  return setOut(BENCH, answers, options);
}

/** What stands there; a test that wants it to stand fails with the problems in words. */
export function standing(out: SetOut): Extract<SetOut, { ok: true }> {
  if (out.ok) return out;
  throw new Error(out.problems.map(problem => problemLine(problem, 'recipe')).join('\n'));
}

export function partOf(model: Model, id: string): Part {
  const part = model.parts.find(one => one.id === id);
  if (part === undefined) throw new Error(`no part ${id}`);
  return part;
}

/** A box in inches. */
export function inch(min: readonly number[], max: readonly number[]): Box {
  return corners(min.map(inches), max.map(inches));
}

/** The same box, to a billionth of a mm: sums of inches are a hair off in binary. */
export function expectBox(box: Box, expected: Box): void {
  for (const axis of AXES) {
    expect(box.min[axis]).toBeCloseTo(expected.min[axis], 9);
    expect(box.max[axis]).toBeCloseTo(expected.max[axis], 9);
  }
}
