import { expect } from 'vitest';
import { problemLine } from '../../../src/recipe/problem-words.js';
import { readRecipe } from '../../../src/recipe/read.js';
import type { Recipe } from '../../../src/recipe/recipe.js';

/** A stool of one slat on two legs: small, complete, and without a problem. Line 1 is `recipe: 1`. */
export const STOOL = `recipe: 1
id: stool
title: Stool
about: A board on two legs.
ask:
  size:
    title: The size
    seat:
      kind: length
      say: How long is it?
      why: One person needs 16 in.
      usual: 18 in
      from: 12 in
      to: 24 in
    look:
      kind: choice
      say: Which look?
      usual: plain
      options:
        plain: { say: Plain, why: quick }
        heavy: { say: Heavy legs, why: strong }
let:
  leg_height: { is: = 17 in - slat.thickness, why: the slat lies on the legs }
boards:
  slat: 2x6
  leg: '= if(look = "heavy", "4x4", "2x4")'
parts:
  slat:
    name: Slat
    board: slat
    length: = seat
    runs: x
    face: z
    at: [0, 0, = leg_height]
  leg:
    name: Leg
    board: leg
    length: = leg_height
    runs: z
    face: x
    at: [0, 0, 0]
    repeat: { count: 2, step: [= seat - leg.thickness, 0, 0] }
joints:
  seat_fix: { name: Slat to leg, from: slat, into: leg, with: screw, each: 2, glue: yes, drive: z }
steps:
  - id: cut
    phase: cut
    title: Cut {leg.count} legs
    who: lead
    cuts: [slat, leg]
    say:
      - Cut the slat {seat} long.
  - id: join
    phase: assemble
    title: Screw it together
    who: both
    joins: [seat_fix]
    sets: [slat, leg]
    say: [Drive the screws.]
`;

/** The stool with some of its text replaced; the text has to be there. */
export function stool(...changes: readonly (readonly [from: string, to: string])[]): string {
  return changes.reduce((text, [from, to]) => {
    if (!text.includes(from)) throw new Error(`the stool has no ${from}`);
    return text.replace(from, to);
  }, STOOL);
}

/** The recipe in a text that has to read well. */
export function recipeOf(text: string): Recipe {
  const read = readRecipe(text);
  expect(read.ok ? [] : read.problems.map(problem => problemLine(problem, 'recipe.yaml'))).toEqual(
    [],
  );
  if (!read.ok) throw new Error('not read');
  return read.recipe;
}

/** What is wrong with a text, one line each, without the name of the file. */
export function complaints(text: string): readonly string[] {
  const read = readRecipe(text);
  return read.ok ? [] : read.problems.map(problem => problemLine(problem, '').slice(1));
}

const MARK = '‸';

/**
 * A text without its marks, and the line and column where each stood, so that a test can show the place
 * of a mistake instead of counting lines.
 */
export function marked(text: string): {
  readonly text: string;
  readonly places: readonly string[];
} {
  const places = text.split('\n').flatMap((line, at) =>
    line
      .split(MARK)
      .slice(0, -1)
      .map((_, mark, before) => {
        const column = before.slice(0, mark + 1).join('').length + 1;
        return `${at + 1}:${column}`;
      }),
  );
  return { text: text.replaceAll(MARK, ''), places };
}
