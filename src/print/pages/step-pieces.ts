import type { Mm } from '../../measure/quantities.js';
import type { Step } from '../../plan/plan.js';
import { showsWhole } from '../kept-drawings.js';
import { beside, bound, lower, type Piece } from '../sheet/piece.js';
import { factPieces } from '../sheet/set-blocks.js';
import { itemPieces, type Measure, wordPieces } from '../sheet/set-words.js';
import type { Pack } from './pack.js';
import { checkIsMade } from './so-far.js';
import { carePieces, notePieces } from './step-care.js';
import { factsOf } from './step-facts.js';
import { bigPieces, headPieces } from './step-head.js';
import { notchPieces, picturePieces, wherePiece } from './step-pictures.js';

/** Heights of pictures, the first that lets a step stay on one page. */
const HEIGHTS = [66, 52, 40] as const;

/** A step as it is built from, kept on one page where it can be; else parted after what to do. */
export function stepPieces(step: Step, number: number, pack: Pack): readonly Piece[] {
  const said = [...sayPieces(step, number, pack), ...notchPieces(step, pack)];
  const told = toldPieces(step, number, pack);
  const head = headPieces(step, number, pack);
  const pictures = picturePieces(step, pack);
  const begin = (high: Mm) => [...head, ...pictures(high), ...said];
  for (const high of HEIGHTS) {
    const whole = [...begin(high), ...told];
    if (heightOf(whole) <= pack.frame.height) return [bound(whole)];
  }
  return [bound(begin(HEIGHTS[0])), ...told];
}

function heightOf(pieces: readonly Piece[]): Mm {
  return pieces.reduce((sum, one) => sum + one.above + one.height, 0);
}

/** With what, what to look at, what to mind, and why. */
function toldPieces(step: Step, number: number, pack: Pack): readonly Piece[] {
  const { measure, plan } = pack;
  const before = plan.steps[number - 2];
  return [
    ...spacedOut(factPieces(factsOf(step, pack), measure)),
    ...step.look.flatMap((text, at) =>
      itemPieces(text, checkIsMade(step, at, pack) ? 'ticked' : 'box', measure),
    ),
    ...carePieces(step, number, pack),
    ...(step.why === '' || step.why === before?.why
      ? []
      : wordPieces(`Why: ${step.why}`, measure, { size: 10, above: 1.5 })),
    ...notePieces(step, pack),
  ];
}

/** Where a step's boards stand nowhere yet, a small picture beside the words shows where they will be. */
function sayPieces(step: Step, number: number, pack: Pack): readonly Piece[] {
  const before = pack.plan.steps[number - 2];
  // Told for the step before already: a row of equal steps reads shorter.
  const plain = step.plain.join() === before?.plain.join() ? [] : step.plain;
  const said = (measure: Measure) => [
    ...bigPieces(step, measure),
    ...step.say.flatMap(text => itemPieces(text, 'dash', measure)),
    ...plain.flatMap((text, at) =>
      wordPieces(at === 0 ? `In plain words: ${text}` : text, measure, {
        size: 10,
        above: at === 0 ? 1.8 : 0.6,
      }),
    ),
  ];
  if (!showsWhole(step)) return said(pack.measure);
  const { width, rule } = pack.measure;
  const left = width - WHERE.width - 4;
  const picture = wherePiece(step, pack, WHERE);
  return [{ ...beside(bound(said({ width: left, rule })), picture, left + 4), above: 2 }];
}

const WHERE = { width: 62, height: 40 };

function spacedOut(pieces: readonly Piece[]): readonly Piece[] {
  return pieces.map((one, at) => (at === 0 ? lower(one, 2) : one));
}
