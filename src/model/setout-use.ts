import type { Mm } from '../measure/quantities.js';
import { lengthOf, numberOf } from '../recipe/evaluate.js';
import type { PlacedAssembly, Take } from '../recipe/recipe.js';
import type { Value } from '../recipe/values.js';
import { measuredWithin } from './measured.js';
import { unknown } from './setout-ground.js';
import { lengthValue, numberValue, withNames } from './setout-scope.js';
import { Setting } from './setout-setting.js';

/** The assembly that is used, with the sizes given to it; the key is the same for equal ones. */
export type Used = { readonly key: string; readonly setting: Setting };

/**
 * What a use of an assembly stands for, its sizes worked out where it is used. It sees the names of
 * the whole piece and its own, not those of the assembly around it.
 */
export function usedAssembly(setting: Setting, use: PlacedAssembly): Used | undefined {
  const { ground, whole } = setting;
  const assembly = ground.recipe.assemblies.find(({ id }) => id === use.assembly);
  if (assembly === undefined) {
    return ground.slate.note(
      unknown('assembly', { name: use.assembly, near: undefined, at: use.at }),
    );
  }
  const own = sizesGiven(setting, use, assembly.takes);
  if (own === undefined) return undefined;
  const path = `${setting.path}${use.id}.`;
  const measured = [...measuredWithin(ground.measured, path)];
  return {
    key: JSON.stringify([assembly.id, ...own.values(), ...measured]),
    setting: new Setting(ground, assembly, withNames(own, whole), { whole, path }),
  };
}

/** In the order that the assembly takes them. */
function sizesGiven(
  setting: Setting,
  use: PlacedAssembly,
  takes: readonly Take[],
): ReadonlyMap<string, Value> | undefined {
  const { slate } = setting.ground;
  const own = new Map<string, Value>();
  for (const { id, kind } of takes) {
    const measured = setting.ground.measured.get(`${setting.path}${use.id}.${id}`);
    const given = use.sizes.find(({ take }) => take === id);
    if (given === undefined) {
      const facts = { take: id, assembly: use.assembly };
      return slate.note({ kind: { is: 'missing-take', ...facts }, at: use.at });
    }
    const read = kind === 'length' ? lengthOf : numberOf;
    const value = slate.take(measured ?? read(given.formula, setting.scope));
    if (value === undefined) return undefined;
    own.set(id, kind === 'length' ? lengthValue(value) : numberValue(value));
  }
  return own;
}

/** A size by its path, `end_panel.opening_height`; undefined where its use does not stand. */
export function sizeAt(setting: Setting, path: string): Mm | undefined {
  const dot = path.indexOf('.');
  if (dot < 0) {
    const value = setting.scope.find(path);
    const isLength = value !== undefined && 'power' in value && value.power === 1;
    return isLength ? value.value : undefined;
  }
  const { slate } = setting.ground;
  const use = setting.assembly.places.find(({ id }) => id === path.slice(0, dot));
  if (use === undefined || !slate.holds(use.when, setting.scope)) return undefined;
  const used = usedAssembly(setting, use);
  return used === undefined ? undefined : sizeAt(used.setting, path.slice(dot + 1));
}
