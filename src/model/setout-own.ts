import type { Spread } from './part.js';
import type { Draft } from './setout-draft.js';
import { partDrafts } from './setout-parts.js';
import type { Setting } from './setout-setting.js';
import { stackDrafts } from './setout-stacks.js';

/** The boards that an assembly names itself: its parts, then its stacks. */
export function ownBoards(setting: Setting): readonly Draft[] {
  const { parts, stacks } = setting.assembly;
  return [
    ...parts.flatMap(rule => partDrafts(setting, rule)),
    ...stacks.flatMap(rule => stackDrafts(setting, rule)),
  ];
}

/** The rows of an assembly whose pieces are among these boards. */
export function ownSpreads(setting: Setting, boards: readonly Draft[]): readonly Spread[] {
  const { assembly, ground } = setting;
  return assembly.layouts.flatMap(({ id, at, spread }) => {
    if (!boards.some(board => board.path === spread)) return [];
    const row = ground.slate.take(setting.row(id, at));
    if (row === undefined) return [];
    const { over, piece, ends, want, least, most } = row.ask;
    const { count, gap, endGap, marks } = row.spacing;
    const rule = { layout: id, spreads: spread, within: '' };
    return [{ ...rule, over, piece, count, gap, ends, endGap, marks, want, least, most }];
  });
}
