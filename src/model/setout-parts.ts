import type { Section } from '../materials/section.js';
import type { Mm } from '../measure/quantities.js';
import type { PartRule, Repeat } from '../recipe/recipe.js';
import { boxAt } from './box.js';
import { boardAxes } from './frame-of-board.js';
import type { Axis, Point } from './part.js';
import type { Draft } from './setout-draft.js';
import type { Setting } from './setout-setting.js';

/** All boards of one part rule, numbered from 1; none where it is left out or a problem was noted. */
export function partDrafts(setting: Setting, rule: PartRule): readonly Draft[] {
  const { scope, ground } = setting;
  const { slate } = ground;
  if (!slate.holds(rule.when, scope)) return [];
  const section = slate.take(ground.sectionOf(rule.board, setting.whole, rule.at));
  const corners = cornersOf(setting, rule);
  if (section === undefined || corners.length === 0) return [];
  const length = slate.boardLength(rule.length, scope, rule.name);
  if (length === undefined) return [];
  const size = sizeOf(rule, section, length);
  return corners.map((corner, i) => ({
    id: `${rule.id}/${i + 1}`,
    path: rule.id,
    name: rule.name,
    board: rule.board,
    section,
    runs: rule.runs,
    face: rule.face,
    length,
    box: boxAt(corner, size),
    notches: [],
    loose: rule.loose,
    at: rule.at,
  }));
}

/** Extents of a board that runs along one axis and shows its wide face to another. */
export function sizeOf(
  way: { readonly runs: Axis; readonly face: Axis },
  section: Section,
  length: Mm,
): Point {
  const axes = boardAxes(way);
  const size = { x: 0, y: 0, z: 0 };
  size[axes.along] = length;
  size[axes.across] = section.width;
  size[axes.through] = section.thickness;
  return size;
}

/** Corners a step apart: `count` of them from the first on. */
export function stepped(
  setting: Setting,
  first: Point,
  repeat: Extract<Repeat, { kind: 'count' }>,
  { what, scope }: { readonly what: string; readonly scope: Setting['scope'] },
): readonly Point[] {
  const { slate } = setting.ground;
  const count = slate.count(repeat.count, scope, what);
  const step = slate.point(repeat.step, scope);
  if (count === undefined || step === undefined) return [];
  if (!slate.hasRoomFor(count, repeat.count.at)) return [];
  return Array.from({ length: count }, (_, i) => ({
    x: first.x + i * step.x,
    y: first.y + i * step.y,
    z: first.z + i * step.z,
  }));
}

function cornersOf(setting: Setting, rule: PartRule): readonly Point[] {
  const { scope } = setting;
  const { slate } = setting.ground;
  const first = slate.point(rule.corner, scope);
  if (first === undefined) return [];
  const { repeat } = rule;
  if (repeat === undefined) return [first];
  if (repeat.kind === 'count') return stepped(setting, first, repeat, { what: rule.name, scope });
  const row = slate.take(setting.row(repeat.layout, rule.at));
  if (row === undefined || !slate.hasRoomFor(row.spacing.count, rule.at)) return [];
  return row.spacing.marks.map(mark => ({ ...first, [row.rule.along]: row.from + mark }));
}
