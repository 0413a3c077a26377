import {
  BEFORE_TITLE,
  beforeRows,
  sessionNotes,
  sessionTitle,
  timeColumns,
  timePage,
  turnCells,
} from '../../plan/pages/time-page.js';
import type { Session } from '../../plan/plan.js';
import { isInGarage } from '../../plan/step-lasts.js';
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
    ...beforePieces(pack),
    ...plan.time.sessions.flatMap(session => sessionPieces(session, pack)),
    ...blockPieces(closing, measure).map((one, at) => (at === 0 ? { ...one, above: 5 } : one)),
  ];
}

function beforePieces({ plan, build, measure }: Pack): readonly Piece[] {
  const rows = beforeRows(plan);
  if (rows.length === 0) return [];
  const before = plan.steps.filter(step => !isInGarage(step));
  const ticks = before.map(({ id }) => build?.progress.done.has(id) === true);
  const table = { columns: timeColumns('About', plan), rows, ticks };
  return [
    ...headingPieces(BEFORE_TITLE, measure),
    ...tablePieces(table, measure),
    ...wordPieces('', measure, { size: 4 }),
  ];
}

function sessionPieces(session: Session, { plan, build, measure }: Pack): readonly Piece[] {
  const table = {
    columns: timeColumns('When', plan),
    rows: session.turns.map(turn => turnCells(turn, plan)),
    ticks: session.turns.map(({ step }) => build?.progress.done.has(step) === true),
  };
  return [
    ...headingPieces(sessionTitle(session), measure),
    ...tablePieces(table, measure),
    ...sessionNotes(session, plan).flatMap(text => itemPieces(text, 'dash', measure)),
    ...wordPieces('', measure, { size: 4 }),
  ];
}
