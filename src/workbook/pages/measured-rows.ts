import { formatLength } from '../../measure/format-length.js';
import type { Mm } from '../../measure/quantities.js';
import { finer } from '../../plan/readings.js';
import { dayWords } from '../clock-words.js';
import type { MeasureEvent } from '../measure-events.js';
import type { Recorded } from './build-record-page.js';

/** What the tape showed, beside what was planned: the piece as it was really built. */
export function measuredRows(
  { plan, progress }: Pick<Recorded, 'plan' | 'progress'>,
  zone?: string,
): readonly string[] {
  return progress.found.readings.map(
    event => `${dayWords(event.atMs, zone)}: ${measuredWords(event, plan)}`,
  );
}

function measuredWords(event: MeasureEvent, plan: Recorded['plan']): string {
  const length = (value: Mm) => formatLength(value, finer(plan.display));
  const title = plan.steps.find(({ id }) => id === event.step)?.title ?? 'a step';
  switch (event.kind) {
    case 'size-measured': {
      const row = plan.measures.find(({ id }) => id === event.what);
      const planned = row === undefined ? '' : `, planned ${length(row.planned.value)}`;
      const readings = event.readings.map(length).join(', ');
      const many = event.readings.length > 1 ? ` (readings ${readings})` : '';
      const counts = event.isTaken ? 'built by it' : 'left as planned';
      return `${row?.say ?? event.what}: ${length(event.value)}${many}${planned}; ${counts}.`;
    }
    case 'measure-dropped': {
      const row = plan.measures.find(({ id }) => id === event.what);
      return `${row?.say ?? event.what}: as planned again.`;
    }
    case 'first-measured':
      return `"${title}", first piece: ${length(event.measured)}, wanted ${length(event.planned)}; ${event.isRight ? 'right' : 'not right, the stop was set anew'}.`;
    case 'diagonals-measured':
      return `"${title}", frame ${event.number}: ${length(event.one)} and ${length(event.other)} from corner to corner.`;
  }
}
