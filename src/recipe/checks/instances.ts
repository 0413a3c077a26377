import type { Assembly, JointRule, NotchRule, PartRule, Recipe, StackRule } from '../recipe.js';

/** A part, wherever the use of its assembly stands: `planter_box.side.post`. */
export type PartUse = { readonly path: string; readonly rule: PartRule | StackRule };

/** A joint or notch in one use of its assembly; the paths are those of the parts that it picks. */
export type RuleUse<Rule> = {
  /** `planter_box.side.corner`. */
  readonly name: string;
  readonly rule: Rule;
  readonly first: readonly string[];
  readonly second: readonly string[];
};

/** Everything that a recipe makes, each use of an assembly once, however often it stands there. */
export type Instances = {
  readonly parts: readonly PartUse[];
  readonly joints: readonly RuleUse<JointRule>[];
  readonly notches: readonly RuleUse<NotchRule>[];
  /** Paths of parts and of uses. */
  readonly paths: readonly string[];
  /** Assemblies that stand somewhere. */
  readonly used: ReadonlySet<string>;
  /** An assembly that stands inside itself. */
  readonly inItself: Assembly | undefined;
  readonly tooMany: boolean;
};

/** More than this no program can set out in good time, and no builder would build. */
export const MOST_USES = 1500;

/** True when a selector names this path, or a use of an assembly that it lies in. */
export function picks(selector: string, path: string): boolean {
  return path === selector || path.startsWith(`${selector}.`);
}

/** True when a step that names a joint or notch so means this one, as in `end_panel.corner`. */
export function means(name: string, { rule, first }: RuleUse<{ readonly id: string }>): boolean {
  const dot = name.lastIndexOf('.');
  if (name.slice(dot + 1) !== rule.id) return false;
  return dot < 0 || first.some(path => picks(name.slice(0, dot), path));
}

export function instances(recipe: Recipe): Instances {
  const walk = new Walk(recipe.assemblies);
  walk.enter(recipe.whole, '', []);
  return walk;
}

class Walk implements Instances {
  readonly parts: PartUse[] = [];
  readonly joints: RuleUse<JointRule>[] = [];
  readonly notches: RuleUse<NotchRule>[] = [];
  readonly paths: string[] = [];
  readonly used = new Set<string>();
  inItself: Assembly | undefined;
  private readonly assemblies: ReadonlyMap<string, Assembly>;

  constructor(assemblies: readonly Assembly[]) {
    this.assemblies = new Map(assemblies.map(assembly => [assembly.id, assembly]));
  }

  get tooMany(): boolean {
    return this.paths.length > MOST_USES;
  }

  /** Gives the paths of the parts in this use. */
  enter(assembly: Assembly, path: string, around: readonly string[]): readonly string[] {
    const within = (id: string) => (path === '' ? id : `${path}.${id}`);
    const paths: string[] = [];
    for (const rule of [...assembly.parts, ...assembly.stacks]) {
      this.parts.push({ path: within(rule.id), rule });
      paths.push(within(rule.id));
    }
    this.paths.push(...paths);
    for (const { id, assembly: name } of assembly.places) {
      const inner = this.assemblies.get(name);
      if (inner === undefined || this.tooMany) continue;
      if (around.includes(name)) {
        this.inItself = inner;
        continue;
      }
      this.used.add(name);
      this.paths.push(within(id));
      paths.push(...this.enter(inner, within(id), [...around, name]));
    }
    this.addRules(assembly, within, paths);
    return paths;
  }

  private addRules(
    assembly: Assembly,
    within: (id: string) => string,
    paths: readonly string[],
  ): void {
    const picked = (selector: string) => paths.filter(path => picks(within(selector), path));
    for (const rule of assembly.joints) {
      const [first, second] = [picked(rule.from.path), picked(rule.into.path)];
      this.joints.push({ name: within(rule.id), rule, first, second });
    }
    for (const rule of assembly.notches) {
      const [first, second] = [picked(rule.cut.path), picked(rule.over.path)];
      const both = rule.share === 'half' ? [...first, ...second] : first;
      this.notches.push({ name: within(rule.id), rule, first: both, second });
    }
  }
}
