import type { Mm } from '../measure/quantities.js';
import { evaluate, lengthOf, type Scope } from '../recipe/evaluate.js';
import { isProblem } from '../recipe/parse-formula.js';
import type { Problem } from '../recipe/problem.js';
import type { Assembly, LayoutRule, PartRule } from '../recipe/recipe.js';
import type { Value } from '../recipe/values.js';
import type { Axis } from './part.js';
import { type Ground, unknown } from './setout-ground.js';
import { type LazyName, LazyScope, lengthValue, numberValue } from './setout-scope.js';
import { type EvenSpacing, type SpacingProblem, type SpreadAsk, spread } from './spacing.js';

/** A layout rule with its row solved. */
export type SolvedRow = {
  readonly rule: LayoutRule;
  /** The datum end, in the frame of the assembly. */
  readonly from: Mm;
  readonly ask: SpreadAsk;
  readonly spacing: EvenSpacing;
};

/** Where an assembly is used: the scope of the whole piece, and the uses that lead there. */
export type Use = { readonly whole: Scope; readonly path: string };

/** One assembly with the sizes it is given: the scope that its formulas are worked out in. */
export class Setting {
  readonly scope: Scope;
  private readonly rows = new Map<string, SolvedRow | Problem>();

  /** `use` is where it stands in the whole piece; the whole itself has none and gives only `outer`. */
  constructor(
    readonly ground: Ground,
    readonly assembly: Assembly,
    outer: Scope,
    use?: Use,
  ) {
    const names = new Map<string, LazyName>();
    this.path = use?.path ?? '';
    this.scope = new LazyScope(names, outer);
    this.whole = use?.whole ?? this.scope;
    if (use === undefined) {
      put(names, ground.boardNames(this.scope));
      put(names, this.measuredNames());
    }
    put(names, this.sizeNames());
    put(names, this.layoutNames());
  }

  readonly whole: Scope;
  /** `planter_box.side.`, the uses that it stands in. */
  readonly path: string;

  /** How far a part reaches along an axis: its length, its width or its thickness. */
  extentOf(part: PartRule, axis: Axis): Mm | Problem {
    if (axis === part.runs) return lengthOf(part.length, this.scope);
    const section = this.ground.sectionOf(part.board, this.whole, part.at);
    if (isProblem(section)) return section;
    return axis === part.face ? section.thickness : section.width;
  }

  /** The row of a layout, solved once. */
  row(id: string, at: PartRule['at']): SolvedRow | Problem {
    const known = this.rows.get(id);
    if (known !== undefined) return known;
    const rule = this.assembly.layouts.find(layout => layout.id === id);
    if (rule === undefined) return unknown('layout', { name: id, near: undefined, at });
    const solved = this.solved(rule);
    if (!isProblem(solved) || solved.kind.is !== 'circular') this.rows.set(id, solved);
    return solved;
  }

  private solved(rule: LayoutRule): SolvedRow | Problem {
    const part = this.assembly.parts.find(({ id }) => id === rule.spread);
    if (part === undefined) {
      return unknown('part', { name: rule.spread, near: undefined, at: rule.at });
    }
    const piece = this.extentOf(part, rule.along);
    if (typeof piece !== 'number') return piece;
    const lengths: Mm[] = [];
    for (const formula of [rule.from, rule.over, rule.want, rule.least, rule.most]) {
      const length = lengthOf(formula, this.scope);
      if (typeof length !== 'number') return length;
      lengths.push(length);
    }
    const [from = 0, over = 0, want = 0, least = 0, most = 0] = lengths;
    const ask: SpreadAsk = { over, piece, ends: rule.ends, want, least, most };
    const result = spread(ask);
    if (result.ok) return { rule, from, ask, spacing: result.spacing };
    return { kind: told(rule.id, result.problem), at: rule.at };
  }

  private sizeNames(): readonly (readonly [string, LazyName])[] {
    return this.assembly.sizes.map(({ id, formula, at }) => {
      const work = (): Value | Problem => {
        const measured = this.ground.measured.get(`${this.path}${id}`);
        if (measured !== undefined) return lengthValue(measured);
        const found = evaluate(formula, this.scope);
        return found.ok ? found.value : found.problem;
      };
      return [id, { at, work }] as const;
    });
  }

  /** Answers whose length was measured; sizes of those names stand in front of them. */
  private measuredNames(): readonly (readonly [string, LazyName])[] {
    const { at } = this.assembly;
    return [...this.ground.measured].map(([name, value]) => {
      return [name, { at, work: () => lengthValue(value) }] as const;
    });
  }

  /** `slats.count` and `slats.gap` for each layout. */
  private layoutNames(): readonly (readonly [string, LazyName])[] {
    return this.assembly.layouts.flatMap(({ id, at }) => {
      const from = (value: (spacing: EvenSpacing) => Value) => ({
        at,
        work: () => {
          const row = this.row(id, at);
          return isProblem(row) ? row : value(row.spacing);
        },
      });
      return [
        [`${id}.count`, from(({ count }) => numberValue(count))] as const,
        [`${id}.gap`, from(({ gap }) => lengthValue(gap))] as const,
      ];
    });
  }
}

function put(names: Map<string, LazyName>, more: readonly (readonly [string, LazyName])[]): void {
  for (const [name, lazy] of more) names.set(name, lazy);
}

function told(layout: string, problem: SpacingProblem): Problem['kind'] {
  if (problem.kind === 'not-a-run') {
    return { is: 'not-a-run', layout, over: problem.over, piece: problem.piece };
  }
  const { over, least, most } = problem.ask;
  const { fewer, more } = problem;
  return { is: 'no-count-fits', layout, over, least, most, fewer, more };
}
