import { mistakeNamed } from '../../../materials/mistakes.js';
import { sourceText } from '../../../measure/figure-text.js';
import { hanging } from '../../../text/page-lines.js';
import { wrap } from '../../../text/wrap.js';
import type { Context } from '../../screen.js';
import { roomOver, roomUnder, strongRows, textColumns } from '../../widgets/answer.js';
import { plainer } from '../../widgets/facts.js';
import type { ListRoom } from '../../widgets/list.js';
import { BLANK, plainRows, type Row } from '../../widgets/rows.js';
import { isAtEnd, type ScrollRoom } from '../../widgets/scroll.js';
import { type ListStage, listLines } from './list-lines.js';
import { questionWords } from './question-words.js';
import type { Bench, Stage } from './state.js';

type At<Kind extends Stage['kind']> = Extract<Stage, { readonly kind: Kind }>;

/** What the question leaves of the window. */
export function listRoom(stage: ListStage, bench: Bench): ListRoom {
  return roomUnder(questionWords(stage, bench), listLines(stage, bench).length, bench.at);
}

/** The answer, or a rule page, as rows that may scroll. */
export function bodyRows(stage: At<'answer' | 'rule-page'>, { at }: Pick<Bench, 'at'>) {
  const columns = textColumns(at);
  return stage.kind === 'answer'
    ? answerRows(stage, columns, at)
    : pageRows(stage.page, columns, at);
}

export function bodyRoom(stage: At<'answer' | 'rule-page'>, bench: Pick<Bench, 'at'>): ScrollRoom {
  return roomOver(bodyRows(stage, bench).length, bench.at);
}

/** Nothing of it is left below the window. */
export function isReadToEnd(stage: At<'answer' | 'rule-page'>, bench: Pick<Bench, 'at'>): boolean {
  return isAtEnd(stage.top, bodyRoom(stage, bench));
}

function answerRows({ answer }: At<'answer'>, columns: number, { ascii }: Context) {
  const plain = plainer(ascii);
  return [
    ...strongRows(plain(answer.verdict), columns),
    BLANK,
    ...answer.lines.flatMap(line => plainRows(hanging('- ', plain(line), columns))),
  ];
}

function pageRows(id: string, columns: number, { ascii }: Context): readonly Row[] {
  const page = mistakeNamed(id);
  if (page === undefined) throw new Error(`no page about ${id}`);
  const plain = plainer(ascii);
  const listed = (heading: string, lines: readonly string[]): readonly Row[] => [
    BLANK,
    ...strongRows(heading, columns),
    ...lines.flatMap(line => plainRows(hanging('- ', plain(line), columns))),
  ];
  const bad = page.verdicts.map(({ when, verdict }) => `${verdict}: ${when}`);
  return [
    ...strongRows(plain(page.title), columns),
    ...bad.flatMap(line => plainRows(hanging('  ', plain(line), columns))),
    ...listed('Look', page.look),
    ...listed('Do', page.act),
    ...listed('Next time', page.next),
    BLANK,
    ...plainRows(wrap(plain(`From: ${sourceText(page.source)}`), columns)),
  ];
}
