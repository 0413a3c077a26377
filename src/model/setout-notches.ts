import type { NotchRule } from '../recipe/recipe.js';
import { intersect } from './box.js';
import type { Axis, Box } from './part.js';
import type { Draft } from './setout-draft.js';
import type { Slate } from './setout-slate.js';

type Picked = {
  readonly parts: readonly Draft[];
  readonly byPath: ReadonlyMap<string, readonly number[]>;
  readonly slate: Slate;
};

/**
 * Lets boards give way to others where their blanks overlap. Shared by halves, those that are cut lose
 * the half toward the plus end of the axis and those they lie over lose the other.
 */
export function declareNotches(rules: readonly NotchRule[], picked: Picked): void {
  for (const rule of rules) declare(rule, picked);
}

function declare(rule: NotchRule, { parts, byPath, slate }: Picked): void {
  const cut = byPath.get(rule.cut.path) ?? [];
  const over = byPath.get(rule.over.path) ?? [];
  const axis = rule.along;
  if (rule.share === 'half' && axis === undefined) {
    slate.note({
      kind: { is: 'missing-word', word: 'along', of: 'a notch by halves' },
      at: rule.at,
    });
    return;
  }
  let met = false;
  for (const giving of cut) {
    for (const taking of over) {
      const common = overlap(parts, giving, taking);
      if (common === undefined) continue;
      met = true;
      if (rule.share === 'all' || axis === undefined) {
        take(parts, giving, { rule: rule.id, box: common, for: taking });
      } else {
        const { lower, upper } = halves(common, axis);
        take(parts, giving, { rule: rule.id, box: upper, for: taking });
        take(parts, taking, { rule: rule.id, box: lower, for: giving });
      }
    }
  }
  if (met || cut.length === 0 || over.length === 0) return;
  const facts = { notch: rule.name, cut: rule.cut.path, over: rule.over.path };
  slate.note({ kind: { is: 'never-overlaps', ...facts }, at: rule.at });
}

function overlap(parts: readonly Draft[], a: number, b: number): Box | undefined {
  const one = parts[a];
  const other = parts[b];
  if (a === b || one === undefined || other === undefined) return undefined;
  return intersect(one.box, other.box);
}

function take(parts: readonly Draft[], from: number, notch: Draft['notches'][number]): void {
  parts[from]?.notches.push(notch);
}

function halves(box: Box, axis: Axis): { readonly lower: Box; readonly upper: Box } {
  const middle = (box.min[axis] + box.max[axis]) / 2;
  return {
    lower: { min: box.min, max: { ...box.max, [axis]: middle } },
    upper: { min: { ...box.min, [axis]: middle }, max: box.max },
  };
}
