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
  if (rule.share === 'half' && rule.along === undefined) {
    slate.note({
      kind: { is: 'missing-word', word: 'along', of: 'a notch by halves' },
      at: rule.at,
    });
    return;
  }
  const cut = pickedBoards(parts, byPath.get(rule.cut.path) ?? []);
  const over = pickedBoards(parts, byPath.get(rule.over.path) ?? []);
  let met = false;
  for (const giving of cut) {
    for (const taking of over) {
      if (giving.index !== taking.index && giveWay(rule, giving, taking)) met = true;
    }
  }
  if (met || cut.length === 0 || over.length === 0) return;
  const facts = { notch: rule.name, cut: rule.cut.path, over: rule.over.path };
  slate.note({ kind: { is: 'never-overlaps', ...facts }, at: rule.at });
}

type Board = { readonly index: number; readonly draft: Draft };

/** Takes the overlap of two blanks out of one or both; false where they do not overlap. */
function giveWay(rule: NotchRule, giving: Board, taking: Board): boolean {
  const common = intersect(giving.draft.box, taking.draft.box);
  if (common === undefined) return false;
  const shared = rule.share === 'half' && rule.along !== undefined;
  const { lower, upper } = shared
    ? halves(common, rule.along)
    : { lower: undefined, upper: common };
  giving.draft.notches.push({ rule: rule.id, box: upper, for: taking.index });
  if (lower !== undefined) {
    taking.draft.notches.push({ rule: rule.id, box: lower, for: giving.index });
  }
  return true;
}

function pickedBoards(parts: readonly Draft[], indices: readonly number[]): readonly Board[] {
  return indices.flatMap(index => {
    const draft = parts[index];
    return draft === undefined ? [] : [{ index, draft }];
  });
}

function halves(box: Box, axis: Axis): { readonly lower: Box; readonly upper: Box } {
  const middle = (box.min[axis] + box.max[axis]) / 2;
  return {
    lower: { min: box.min, max: { ...box.max, [axis]: middle } },
    upper: { min: { ...box.min, [axis]: middle }, max: box.max },
  };
}
