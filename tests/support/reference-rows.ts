import { afterAll } from 'vitest';

/** One published number or worked example that a test holds the program against, by its source. */
export type CountedRows = { readonly source: string; readonly rows: readonly string[] };

declare module 'vitest' {
  interface TaskMeta {
    referenceRows?: CountedRows[];
  }
}

/**
 * Rows of a test table that come from a publication, a standard, a field case or a sum on paper:
 * `test.each(referenceRows('Wood Handbook Table 4-3', ROWS))`. They are counted at the end of the run
 * under their source, each different row once, if every test of the file passed. Call it at the top of
 * a test file or in a describe; `source` is a name, or says the name of each row.
 */
export function referenceRows<Row>(
  source: string | ((row: Row) => string),
  rows: readonly Row[],
): readonly Row[] {
  const bySource = new Map<string, string[]>();
  for (const row of rows) {
    const name = typeof source === 'string' ? source : source(row);
    bySource.set(name, [...(bySource.get(name) ?? []), JSON.stringify(row)]);
  }
  const counted = [...bySource].map(([name, texts]) => ({ source: name, rows: texts }));
  // biome-ignore lint/correctness/noEmptyPattern: vitest wants the fixtures taken apart, also when none are used.
  afterAll(({}, suite) => {
    suite.meta.referenceRows = [...(suite.meta.referenceRows ?? []), ...counted];
  });
  return rows;
}
