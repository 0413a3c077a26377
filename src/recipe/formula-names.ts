import type { Node } from './formula.js';
import type { Place } from './place.js';

export type NameUse = { readonly name: string; readonly at: Place };

/** Every name in a formula, as often as it stands there. */
export function formulaNames(node: Node): readonly NameUse[] {
  switch (node.kind) {
    case 'name':
      return [node];
    case 'minus':
    case 'not':
      return formulaNames(node.of);
    case 'binary':
      return [...formulaNames(node.left), ...formulaNames(node.right)];
    case 'call':
      return node.of.flatMap(formulaNames);
    default:
      return [];
  }
}
