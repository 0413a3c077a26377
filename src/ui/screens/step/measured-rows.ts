import { formatLength } from '../../../measure/format-length.js';
import { finer } from '../../../plan/readings.js';
import { hanging } from '../../../text/page-lines.js';
import type { MeasureEvent } from '../../../workbook/measure-events.js';
import type { Build } from '../../screen.js';
import { plainer } from '../../widgets/facts.js';
import type { Row } from '../../widgets/rows.js';
import { toMeasure } from './to-measure.js';
import type { Work } from './work-rows.js';

/** What was measured at this step, and what is still wanted of the tape. */
export function measuredRows({ step, build, at }: Work, columns: number): readonly Row[] {
  const { found } = build.progress;
  const own = found.readings.filter(reading => reading.step === step.id);
  const last = own.findLast(({ kind }) => kind === 'first-measured');
  const lines = [
    ...(last === undefined ? [] : wordsOf(last, build)),
    ...sizeWords({ step, build }),
  ];
  const squares = own.filter(({ kind }) => kind === 'diagonals-measured');
  return [...lines, ...squares.flatMap(it => wordsOf(it, build))].flatMap(line =>
    hanging('Tape: ', plainer(at.ascii)(line), columns).map((text): Row => ({ text })),
  );
}

function sizeWords({ step, build }: Pick<Work, 'step' | 'build'>): readonly string[] {
  const { display } = build.plan;
  return toMeasure(step, build.plan).sizes.map(({ say, planned, measured }) => {
    const by = formatLength(planned.value, display);
    return measured === undefined
      ? `${say}, planned ${by}: enter it with s`
      : `${say}: ${formatLength(measured.value, finer(display))}, planned ${by}`;
  });
}

function wordsOf(reading: MeasureEvent, { plan }: Build): readonly string[] {
  const say = (mm: number) => formatLength(mm, finer(plan.display));
  if (reading.kind === 'first-measured') {
    const { measured, isRight } = reading;
    return [
      `first piece ${say(measured)}, ${isRight ? 'right' : 'not right: move the stop, cut one, measure it'}`,
    ];
  }
  if (reading.kind !== 'diagonals-measured') return [];
  return [`frame ${reading.number}: diagonals ${say(reading.one)} and ${say(reading.other)}`];
}
