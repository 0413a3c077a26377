import { inches } from '../measure/inch.js';
import type { Display, Mm } from '../measure/quantities.js';
import { atMost, lessThan, sameLength } from '../measure/tolerance.js';
import type { Model, Part, Spread } from '../model/part.js';
import type { Axis } from '../recipe/recipe.js';
import type { CutPieces } from './as-cut.js';
import { gapYear } from './gap-year.js';
import { onTheRule, onTheTape } from './on-tape.js';
import type { GapYear } from './plan.js';
import type { Setting } from './setting.js';

/** A narrower strip is not worth a place in a row; a judgment of ours. */
const LEAST_STRIP: Mm = inches(1.5);

/**
 * How the row or its pieces have to change so that as many of them leave the better gap. Where a piece that sets the
 * length of the row is cut, the row stays as long as it is.
 */
export function withRemedy(
  year: GapYear,
  spread: Spread,
  {
    model,
    setting,
    cut,
  }: { readonly model: Model; readonly setting: Setting; readonly cut: readonly CutPieces[] },
): GapYear {
  const { gap, count, ends } = spread;
  const longer = (year.better.value - gap) * gapsOf(count, ends);
  if (year.verdict === 'fine' || count === 0 || sameLength(longer, 0)) return year;
  const isFixed = isRowCut(spread, model, cut);
  const words = isFixed
    ? stillWords(longer, year.better.value, spread, setting)
    : changeWords(longer, spread, setting.display);
  return { ...year, words: [...year.words, words] };
}

/** How many whole gaps lie in a row: n - 1, n + 1, or n with a half at each end. */
export function gapsOf(count: number, ends: Spread['ends']): number {
  if (ends === 'flush') return count - 1;
  return ends === 'gap' ? count + 1 : count;
}

function changeWords(longer: Mm, { count }: Spread, display: Display): string {
  const row = `make the row ${onTheTape(Math.abs(longer), display)}`;
  const change =
    longer > 0 ? `${row} longer, or ${ripWords(longer, count, display)}` : `${row} shorter`;
  return `For that with ${count} pieces, ${change}.`;
}

function ripWords(longer: Mm, count: number, display: Display): string {
  return `rip each ${onTheRule(longer / count, display)} narrower`;
}

/** What can be done in a row whose length is sawn: cut pieces stay as cut. */
function stillWords(longer: Mm, better: Mm, spread: Spread, setting: Setting): string {
  const { display } = setting;
  const { count } = spread;
  const fixed = 'The length of the row is cut and stays.';
  const leave = 'or leave it and tell the owner';
  if (longer > 0)
    return `${fixed} With ${count} pieces, ${ripWords(longer, count, display)}; ${leave}.`;
  const ways = [...endsWay(-longer, better, spread, setting), ...stripWay(better, spread, display)];
  if (ways.length === 0) return `${fixed} Leave it and tell the owner.`;
  return `${fixed} With ${count} pieces that far apart, ${ways.join('; or ')}; ${leave}.`;
}

/** What is too much goes to both ends, where that holds no finger in its turn. */
function endsWay(
  over: Mm,
  better: Mm,
  { ends, piece }: Spread,
  setting: Setting,
): readonly string[] {
  const planned = { flush: 0, gap: better, half: better / 2 }[ends];
  const open = planned + over / 2;
  if (gapYear(open, piece, setting).verdict !== 'fine') return [];
  return [`${onTheTape(open, setting.display)} stays open at each end`];
}

/** One more piece, as narrow as the better gaps leave room for. */
function stripWay(
  better: Mm,
  { over, piece, count, ends }: Spread,
  display: Display,
): readonly string[] {
  const width = over - count * piece - gapsOf(count + 1, ends) * better;
  if (lessThan(width, LEAST_STRIP) || lessThan(piece, width)) return [];
  return [`one more goes in, ripped to ${onTheTape(width, display)}`];
}

/** A piece that runs along the whole row is sawn: a seat rail under its slats, the rails of a panel beside its infill. */
function isRowCut({ spreads }: Spread, { parts }: Model, cut: readonly CutPieces[]): boolean {
  const row = parts.filter(({ path }) => path === spreads);
  const axis = (['x', 'y', 'z'] as const).find(it =>
    row.some(({ box }) => !sameLength(box.min[it], row[0]?.box.min[it] ?? 0)),
  );
  if (axis === undefined) return false;
  const sawn = new Set(cut.flatMap(({ pieces }) => pieces));
  return parts.some(
    part => sawn.has(part.id) && part.path !== spreads && runsAlong(part, row, axis),
  );
}

function runsAlong({ runs, box }: Part, row: readonly Part[], axis: Axis): boolean {
  const from = Math.min(...row.map(it => it.box.min[axis]));
  const to = Math.max(...row.map(it => it.box.max[axis]));
  return runs === axis && atMost(box.min[axis], from) && atMost(to, box.max[axis]);
}
