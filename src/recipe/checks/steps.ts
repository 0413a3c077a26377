import type { Problem } from '../problem.js';
import type { Recipe, StepRule } from '../recipe.js';
import { type Instances, means, picks } from './instances.js';

/** Parts that no step cuts, notches that no step makes and joints that no step closes. */
export function checkCoverage({ steps }: Recipe, made: Instances): readonly Problem[] {
  return [
    ...made.parts
      .filter(({ path }) => firstCut(steps, path) === undefined)
      .map(({ path, rule }): Problem => ({ kind: { is: 'never-cut', path }, at: rule.at })),
    ...made.notches
      .filter(notch => !steps.some(({ notches }) => notches.some(name => means(name, notch))))
      .map(({ name, rule }): Problem => {
        return { kind: { is: 'never-notched', path: name }, at: rule.at };
      }),
    ...made.joints
      .filter(joint => !steps.some(({ joins }) => joins.some(name => means(name, joint))))
      .map(({ name, rule }): Problem => {
        return { kind: { is: 'never-closed', path: name }, at: rule.at };
      }),
  ];
}

/** Steps that notch, join or set in place what only a later step cuts or notches, and such as wait for a later one. */
export function checkOrder({ steps }: Recipe, made: Instances): readonly Problem[] {
  return steps.flatMap((step, place) => {
    const later = steps.slice(place + 1);
    const now = steps.slice(0, place + 1);
    const uncut = [...partsNeeded(step, made)].filter(path => firstCut(now, path) === undefined);
    return [
      ...uncut.flatMap((path): readonly Problem[] => {
        const cutting = firstCut(later, path);
        if (cutting === undefined) return [];
        return [{ kind: { is: 'used-before-cut', path, step: cutting.id }, at: step.at }];
      }),
      ...notchesTooLate(step, later, made),
      ...waitsForLater(step, now),
    ];
  });
}

/** Steps up to this one, itself among them, that are to wait for it or for a timer of it. */
function waitsForLater(
  { id, before, timers, at }: StepRule,
  now: readonly StepRule[],
): readonly Problem[] {
  const waiting = new Set([before, ...timers.map(timer => timer.before)].flat());
  return now
    .filter(other => waiting.has(other.id))
    .map(other => ({ kind: { is: 'waits-for-later', step: id, other: other.id }, at }));
}

function firstCut(steps: readonly StepRule[], path: string): StepRule | undefined {
  return steps.find(({ cuts }) => cuts.some(selector => picks(selector.path, path)));
}

/** Paths of the parts that have to lie there before this step. */
function partsNeeded(step: StepRule, made: Instances): ReadonlySet<string> {
  const joints = made.joints.filter(joint => step.joins.some(name => means(name, joint)));
  const notches = made.notches.filter(notch => step.notches.some(name => means(name, notch)));
  const set = made.parts.filter(({ path }) =>
    [...step.sets, ...step.loose].some(selector => picks(selector.path, path)),
  );
  return new Set([
    ...joints.flatMap(({ first, second }) => [...first, ...second]),
    ...notches.flatMap(({ first }) => first),
    ...set.map(({ path }) => path),
  ]);
}

/** Notches of the boards that this step joins which are only made in a later step. */
function notchesTooLate(
  step: StepRule,
  later: readonly StepRule[],
  made: Instances,
): readonly Problem[] {
  const joined = made.joints.filter(joint => step.joins.some(name => means(name, joint)));
  const boards = new Set(joined.flatMap(({ first, second }) => [...first, ...second]));
  return made.notches
    .filter(({ first }) => first.some(path => boards.has(path)))
    .flatMap((notch): readonly Problem[] => {
      const named = ({ notches }: StepRule) => notches.some(name => means(name, notch));
      const making = later.find(named);
      if (making === undefined || named(step)) return [];
      const facts = { path: notch.name, step: making.id };
      return [{ kind: { is: 'used-before-notched', ...facts }, at: step.at }];
    });
}
