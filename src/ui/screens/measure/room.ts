import { formatLength } from '../../../measure/format-length.js';
import { hanging } from '../../../text/page-lines.js';
import { roomOver, roomUnder, strongRows, textColumns } from '../../widgets/answer.js';
import { plainer } from '../../widgets/facts.js';
import type { ListRoom } from '../../widgets/list.js';
import { numberedLines } from '../../widgets/list-keys.js';
import { BLANK, plainRows, type Row } from '../../widgets/rows.js';
import { isAtEnd, type ScrollRoom } from '../../widgets/scroll.js';
import { choicesOf, choiceWords } from './choices.js';
import { questionWords } from './question-words.js';
import type { AnswerStage, Bench, Stage } from './state.js';

type ListStage = Extract<Stage, { readonly kind: 'what' | 'again' }>;

/** The lines of a list, with the number key of the first nine. */
export function listLines(stage: ListStage, bench: Bench): readonly string[] {
  return numberedLines(linesOf(stage, bench));
}

function linesOf(stage: ListStage, bench: Bench): readonly string[] {
  const { build } = bench;
  if (stage.kind === 'what') return choicesOf(bench).map(choice => choiceWords(choice, build));
  const planned = formatLength(stage.row.planned.value, build.plan.display);
  return ['Measure it again', `Count on the planned ${planned} again`];
}

/** What the question leaves of the window. */
export function listRoom(stage: ListStage, bench: Bench): ListRoom {
  return roomUnder(questionWords(stage, bench), linesOf(stage, bench).length, bench.at);
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

export function bodyRoom(stage: AnswerStage, bench: Pick<Bench, 'at'>): ScrollRoom {
  return roomOver(bodyRows(stage, bench).length, bench.at);
}

/** Nothing of it is left below the window. */
export function isReadToEnd(stage: AnswerStage, bench: Pick<Bench, 'at'>): boolean {
  return isAtEnd(stage.top, bodyRoom(stage, bench));
}
