import { MISTAKES, mistakeNamed } from '../../../materials/mistakes.js';
import { sourceText } from '../../../measure/figure-text.js';
import { hanging } from '../../../text/page-lines.js';
import { wrap } from '../../../text/wrap.js';
import type { Build, Context } from '../../screen.js';
import { plainer } from '../../widgets/facts.js';
import type { ListRoom } from '../../widgets/list.js';
import { BLANK, plainRows, type Row } from '../../widgets/rows.js';
import { limitTop, type ScrollRoom } from '../../widgets/scroll.js';
import { choicesOf, choiceWords } from './choices.js';
import { type Bench, SLIPS, type Stage } from './state.js';

type At<Kind extends Stage['kind']> = Extract<Stage, { readonly kind: Kind }>;
type ListStage = At<'piece' | 'what' | 'section' | 'rule-pages'>;

/** Wider lines are hard to follow, however wide the window. */
const WIDEST = 76;

export function textColumns({ size }: Context): number {
  return Math.min(WIDEST, size.columns);
}

/** What is asked above a list or a line. */
export function questionWords(stage: Stage): readonly string[] {
  switch (stage.kind) {
    case 'piece':
      return ['Stop the saw first. What is it about?'];
    case 'what':
      return [`What happened to ${stage.choice.row.mark}, ${stage.choice.row.name.toLowerCase()}?`];
    case 'section':
      return ['Which board is it?'];
    case 'rule-pages':
      return ['What went wrong?'];
    case 'left':
      return [
        `How much of ${stage.choice.row.mark} is sound?`,
        'The longest stretch with straight edges, no crack and no wrong cut in it. Nothing typed: none of it.',
      ];
    case 'board':
      return [`How long is the ${stage.section}?`, 'From end to end, before squaring.'];
    default:
      return [];
  }
}

/** The lines of a list, with the number key of the first nine. */
export function listLines(stage: ListStage, build: Build): readonly string[] {
  return linesOf(stage, build).map((text, at) => `${at < 9 ? at + 1 : ' '}  ${text}`);
}

function linesOf(stage: ListStage, build: Build): readonly string[] {
  switch (stage.kind) {
    case 'piece':
      return choicesOf(build).map(choice => choiceWords(choice, build));
    case 'what':
      return SLIPS.map(({ say }) => say);
    case 'section':
      return build.plan.purchases.map(({ section }) => section);
    case 'rule-pages':
      return MISTAKES.map(({ title }) => title);
  }
}

/** What the question, a blank row and the position leave of the window. */
export function listRoom(stage: ListStage, { build, at }: Bench): ListRoom {
  const asked = questionWords(stage).flatMap(text => wrap(text, textColumns(at))).length;
  return { count: linesOf(stage, build).length, height: Math.max(1, at.size.rows - asked - 2) };
}

/** The answer, or a rule page, as rows that may scroll. */
export function bodyRows(stage: At<'answer' | 'rule-page'>, { at }: Pick<Bench, 'at'>) {
  const columns = textColumns(at);
  return stage.kind === 'answer'
    ? answerRows(stage, columns, at)
    : pageRows(stage.page, columns, at);
}

/** The last row says what the big key does. */
export function bodyRoom(stage: At<'answer' | 'rule-page'>, bench: Pick<Bench, 'at'>): ScrollRoom {
  const height = Math.max(1, bench.at.size.rows - 1);
  return { count: bodyRows(stage, bench).length, height };
}

/** Nothing of it is left below the window. */
export function isReadToEnd(stage: At<'answer' | 'rule-page'>, bench: Pick<Bench, 'at'>): boolean {
  const { count, height } = bodyRoom(stage, bench);
  return limitTop(stage.top, { count, height }) + height >= count;
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

function strongRows(text: string, columns: number): readonly Row[] {
  return wrap(text, columns).map((line): Row => ({ text: line, tone: 'strong' }));
}
