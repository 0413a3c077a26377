import { formatLength } from '../measure/format-length.js';
import type { Problem } from '../recipe/problem.js';
import { problemWords } from '../recipe/problem-words.js';
import type { Plan } from './plan.js';

/** More of them only say the same of the next panel. */
const MOST_TOLD = 3;

/**
 * Why the piece cannot stand with a length that was measured, and what to do: in the names of its pieces, for somebody
 * at the bench. The words of a recipe's author name ids and axes.
 */
export function refusalWords(problems: readonly Problem[], plan: Plan): readonly string[] {
  const said = [...new Set(worstFirst(problems).map(problem => saidOf(problem, plan)))];
  const rest = said.length - MOST_TOLD;
  return [
    ...said.slice(0, MOST_TOLD),
    ...(rest > 0 ? [`And ${rest} more of that kind.`] : []),
    'Measure it once more. If it stays so, the joints as drawn do not close with it: sort out the boards that are that far off, or plane or pack them to the planned size.',
  ];
}

/** Of two kinds of piece that stand in each other only the worst place is told. */
function worstFirst(problems: readonly Problem[]): readonly Problem[] {
  const by = ({ kind }: Problem) => (kind.is === 'boards-overlap' ? Math.min(...kind.sides) : 0);
  const sorted = problems.toSorted((a, b) => by(b) - by(a));
  const known = new Set<string>();
  return sorted.filter(({ kind }) => {
    if (kind.is !== 'boards-overlap') return true;
    const pair = [kind.a, kind.b].map(rowOf).toSorted().join(' ');
    if (known.has(pair)) return false;
    known.add(pair);
    return true;
  });
}

/** `end_panel/left.post/2` and `end_panel/right.post/1` are of one row. */
function rowOf(id: string): string {
  return withoutNumber(id).replaceAll(/\/\w+/g, '');
}

function saidOf(problem: Problem, plan: Plan): string {
  const { kind } = problem;
  switch (kind.is) {
    case 'boards-overlap': {
      const by = formatLength(Math.min(...kind.sides), plan.display);
      return `${nameOf(kind.a, plan)} and ${nameOf(kind.b, plan).toLowerCase()} would stand ${by} inside each other.`;
    }
    case 'never-touches':
      return `${kind.joint}: the ${nameOf(kind.from, plan).toLowerCase()} and the ${nameOf(kind.into, plan).toLowerCase()} would not touch, so no screw can draw them together.`;
    case 'never-overlaps':
      return `${kind.notch}: the ${nameOf(kind.cut, plan).toLowerCase()} would miss the ${nameOf(kind.over, plan).toLowerCase()}, so there is nothing to notch.`;
    case 'nothing-left':
      return `${nameOf(kind.part, plan)}: its notches would leave nothing of it.`;
    default:
      return problemWords(problem).problem;
  }
}

/** A piece by its id or its path in the recipe: `end_panel/left.infill/4`, of which there were three, `end_panel.post`. */
function nameOf(which: string, { model }: Plan): string {
  const row = withoutNumber(which);
  const part = model.parts.find(({ id, path }) => path === which || withoutNumber(id) === row);
  return part?.name ?? which;
}

function withoutNumber(id: string): string {
  return id.replace(/\/\d+$/, '');
}
