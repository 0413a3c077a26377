import { formatLength } from '../../../measure/format-length.js';
import { finer, readingsOf } from '../../../plan/readings.js';
import { squareSize } from '../../../plan/square-words.js';
import { hanging } from '../../../text/page-lines.js';
import { wrap } from '../../../text/wrap.js';
import type { Build, Context } from '../../screen.js';
import { plainer } from '../../widgets/facts.js';
import type { ListRoom } from '../../widgets/list.js';
import { BLANK, plainRows, type Row } from '../../widgets/rows.js';
import { limitTop, type ScrollRoom } from '../../widgets/scroll.js';
import { choicesOf, choiceWords } from './choices.js';
import type { AnswerStage, Bench, ReadingStage, Stage } from './state.js';
import { plannedOf } from './typed.js';

type ListStage = Extract<Stage, { readonly kind: 'what' | 'again' }>;

/** Wider lines are hard to follow, however wide the window. */
const WIDEST = 76;

export function textColumns({ size }: Context): number {
  return Math.min(WIDEST, size.columns);
}

/** What is asked above a list or a line. */
export function questionWords(stage: Stage, { plan }: Build): readonly string[] {
  switch (stage.kind) {
    case 'what':
      return ['What have you measured?'];
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
  const { value, spread } = readingsOf(read, of.row, plan.display);
  const counts = { average: 'average', least: 'the least', most: 'the most' }[of.row.take];
  return `So far: ${listed}; ${counts} ${say(value)}, ${say(spread)} apart`;
}

/** The lines of a list, with the number key of the first nine. */
export function listLines(stage: ListStage, build: Build): readonly string[] {
  return linesOf(stage, build).map((text, at) => `${at < 9 ? at + 1 : ' '}  ${text}`);
}

function linesOf(stage: ListStage, build: Build): readonly string[] {
  if (stage.kind === 'what') return choicesOf(build).map(choice => choiceWords(choice, build));
  const planned = formatLength(stage.row.planned.value, build.plan.display);
  return ['Measure it again', `Count on the planned ${planned} again`];
}

/** What the question, a blank row and the position leave of the window. */
export function listRoom(stage: ListStage, { build, at }: Bench): ListRoom {
  const asked = questionWords(stage, build).flatMap(text => wrap(text, textColumns(at))).length;
  return { count: linesOf(stage, build).length, height: Math.max(1, at.size.rows - asked - 2) };
}

/** The answer as rows that may scroll. */
export function bodyRows({ answer }: AnswerStage, { at }: Pick<Bench, 'at'>): readonly Row[] {
  const columns = textColumns(at);
  const plain = plainer(at.ascii);
  return [
    ...strongRows(plain(answer.verdict), columns),
    ...answer.blocks.flatMap(({ title, lines }) => [
      BLANK,
      ...strongRows(plain(title), columns),
      ...lines.flatMap(line => plainRows(hanging('- ', plain(line), columns))),
    ]),
  ];
}

/** The last row says what the big key does. */
export function bodyRoom(stage: AnswerStage, bench: Pick<Bench, 'at'>): ScrollRoom {
  const height = Math.max(1, bench.at.size.rows - 1);
  return { count: bodyRows(stage, bench).length, height };
}

/** Nothing of it is left below the window. */
export function isReadToEnd(stage: AnswerStage, bench: Pick<Bench, 'at'>): boolean {
  const { count, height } = bodyRoom(stage, bench);
  return limitTop(stage.top, { count, height }) + height >= count;
}

function strongRows(text: string, columns: number): readonly Row[] {
  return wrap(text, columns).map((line): Row => ({ text: line, tone: 'strong' }));
}
