import { type Section, sectionNamed, sectionNames } from '../materials/section.js';
import { nearestWord } from '../measure/suggest.js';
import { type Scope, textOf } from '../recipe/evaluate.js';
import { isProblem } from '../recipe/parse-formula.js';
import type { Place } from '../recipe/place.js';
import type { Problem } from '../recipe/problem.js';
import type { BoardRule, Recipe } from '../recipe/recipe.js';
import type { Answers } from '../recipe/values.js';
import { type Measured, measuredSection, NOTHING_MEASURED } from './measured.js';
import { type LazyName, lengthValue } from './setout-scope.js';
import { Slate } from './setout-slate.js';
import type { StackWish } from './stack.js';

/** What every assembly of one piece stands on: the recipe, the answers, the wood. */
export class Ground {
  readonly slate = new Slate();
  /** Filled as stacks are set out: each assembly of other sizes once. */
  readonly stacks: StackWish[] = [];
  private readonly sections = new Map<string, Section | Problem>();

  constructor(
    readonly recipe: Recipe,
    readonly answers: Answers,
    private readonly wood: { readonly wet: boolean; readonly measured?: Measured },
  ) {}

  get measured(): Measured {
    return this.wood.measured ?? NOTHING_MEASURED;
  }

  /** The section of a kind of board, chosen in the scope of the whole piece. */
  sectionOf(board: string, scope: Scope, at: Place): Section | Problem {
    const known = this.sections.get(board);
    if (known !== undefined) return known;
    const rule = this.recipe.boards.find(({ id }) => id === board);
    if (rule === undefined) {
      const ids = this.recipe.boards.map(({ id }) => id);
      return unknown('board', { name: board, near: nearestWord(board, ids), at });
    }
    const section = this.chosen(rule, scope);
    // A round of names is no answer yet: whoever began it will have one.
    if (!isProblem(section) || section.kind.is !== 'circular') this.sections.set(board, section);
    return section;
  }

  /** `rail.width` and `rail.thickness` for each kind of board. */
  boardNames(scope: Scope): readonly (readonly [string, LazyName])[] {
    return this.recipe.boards.flatMap(({ id, at }) =>
      (['width', 'thickness'] as const).map(side => {
        const work = () => {
          const section = this.sectionOf(id, scope, at);
          return isProblem(section) ? section : lengthValue(section[side]);
        };
        return [`${id}.${side}`, { at, work }] as const;
      }),
    );
  }

  private chosen(rule: BoardRule, scope: Scope): Section | Problem {
    const name = textOf(rule.section, scope);
    if (typeof name !== 'string') return name;
    const near = () => nearestWord(name, sectionNames());
    const section = sectionNamed(name, this.wood.wet);
    if (section !== undefined) return measuredSection(section, this.measured);
    return unknown('section', { name, near: near(), at: rule.section.at });
  }
}

/** A reference of the recipe to something that is not there. */
export function unknown(
  target: 'board' | 'section' | 'part' | 'layout' | 'assembly' | 'question',
  {
    name,
    near,
    at,
  }: { readonly name: string; readonly near: string | undefined; readonly at: Place },
): Problem {
  return { kind: { is: 'unknown-target', target, name, near }, at };
}
