import { readRecipe } from '../../src/recipe/read.js';
import type { Recipe } from '../../src/recipe/recipe.js';

/** A duckboard: slats on two runners. One question of each kind that is typed or chosen. */
export const DUCKBOARD = `
recipe: 1
id: duckboard
title: Duckboard
about: Slats on two runners, to stand on with dry feet.
ask:
  size:
    title: The size
    place: { kind: choice, say: "Where will it lie?", why: "Wet ground rots wood.", usual: porch, options: { porch: { say: Porch, why: stays dry }, lawn: { say: Lawn, why: always damp } } }
    long: { kind: length, say: "How long is it?", why: "As long as the door is wide.", usual: 36 in, from: 24 in, to: 60 in }
    edge: { kind: yes, say: "Shall the edges be rounded?", why: "Bare feet.", usual: "no" }
    depth: { kind: length, say: "How deep is it on the lawn?", why: "Two feet side by side.", usual: 20 in, from: 12 in, to: 30 in, when: '= place = "lawn"' }
  wood:
    title: The wood
    offers: standard
boards: { runner: 2x4, slat: 1x4 }
parts:
  runner: { name: Runner, board: runner, length: = long, runs: x, face: z, at: [0, 0, 0], repeat: { count: 2, step: [0, 16 in, 0] } }
  slat: { name: Slat, board: slat, length: 19-1/2 in, runs: y, face: z, at: [0, 0, = runner.thickness], repeat: { layout: deck } }
layouts:
  deck: { spread: slat, along: x, from: 0 in, over: = long, gap: { want: 1/2 in, from: 1/4 in, to: 3/4 in }, ends: flush }
joints:
  hold: { name: Slat to runner, from: slat, into: runner, with: screw, each: 2, glue: no, drive: z }
steps:
  - { id: cut-runners, phase: cut, title: Cut the runners, who: lead, say: [ "Cut both to one stop." ], why: "Equal runners.", cuts: [runner] }
  - { id: cut-slats, phase: cut, title: Cut the slats, who: lead, say: [ "Cut all to one stop." ], why: "Equal slats.", cuts: [slat] }
  - { id: screw, phase: assemble, title: Screw the slats on, who: both, say: [ "Start at one end." ], why: "Square.", joins: [hold], sets: [slat] }
`;

export function duckboard(): Recipe {
  const read = readRecipe(DUCKBOARD);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.recipe;
}
