import { formatLength } from '../../../measure/format-length.js';
import { finer, isOutOfTrue, readingsOf } from '../../../plan/readings.js';
import { squareSize } from '../../../plan/square-words.js';
import type { Build } from '../../screen.js';
import { areSizesToCome } from './choices.js';
import type { Bench, ReadingStage, Stage } from './state.js';
import { plannedOf } from './typed.js';

const TO_COME = 'Frames and boxes are listed once there is one to measure.';

/** What is asked above a list or a line. */
export function questionWords(stage: Stage, bench: Bench): readonly string[] {
  const { plan } = bench.build;
  switch (stage.kind) {
    case 'what':
      return ['What have you measured?', ...(areSizesToCome(bench) ? [TO_COME] : [])];
    case 'again':
      return [
        `${stage.row.say}: measured ${formatLength(stage.row.measured?.value ?? 0, finer(plan.display))}, which counts.`,
      ];
    case 'reading':
      return readingQuestion(stage, plan);
    case 'answer':
      return [];
  }
}

function readingQuestion(
  { of, read }: ReadingStage,
  { display }: Build['plan'],
): readonly string[] {
  const planned = formatLength(plannedOf(of), display);
  switch (of.kind) {
    case 'length':
      return [
        `${of.row.say}?`,
        `By the plan ${planned}. Measure at several places or boards, one line for each; enter on an empty line when that is all.`,
      ];
    case 'first':
      return [
        'How long is the first piece?',
        `It should be ${planned}. Hook the tape on the sawn end and pull it straight.`,
      ];
    case 'diagonals':
      return [
        read.length === 0 ? 'Corner to corner, the first way?' : 'And the other way?',
        `Outside, over the boards: ${squareSize(of.frame, display)}. Both should be ${planned}.`,
      ];
  }
}

/** The readings so far, and what they come to. */
export function readWords({ of, read }: ReadingStage, { plan }: Build): string {
  if (read.length === 0) return '';
  const say = (mm: number) => formatLength(mm, finer(plan.display));
  const listed = read.map(say).join(', ');
  if (of.kind !== 'length' || read.length < 2) return `So far: ${listed}`;
  const found = readingsOf(read, of.row, plan.display);
  const { value, spread } = found;
  if (isOutOfTrue(found, of.row)) return `So far: ${listed}; not parallel, ${say(spread)} apart`;
  const counts = { average: 'average', least: 'the least', most: 'the most' }[of.row.take];
  return `So far: ${listed}; ${counts} ${say(value)}, ${say(spread)} apart`;
}
