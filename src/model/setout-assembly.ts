import { lengthOf, numberOf, type Scope } from '../recipe/evaluate.js';
import type { PlacedAssembly } from '../recipe/recipe.js';
import type { Value } from '../recipe/values.js';
import type { Spread } from './part.js';
import { type Built, type Draft, indicesByPath, type JointDraft } from './setout-draft.js';
import { unknown } from './setout-ground.js';
import { declareNotches } from './setout-notches.js';
import { partDrafts } from './setout-parts.js';
import { placeAt } from './setout-place.js';
import { lengthValue, numberValue, withNames } from './setout-scope.js';
import { Setting } from './setout-setting.js';
import { stackDrafts } from './setout-stacks.js';

/** Assemblies that are built already, by name and sizes: ten equal panels are worked out once. */
export type Workshop = {
  readonly whole: Scope;
  readonly built: Map<string, Built>;
  /** Assemblies that are being built around this one, from the outside in. */
  readonly around: readonly string[];
};

const NOTHING: Built = { parts: [], spreads: [], joints: [] };

/** Everything that stands in an assembly, in its own frame: what it places first, then its own boards. */
export function buildAssembly(setting: Setting, workshop: Workshop): Built {
  const { assembly } = setting;
  const parts: Draft[] = [];
  const spreads: Spread[] = [];
  const joints: JointDraft[] = [];
  for (const use of assembly.places) {
    for (const standing of placements(setting, use, { workshop, from: parts.length })) {
      parts.push(...standing.parts);
      spreads.push(...standing.spreads);
      joints.push(...standing.joints);
    }
  }
  for (const rule of assembly.parts) parts.push(...partDrafts(setting, rule));
  for (const rule of assembly.stacks) parts.push(...stackDrafts(setting, rule));
  if (!setting.ground.slate.hasRoomFor(parts.length, assembly.at)) return NOTHING;
  spreads.push(...ownSpreads(setting, parts));
  const byPath = indicesByPath(parts);
  declareNotches(assembly.notches, { parts, byPath, slate: setting.ground.slate });
  for (const rule of assembly.joints) {
    const from = byPath.get(rule.from.path) ?? [];
    const into = byPath.get(rule.into.path) ?? [];
    joints.push({ rule, drive: rule.drive, from, into, scope: setting.scope });
  }
  return { parts, spreads, joints };
}

/** One use of an assembly on each of its stands. */
function placements(
  setting: Setting,
  use: PlacedAssembly,
  { workshop, from }: { readonly workshop: Workshop; readonly from: number },
): readonly Built[] {
  const { slate } = setting.ground;
  if (!slate.holds(use.when, setting.scope)) return [];
  const built = builtFor(setting, use, workshop);
  let offset = from;
  return use.stands.flatMap(stand => {
    const corner = slate.point(stand.corner, setting.scope);
    if (corner === undefined || !slate.hasRoomFor(offset + built.parts.length, use.at)) return [];
    const standing = placeAt(built, { use: use.id, stand, corner, offset });
    offset += standing.parts.length;
    return [standing];
  });
}

function builtFor(setting: Setting, use: PlacedAssembly, workshop: Workshop): Built {
  const { ground } = setting;
  const assembly = ground.recipe.assemblies.find(({ id }) => id === use.assembly);
  if (assembly === undefined) {
    ground.slate.note(unknown('assembly', { name: use.assembly, near: undefined, at: use.at }));
    return NOTHING;
  }
  if (workshop.around.includes(assembly.id)) {
    ground.slate.note({ kind: { is: 'inside-itself', assembly: assembly.id }, at: use.at });
    return NOTHING;
  }
  const own = sizesGiven(setting, use, assembly.takes);
  if (own === undefined) return NOTHING;
  const key = JSON.stringify([assembly.id, ...own.values()]);
  const known = workshop.built.get(key);
  if (known !== undefined) return known;
  const inner = new Setting(ground, assembly, withNames(own, workshop.whole), workshop.whole);
  const around = [...workshop.around, assembly.id];
  const built = buildAssembly(inner, { ...workshop, around });
  workshop.built.set(key, built);
  return built;
}

/** The sizes that a use gives, worked out where it stands, in the order that the assembly takes them. */
function sizesGiven(
  setting: Setting,
  use: PlacedAssembly,
  takes: readonly { readonly id: string; readonly kind: 'length' | 'count' }[],
): ReadonlyMap<string, Value> | undefined {
  const { slate } = setting.ground;
  const own = new Map<string, Value>();
  for (const { id, kind } of takes) {
    const given = use.sizes.find(({ take }) => take === id);
    if (given === undefined) {
      const facts = { take: id, assembly: use.assembly };
      return slate.note({ kind: { is: 'missing-take', ...facts }, at: use.at });
    }
    const read = kind === 'length' ? lengthOf : numberOf;
    const value = slate.take(read(given.formula, setting.scope));
    if (value === undefined) return undefined;
    own.set(id, kind === 'length' ? lengthValue(value) : numberValue(value));
  }
  return own;
}

/** The rows of this assembly whose pieces stand there. */
function ownSpreads(setting: Setting, parts: readonly Draft[]): readonly Spread[] {
  const { assembly, ground } = setting;
  return assembly.layouts.flatMap(({ id, at, spread }) => {
    if (!parts.some(part => part.path === spread)) return [];
    const row = ground.slate.take(setting.row(id, at));
    if (row === undefined) return [];
    const { over, piece, ends, want, least, most } = row.ask;
    const { count, gap, endGap, marks } = row.spacing;
    const rule = { layout: id, spreads: spread, within: '' };
    return [{ ...rule, over, piece, count, gap, ends, endGap, marks, want, least, most }];
  });
}
