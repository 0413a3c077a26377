import { sameLength } from '../measure/tolerance.js';
import type { Scope } from '../recipe/evaluate.js';
import type { Place } from '../recipe/place.js';
import type { Problem } from '../recipe/problem.js';
import type { Value } from '../recipe/values.js';
import { extent } from './box.js';
import type { Box } from './part.js';
import type { Draft } from './setout-draft.js';
import { lengthValue, numberValue } from './setout-scope.js';

/**
 * What texts may name once the piece stands: all names of the whole, `overall.width`, `.depth` and
 * `.height`, and for the boards of a path `seat_slat.count` and `seat_slat.length`. Boards of one path
 * that differ in length have none.
 */
export function standingNames(whole: Scope, drafts: readonly Draft[], overall: Box): Scope {
  const names = new Map<string, Value | Problem>([
    ['overall.width', lengthValue(extent(overall, 'x'))],
    ['overall.depth', lengthValue(extent(overall, 'y'))],
    ['overall.height', lengthValue(extent(overall, 'z'))],
  ]);
  const byPath = new Map<string, { readonly first: Draft; count: number; equal: boolean }>();
  for (const draft of drafts) {
    const known = byPath.get(draft.path);
    if (known === undefined) byPath.set(draft.path, { first: draft, count: 1, equal: true });
    else {
      known.count += 1;
      known.equal &&= sameLength(known.first.length, draft.length);
    }
  }
  for (const [path, { first, count, equal }] of byPath) {
    names.set(`${path}.count`, numberValue(count));
    names.set(`${path}.length`, equal ? lengthValue(first.length) : differ(path, first.at));
  }
  return { find: name => whole.find(name) ?? names.get(name) };
}

function differ(path: string, at: Place): Problem {
  return { kind: { is: 'lengths-differ', path }, at };
}
