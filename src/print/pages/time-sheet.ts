import { formatMinutes } from '../../measure/duration.js';
import { formatFigure } from '../../measure/figure-text.js';
import type { Session, Step } from '../../plan/plan.js';
import { count } from '../../text/plural.js';
import type { Piece } from '../sheet/piece.js';
import { headingPieces, itemPieces, titlePieces, wordPieces } from '../sheet/set-words.js';
import type { Pack } from './pack.js';
import { stepIsDone } from './so-far.js';

/** How the work falls into sessions, with a box to tick for each step. */
export function timePieces(pack: Pack): readonly Piece[] {
  const { plan, measure } = pack;
  const { time, display } = plan;
  const text = `About ${formatFigure(time.hands, display)} of work for ${count(time.people, 'person')}. A first estimate: ${time.hands.because}.`;
  return [
    ...titlePieces('Time plan', measure),
    ...wordPieces(text, measure),
    ...time.sessions.flatMap((session, at) => sessionPieces(session, at, pack)),
  ];
}

function sessionPieces(session: Session, at: number, pack: Pack): readonly Piece[] {
  const { plan, measure } = pack;
  const ends = session.endsWith === '' ? '' : `; ends with ${session.endsWith}`;
  const begun = new Set(plan.time.sessions[at - 1]?.steps ?? []);
  const steps = session.steps.flatMap(id => plan.steps.find(step => step.id === id) ?? []);
  return [
    ...headingPieces(
      `Session ${session.number}: about ${formatMinutes(session.minutes)}${ends}`,
      measure,
    ),
    ...steps.flatMap(step =>
      itemPieces(
        `${numberOf(step, pack)}. ${step.title}${begun.has(step.id) ? ', the rest of it' : ''}`,
        stepIsDone(step, pack) ? 'ticked' : 'box',
        measure,
      ),
    ),
  ];
}

function numberOf(step: Step, { plan }: Pack): number {
  return plan.steps.indexOf(step) + 1;
}
