import type { Stretch } from '../../../measure/stretch.js';
import { adviceOnBoard } from '../../../plan/advice-board.js';
import {
  boardAdviceLines,
  boardThenWords,
  boardVerdict,
} from '../../../plan/advice-board-words.js';
import { buyWords } from '../../../plan/advice-words.js';
import { boardName } from '../../../plan/rack.js';
import { advance } from '../../../workbook/progress.js';
import { benchOf } from '../../bench-of.js';
import type { Build } from '../../screen.js';
import type { Answer } from './answer.js';
import type { BoardThere } from './bad-board.js';

export type BadBoard = {
  readonly section: string;
  readonly there: BoardThere;
  readonly bad: Stretch;
};

/** Worked out on the boards that are left, without writing anything down. */
export function answerToBadBoard(
  { section, there, bad }: BadBoard,
  build: Build,
  nowMs: number,
): Answer {
  const { display } = build.plan;
  const event = {
    kind: 'board-spoiled',
    atMs: nowMs,
    section,
    place: there.place,
    board: boardName(there.board),
    ...bad,
    then: '',
    buy: '',
  } as const;
  const work = advance(build.progress, event);
  const last = work.rackChanges.at(-1);
  const advice =
    last?.kind === 'board-spoiled' ? adviceOnBoard(last, { ...benchOf(build), work }) : undefined;
  if (advice === undefined) throw new Error(`no board ${there.place} of ${section} lies there`);
  return {
    verdict: boardVerdict(advice, display),
    lines: boardAdviceLines(advice, display),
    event: {
      ...event,
      then: boardThenWords(advice, display),
      buy: buyWords(advice, display),
    },
    page: 'board-twisted',
  };
}
