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

export function reportText(totals: readonly SourceTotal[]): string {
  const sum = totals.reduce((all, { count }) => all + count, 0);
  const lines = totals.map(({ source, count }) => `${String(count).padStart(6)}  ${source}`);
  return [
    'rows held against their sources, in files where every test passed:',
    ...lines,
    `reference rows: ${sum}`,
  ].join('\n');
}

function rowsOf(module: TestModule): readonly CountedRows[] {
  const suites: readonly (TestModule | TestSuite)[] = [module, ...module.children.allSuites()];
  return suites.flatMap(suite => suite.meta().referenceRows ?? []);
}
