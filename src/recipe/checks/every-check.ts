import type { Problem } from '../problem.js';
import type { Recipe } from '../recipe.js';
import { checkAxes, checkSections } from './boards.js';
import { checkCircles } from './circular.js';
import { checkDuplicates } from './duplicates.js';
import type { Site } from './formula-sites.js';
import { checkFits, checkFormulas } from './formulas.js';
import type { Instances } from './instances.js';
import { checkMeasures } from './measures.js';
import { checkRanges } from './ranges.js';
import { checkKnown, checkReferences, type Known } from './references.js';

/** A recipe with what its checks look at over and over. */
export type View = {
  readonly recipe: Recipe;
  readonly known: Known;
  readonly made: Instances;
  readonly sites: readonly Site[];
};

/** Checks of what a recipe says, each giving all the problems it finds. */
export const SAYING_CHECKS: readonly ((view: View) => readonly Problem[])[] = [
  ({ recipe, sites }) => checkFormulas(recipe, sites),
  ({ recipe, sites }) => checkFits(recipe.fit, sites),
  ({ recipe }) => checkCircles(recipe),
  ({ recipe, made }) => checkReferences(recipe, made),
  ({ recipe }) => checkMeasures(recipe),
  ({ recipe, known }) => checkKnown(recipe, known),
  ({ recipe, known }) => checkSections(recipe, known.sections),
  ({ recipe }) => checkDuplicates(recipe),
  ({ recipe }) => checkAxes(recipe),
  ({ recipe }) => checkRanges(recipe),
];
