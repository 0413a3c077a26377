import type { LinearProgram } from './linear-program.js';
import { addExtraRow, columnValues, limitsOf } from './linear-program.js';

/** A whole number that the present solution breaks: a variable (as in `head`) and its broken value. */
export type Fraction = { readonly variable: number; readonly value: number };

const nearWhole = 1e-6;

/**
 * What to settle next, or undefined when every board count is whole: first the number of all boards, then of each
 * kind, then of boards of one kind that hold at least so many of one length, and single patterns last. Settling
 * numbers of boards moves the cost; settling single patterns hardly does. With one kind of board the cost says how
 * many there are, and asking for them in a row of its own would hide which lengths they are short for.
 */
export function chooseFraction(
  program: LinearProgram,
  extraRows: Map<string, number>,
): Fraction | undefined {
  const values = columnValues(program);
  const byCount = (): Fraction | undefined =>
    chooseCount(program, values) ?? chooseGroup(program, values, extraRows);
  const isOneKind = program.kindRow.length === 2;
  return (isOneKind ? undefined : byCount()) ?? choosePattern(values);
}

/** The number of all boards or of one kind that is off a whole number by more than `slack`, or undefined. */
export function chooseCount(
  program: LinearProgram,
  values: Float64Array,
  slack = nearWhole,
): Fraction | undefined {
  const byKind = new Array<number>(program.kindRow.length - 1).fill(0);
  for (let j = 0; j < values.length; j++) {
    const value = values[j] as number;
    const k = program.columns.kind[j] as number;
    if (value !== 0 && k < byKind.length) byKind[k] = (byKind[k] as number) + value;
  }
  const total = byKind.reduce((sum, count) => sum + count, 0);
  const all = { variable: -1 - program.totalRow, value: total };
  if (distance(total) > slack && splits(program, all)) return all;
  const kinds = byKind.map((value, k) => ({
    variable: -1 - (program.kindRow[k] as number),
    value,
  }));
  const open = kinds.filter(fraction => splits(program, fraction));
  return open[
    mostBroken(
      open.map(({ value }) => value),
      slack,
    )
  ];
}

/** False for a value that is off a whole number only because it misses its limits by a hair: both halves would be as before. */
function splits(program: LinearProgram, { variable, value }: Fraction): boolean {
  const [lower, upper] = limitsOf(program, variable);
  return value > lower && value < upper;
}

function distance(value: number): number {
  return Math.abs(value - Math.round(value));
}

function mostBroken(values: ArrayLike<number>, slack = nearWhole): number {
  let best = -1;
  let most = slack;
  for (let i = 0; i < values.length; i++) {
    const broken = distance(values[i] as number);
    if (broken > most) [best, most] = [i, broken];
  }
  return best;
}

/** The pattern with the largest fraction: using it once more leads soonest to a plan. */
function choosePattern(values: Float64Array): Fraction | undefined {
  let best = -1;
  let most = nearWhole;
  for (let j = 0; j < values.length; j++) {
    const value = values[j] as number;
    const part = value - Math.floor(value);
    if (part > most && part < 1 - nearWhole) [best, most] = [j, part];
  }
  return best < 0 ? undefined : { variable: best, value: values[best] as number };
}

/**
 * Of the length that the fewest patterns still in play hold, the pattern that is used most: with few ways left to get
 * that length, both halves settle much. The way to show that there is no plan; plans are found sooner by others.
 */
export function chooseNarrowest(program: LinearProgram): Fraction | undefined {
  const values = columnValues(program);
  const { start, piece } = program.columns;
  const ways = new Array<number>(program.lengths).fill(0);
  const favorite = new Array<number>(program.lengths).fill(-1);
  for (const j of program.active) {
    if (program.upper[j] === 0) continue;
    for (let at = start[j] as number; at < (start[j + 1] as number); at++) {
      const i = piece[at] as number;
      ways[i] = (ways[i] as number) + 1;
      if (distance(values[j] as number) <= nearWhole) continue;
      const other = favorite[i] as number;
      if (other < 0 || partOf(values[j]) > partOf(values[other])) favorite[i] = j;
    }
  }
  let best = -1;
  favorite.forEach((j, i) => {
    if (j < 0) return;
    const fewer = best < 0 ? -1 : (ways[i] as number) - (ways[best] as number);
    const isMore = fewer === 0 && partOf(values[j]) > partOf(values[favorite[best] as number]);
    if (fewer < 0 || isMore) best = i;
  });
  if (best < 0) return undefined;
  const variable = favorite[best] as number;
  return { variable, value: values[variable] as number };
}

function partOf(value = 0): number {
  return value - Math.floor(value);
}

type Group = { readonly kind: number; readonly piece: number; readonly least: number };

/** The group "boards of one kind with at least so many of one length" whose number is most broken. */
function chooseGroup(
  program: LinearProgram,
  values: Float64Array,
  extraRows: Map<string, number>,
): Fraction | undefined {
  const sums = new Map<string, { group: Group; sum: number }>();
  const { start, piece, amount, kind } = program.columns;
  values.forEach((value, j) => {
    if (value < nearWhole) return;
    for (let at = start[j] as number; at < (start[j + 1] as number); at++) {
      for (let least = 1; least <= (amount[at] as number); least++) {
        const group = { kind: kind[j] as number, piece: piece[at] as number, least };
        const key = `${group.kind} ${group.piece} ${least}`;
        const known = sums.get(key);
        if (known === undefined) sums.set(key, { group, sum: value });
        else known.sum += value;
      }
    }
  });
  const groups = [...sums].filter(([key, { sum }]) => {
    const row = extraRows.get(key);
    return row === undefined || splits(program, { variable: -1 - row, value: sum });
  });
  const best = groups[mostBroken(groups.map(([, { sum }]) => sum))];
  if (best === undefined) return undefined;
  const [key, { group, sum }] = best;
  const row = extraRows.get(key) ?? addExtraRow(program, membersOf(program, group));
  extraRows.set(key, row);
  return { variable: -1 - row, value: sum };
}

function membersOf(program: LinearProgram, group: Group): Uint8Array {
  const members = new Uint8Array(program.columns.size);
  for (let j = 0; j < members.length; j++) {
    const inside =
      program.columns.kind[j] === group.kind &&
      program.columns.amountOf(j, group.piece) >= group.least;
    members[j] = inside ? 1 : 0;
  }
  return members;
}
