import type { Work } from '../work.js';
import { recomputeValues, setBasis } from './basis.js';
import { Columns } from './columns.js';
import { solveDual } from './dual-simplex.js';
import type { LinearProgram } from './linear-program.js';
import { newProgram } from './linear-program.js';

/**
 * Adds columns that let a longer piece stand in for the next shorter one, at no cost: a shorter piece is never worth
 * more. With them the prices settle sooner (J.M. Valério de Carvalho, Using extra dual cuts to accelerate
 * column generation, INFORMS Journal on Computing 17, 2005). `lengths`: longest first. `kind`: the number after the
 * last kind of board, for they are no boards.
 */
export function addSubstitutes(columns: Columns, lengths: number, kind: number): void {
  for (let i = 0; i + 1 < lengths; i++) columns.addSwap(kind, i, i + 1);
}

/**
 * The same program without the substitutes, at its best solution over the columns made so far. Undefined when figures
 * or work gave out on the way.
 */
export function withoutSubstitutes(
  program: LinearProgram,
  kinds: number,
  work: Work,
): LinearProgram | undefined {
  const { columns, lengths } = program;
  const number: number[] = [];
  const boards = new Columns();
  for (let j = 0; j < columns.size; j++) {
    const kind = columns.kind[j] as number;
    if (kind >= kinds) number.push(-1);
    else number.push(boards.add(kind, columns.cost[j] as number, columns.counts(j, lengths)));
  }
  const substitutes = [...number.keys()].filter(j => number[j] === -1);
  // One that is basic at 0 would stay: asking for a little less than none, unevenly, makes it leave.
  for (const step of [31, 57, 0]) {
    const little = (place: number): number =>
      step === 0 ? 0 : -slight * (1 + ((place * step) % 97) / 97);
    if (!fixAt(program, substitutes, little, work)) return undefined;
  }
  if (substitutes.some(j => program.columnPlace[j] !== -1)) return undefined;
  const clean = newProgram(boards, {
    demands: program.rowLower.slice(0, lengths),
    kindLimits: Array.from({ length: kinds }, () => undefined),
  });
  const head = program.head.map(variable =>
    variable < 0 ? variable : (number[variable] as number),
  );
  return setBasis(clean, head, work) ? clean : undefined;
}

const slight = 0.01;

/** Holds each of some columns at one value and solves again. */
function fixAt(
  program: LinearProgram,
  fixed: readonly number[],
  value: (place: number) => number,
  work: Work,
): boolean {
  fixed.forEach((j, place) => {
    program.lower[j] = value(place);
    program.upper[j] = value(place);
  });
  recomputeValues(program);
  return solveDual(program, Infinity, work).kind === 'optimal';
}
