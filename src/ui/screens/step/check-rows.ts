import { hanging } from '../../../text/page-lines.js';
import { isCheckMade, isDone } from '../../../workbook/next-step.js';
import { plainer } from '../../widgets/facts.js';
import type { Row } from '../../widgets/rows.js';
import type { Move } from './next-move.js';
import type { Work } from './work-rows.js';

/** Rows of the checks, and at which of them the next one begins. */
export type Checks = { readonly rows: readonly Row[]; readonly next: number | undefined };

/** Checks as boxes to tick, the next one marked. */
export function checkRows({ step, build, at }: Work, move: Move, columns: number): Checks {
  const done = isDone(step, build.progress);
  const rows: Row[] = [];
  let next: number | undefined;
  step.look.forEach((text, number) => {
    const made = done || isCheckMade(step, number, build.progress);
    const isNext = move.kind === 'check' && move.check === number;
    if (isNext) next = rows.length;
    const lines = hanging(`[${made ? 'x' : ' '}] ${number + 1} `, plainer(at.ascii)(text), columns);
    rows.push(
      ...lines.map((line): Row => (isNext ? { text: line, tone: 'strong' } : { text: line })),
    );
  });
  return { rows, next };
}
