import type { Reporter, TestModule, TestSuite } from 'vitest/node';
import type { CountedRows } from './reference-rows.js';

/** Tells at the end of a run how many published rows its tests held the program against, by source. */
export class ReferenceReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const counted = countRows(modules.filter(module => module.ok()).flatMap(rowsOf));
    if (counted.length > 0) process.stdout.write(`\n${reportText(counted)}\n`);
  }
}

export type SourceTotal = { readonly source: string; readonly count: number };

/** How many different rows each source gave; the same row in two files counts once. */
export function countRows(counted: readonly CountedRows[]): readonly SourceTotal[] {
  const bySource = new Map<string, Set<string>>();
  for (const { source, rows } of counted) {
    bySource.set(source, new Set([...(bySource.get(source) ?? []), ...rows]));
  }
  return [...bySource]
    .map(([source, rows]) => ({ source, count: rows.size }))
    .sort((a, b) => b.count - a.count || a.source.localeCompare(b.source));
}

/** Rows remembered from a publication are told apart: they are no check against the printed page. */
export function reportText(totals: readonly SourceTotal[]): string {
  const remembered = totals.filter(({ source }) => source.includes('memory'));
  const seen = totals.filter(total => !remembered.includes(total));
  return [
    'rows held against their sources, in files where every test passed:',
    ...seen.map(lineOf),
    ...remembered.map(lineOf),
    `rows from memory, not counted: ${sumOf(remembered)}`,
    `reference rows: ${sumOf(seen)}`,
  ].join('\n');
}

function lineOf({ source, count }: SourceTotal): string {
  return `${String(count).padStart(6)}  ${source}`;
}

function sumOf(totals: readonly SourceTotal[]): number {
  return totals.reduce((all, { count }) => all + count, 0);
}

function rowsOf(module: TestModule): readonly CountedRows[] {
  const suites: readonly (TestModule | TestSuite)[] = [module, ...module.children.allSuites()];
  return suites.flatMap(suite => suite.meta().referenceRows ?? []);
}
