import type { Display } from '../measure/quantities.js';
import type { Clash } from '../model/clashes.js';
import type { Model } from '../model/part.js';
import { thinnest } from '../model/setout-boards.js';
import { onTheTape } from './on-tape.js';

/** Boards that measured sizes push into each other by little, each pair of names once with the worst. */
export function tightWords(
  tight: readonly Clash[],
  { parts }: Model,
  display: Display,
): readonly string[] {
  const nameOf = new Map(parts.map(({ id, name }) => [id, name]));
  const worst = new Map<string, number>();
  for (const { a, b, where } of tight) {
    const pair = `${nameOf.get(a) ?? a} and ${(nameOf.get(b) ?? b).toLowerCase()}`;
    worst.set(pair, Math.max(worst.get(pair) ?? 0, thinnest(where)));
  }
  return [...worst].map(
    ([pair, by]) =>
      `${pair} meet ${onTheTape(by, display)} too early as measured: try it dry, plane or shim before it is fixed.`,
  );
}
