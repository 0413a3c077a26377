import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { planCsv } from '../../src/print/plan-csv.js';
import { shoppingCsv } from '../../src/print/shopping-csv.js';
import { planOf, project } from '../support/projects.js';

const PLAN = planOf(project('planter-bench'));

/** A general reader of CSV that holds to RFC 4180: CRLF after each record, as many cells in each. */
function read(text: string): readonly Readonly<Record<string, string>>[] {
  return parse(text, { columns: true, record_delimiter: '\r\n', relax_column_count: false });
}

describe('files for a spreadsheet, as a general library reads them', () => {
  test('the cut list: a record for each mark, as many pieces as there are parts', () => {
    const rows = read(planCsv(PLAN, 'cut'));
    expect(rows.map(row => row.Mark)).toEqual(PLAN.cutList.map(({ mark }) => mark));
    const pieces = rows.reduce((sum, row) => sum + Number(row.Count), 0);
    expect(pieces).toBe(PLAN.model.parts.length);
  });

  test('the shopping list: every board to buy, then everything else', () => {
    const rows = read(shoppingCsv(PLAN));
    const boards = rows.filter(row => row.Length !== '');
    expect(boards.reduce((sum, row) => sum + Number(row.Count), 0)).toBe(
      PLAN.purchases.reduce((sum, { boards: all }) => sum + all.length, 0),
    );
    expect(rows.length).toBe(boards.length + PLAN.hardware.length);
  });
});
