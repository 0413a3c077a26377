import { buyTable } from '../plan/pages/boards-page.js';
import { cutTable } from '../plan/pages/cut-page.js';
import { hardwareTable } from '../plan/pages/hardware-page.js';
import type { Plan } from '../plan/plan.js';
import { csvText } from '../text/table.js';

/** Which table a spreadsheet gets. */
export const CSV_TABLES = { cut: cutTable, boards: buyTable, hardware: hardwareTable } as const;
export type CsvTable = keyof typeof CSV_TABLES;

/** One table of the plan as CSV (RFC 4180). */
export function planCsv(plan: Plan, which: CsvTable): string {
  const table = CSV_TABLES[which](plan);
  return csvText(
    table.columns.map(column => column.title),
    table.rows,
  );
}
