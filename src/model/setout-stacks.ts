import type { Section } from '../materials/section.js';
import type { Mm } from '../measure/quantities.js';
import { atMost } from '../measure/tolerance.js';
import type { Scope } from '../recipe/evaluate.js';
import type { StackRule } from '../recipe/recipe.js';
import type { Item, Value } from '../recipe/values.js';
import { boxAt } from './box.js';
import type { Point } from './part.js';
import type { Draft } from './setout-draft.js';
import { sizeOf, stepped } from './setout-parts.js';
import { lengthValue, numberValue, withNames } from './setout-scope.js';
import type { Setting } from './setout-setting.js';
import { stackTo } from './stack.js';

/** A kind of board that layers are cut from. */
type Kind = { readonly board: string; readonly section: Section };

/** The blocks under each thing of a list answer, layer by layer, numbered through. */
export function stackDrafts(setting: Setting, rule: StackRule): readonly Draft[] {
  const { slate, answers } = setting.ground;
  if (rule.runs === 'z') {
    slate.note({ kind: { is: 'wrong-shape', wanted: 'x or y', got: 'z' }, at: rule.at });
    return [];
  }
  const answer = answers[rule.each];
  const items = answer === undefined || answer.kind !== 'items' ? [] : answer.value;
  const kinds = kindsOf(setting, rule);
  const drafts = items.flatMap((item, i) => {
    const scope = withNames(namesOf(item, items.slice(0, i)), setting.scope);
    return blocks(setting, rule, { scope, kinds, number: i + 1 });
  });
  if (!slate.hasRoomFor(drafts.length, rule.at)) return [];
  return drafts.map((draft, i) => ({ ...draft, id: `${rule.id}/${i + 1}` }));
}

type Thing = { readonly scope: Scope; readonly kinds: readonly Kind[]; readonly number: number };

/** The stacks under one thing, from the floor up. */
function blocks(setting: Setting, rule: StackRule, thing: Thing): readonly Draft[] {
  const { slate } = setting.ground;
  const { scope } = thing;
  const length = slate.length(rule.length, scope);
  const height = slate.length(rule.height, scope);
  const corner = slate.point(rule.corner, scope);
  if (length === undefined || height === undefined || corner === undefined) return [];
  const layers = layersOf(setting, rule, { ...thing, height });
  if (layers.length === 0) return [];
  if (atMost(length, 0)) {
    slate.note({ kind: { is: 'no-length', part: rule.name, length }, at: rule.length.at });
    return [];
  }
  const corners =
    rule.repeat === undefined
      ? [corner]
      : stepped(setting, corner, rule.repeat, { what: rule.name, scope });
  return corners.flatMap(at => pile(rule, length, layers, at));
}

function layersOf(
  setting: Setting,
  rule: StackRule,
  { kinds, number: item, height }: Thing & { readonly height: Mm },
): readonly Kind[] {
  const { slate } = setting.ground;
  const result = stackTo(
    height,
    kinds.map(({ section }) => section.thickness),
  );
  if (result.ok) {
    return result.layers.flatMap(layer =>
      kinds.filter(({ section }) => section.thickness === layer).slice(0, 1),
    );
  }
  if ('tooTall' in result) {
    const by = result.tooTall;
    slate.note({ kind: { is: 'stack-too-tall', stack: rule.name, item, by }, at: rule.height.at });
  } else {
    slate.note({ kind: { is: 'stack-too-high', stack: rule.name, item }, at: rule.height.at });
  }
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

/** `item.height`, `item.number`, and `item.before.height` for all the things before it together. */
function namesOf(item: Item, before: readonly Item[]): ReadonlyMap<string, Value> {
  const names = new Map<string, Value>([['item.number', numberValue(before.length + 1)]]);
  for (const [field, length] of Object.entries(item)) {
    const sum = before.reduce((total, other) => total + (other[field] ?? 0), 0);
    names.set(`item.${field}`, lengthValue(length));
    names.set(`item.before.${field}`, lengthValue(sum));
  }
  return names;
}
