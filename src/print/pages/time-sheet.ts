import { sessionTitle, standWords, timePage, turnCells } from '../../plan/pages/time-page.js';
import type { Session } from '../../plan/plan.js';
import type { Column } from '../../text/table.js';
import type { Piece } from '../sheet/piece.js';
import { blockPieces } from '../sheet/set-blocks.js';
import { tablePieces } from '../sheet/set-table.js';
import { headingPieces, itemPieces, titlePieces, wordPieces } from '../sheet/set-words.js';
import type { Pack } from './pack.js';

/** How the work falls into sessions: who does what when, with a box to tick for each step. */
export function timePieces(pack: Pack): readonly Piece[] {
  const { plan, measure } = pack;
  const { blocks } = timePage(plan);
  const first = blocks.findIndex(({ kind }) => kind === 'heading');
  const opening = first < 0 ? blocks : blocks.slice(0, first);
  const closing = first < 0 ? [] : blocks.slice(-1);
  return [
    ...titlePieces('Time plan', measure),
    ...blockPieces(opening, measure),
    ...plan.time.sessions.flatMap(session => sessionPieces(session, pack)),
    ...blockPieces(closing, measure).map((one, at) => (at === 0 ? { ...one, above: 5 } : one)),
  ];
}

function sessionPieces(session: Session, { plan, build, measure }: Pack): readonly Piece[] {
  const columns: readonly Column[] = [
    { title: 'When' },
    ...(plan.time.people === 1 ? [] : [{ title: 'Who' }]),
    { title: 'What', grow: true },
  ];
  const table = {
    columns,
    rows: session.turns.map(turn => turnCells(turn, plan)),
    ticks: session.turns.map(({ step }) => build?.progress.done.has(step) === true),
  };
  return [
    ...headingPieces(sessionTitle(session), measure),
    ...tablePieces(table, measure),
    ...standWords(session).flatMap(text => itemPieces(text, 'dash', measure)),
    ...wordPieces('', measure, { size: 4 }),
  ];
}
