import type { Section } from '../materials/section.js';
import type { Mm } from '../measure/quantities.js';
import type { StackRule } from '../recipe/recipe.js';
import { boxAt } from './box.js';
import type { Point } from './part.js';
import type { Draft } from './setout-draft.js';
import { type Thing, thingsOf } from './setout-items.js';
import { sizeOf, stepped } from './setout-parts.js';
import type { Setting } from './setout-setting.js';
import { stackTo } from './stack.js';

/** A kind of board that layers are cut from. */
type Kind = { readonly board: string; readonly section: Section };

/** The blocks under each thing of a list answer, layer by layer, numbered through. */
export function stackDrafts(setting: Setting, rule: StackRule): readonly Draft[] {
  const { slate } = setting.ground;
  if (rule.runs === 'z') {
    slate.note({ kind: { is: 'wrong-shape', wanted: 'x or y', got: 'z' }, at: rule.at });
    return [];
  }
  const kinds = kindsOf(setting, rule);
  const piles = thingsOf(setting, rule).map(thing => ({
    wanted: slate.length(rule.height, thing.scope) ?? 0,
    drafts: blocks(setting, rule, kinds, thing),
  }));
  const drafts = piles.flatMap(pile => pile.drafts);
  if (!slate.hasRoomFor(drafts.length, rule.at)) return [];
  setting.ground.stacks.push({
    rule: rule.id,
    things: piles.map(pile => ({ wanted: pile.wanted, blocks: pile.drafts.length })),
  });
  return drafts.map((draft, i) => ({ ...draft, id: `${rule.id}/${i + 1}` }));
}

/** The stacks under one thing, from the floor up. */
function blocks(
  setting: Setting,
  rule: StackRule,
  kinds: readonly Kind[],
  thing: Thing,
): readonly Draft[] {
  const { slate } = setting.ground;
  const { scope } = thing;
  const height = slate.length(rule.height, scope);
  const corner = slate.point(rule.corner, scope);
  if (height === undefined || corner === undefined) return [];
  const layers = layersOf(setting, rule, { kinds, height, item: thing.number });
  if (layers.length === 0) return [];
  const length = slate.boardLength(rule.length, scope, rule.name);
  if (length === undefined) return [];
  const corners =
    rule.repeat === undefined
      ? [corner]
      : stepped(setting, corner, rule.repeat, { what: rule.name, scope });
  return corners.flatMap(at => pile(rule, length, layers, at));
}

function layersOf(
  setting: Setting,
  rule: StackRule,
  {
    kinds,
    height,
    item,
  }: { readonly kinds: readonly Kind[]; readonly height: Mm; readonly item: number },
): readonly Kind[] {
  const { slate } = setting.ground;
  const thicknesses = kinds.map(({ section }) => section.thickness);
  const result = stackTo(height, thicknesses);
  if (result.ok) {
    return result.layers.flatMap(layer =>
      kinds.filter(({ section }) => section.thickness === layer).slice(0, 1),
    );
  }
  const stack = rule.name;
  const { at } = rule.height;
  if (!('tooTall' in result)) slate.note({ kind: { is: 'stack-too-high', stack, item }, at });
  else slate.note({ kind: { is: 'stack-too-tall', stack, item, by: result.tooTall }, at });
  return [];
}

function pile(
  rule: StackRule,
  length: Mm,
  layers: readonly Kind[],
  corner: Point,
): readonly Draft[] {
  let { z } = corner;
  return layers.map(({ board, section }) => {
    const way = { runs: rule.runs, face: 'z' } as const;
    const box = boxAt({ ...corner, z }, sizeOf(way, section, length));
    z = box.max.z;
    const { id, name, at } = rule;
    return {
      id,
      path: id,
      name,
      board,
      section,
      ...way,
      length,
      box,
      notches: [],
      loose: true,
      at,
    };
  });
}

function kindsOf(setting: Setting, rule: StackRule): readonly Kind[] {
  const { ground, whole } = setting;
  return rule.boards.flatMap(board => {
    const section = ground.slate.take(ground.sectionOf(board, whole, rule.at));
    return section === undefined ? [] : [{ board, section }];
  });
}
