import type { PlacedAssembly } from '../recipe/recipe.js';
import type { Spread } from './part.js';
import { type Built, type Draft, indicesByPath, type JointDraft } from './setout-draft.js';
import { declareNotches } from './setout-notches.js';
import { ownBoards, ownSpreads } from './setout-own.js';
import { placeAt } from './setout-place.js';
import type { Setting } from './setout-setting.js';
import { usedAssembly } from './setout-use.js';

/** Assemblies that are built already, by name and sizes: ten equal panels are worked out once. */
export type Workshop = {
  readonly built: Map<string, Built>;
  /** Assemblies that are being built around this one, from the outside in. */
  readonly around: readonly string[];
};

const NOTHING: Built = { parts: [], spreads: [], joints: [] };

/** Everything that stands in an assembly, in its own frame: what it places first, then its own boards. */
export function buildAssembly(setting: Setting, workshop: Workshop): Built {
  const { assembly, ground } = setting;
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
  parts.push(...ownBoards(setting));
  if (!ground.slate.hasRoomFor(parts.length, assembly.at)) return NOTHING;
  spreads.push(...ownSpreads(setting, parts));
  const byPath = indicesByPath(parts);
  declareNotches(assembly.notches, { parts, byPath, slate: ground.slate });
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
    if (corner === undefined) return [];
    if (!slate.hasRoomFor(offset + built.parts.length, use.at)) return [];
    const standing = placeAt(built, { use: use.id, stand, corner, offset });
    offset += standing.parts.length;
    return [standing];
  });
}

function builtFor(setting: Setting, use: PlacedAssembly, { built, around }: Workshop): Built {
  if (around.includes(use.assembly)) {
    const kind = { is: 'inside-itself', assembly: use.assembly } as const;
    setting.ground.slate.note({ kind, at: use.at });
    return NOTHING;
  }
  const used = usedAssembly(setting, use);
  if (used === undefined) return NOTHING;
  const known = built.get(used.key);
  if (known !== undefined) return known;
  const fresh = buildAssembly(used.setting, { built, around: [...around, use.assembly] });
  built.set(used.key, fresh);
  return fresh;
}
