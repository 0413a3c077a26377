import { formatMinutes } from '../../measure/duration.js';
import type { Step } from '../../plan/plan.js';
import { line, words } from '../sheet/mark.js';
import { beside, bound, type Piece, piece } from '../sheet/piece.js';
import { type Measure, TICK_BOX, tickBox, wordPieces } from '../sheet/set-words.js';
import { ascent, leading, SIZE } from '../sheet/type.js';
import type { Pack } from './pack.js';
import { stepIsDone } from './so-far.js';

const WHO = { lead: 'lead', helper: 'helper', both: 'together' } as const;
const BIG = 24;

/** Number and title of a step with a box to tick, who does it and how long it takes. */
export function headPieces(step: Step, number: number, pack: Pack): readonly Piece[] {
  const { measure } = pack;
  const done = stepIsDone(step, pack);
  const indent = TICK_BOX + 3.5;
  const about = `${WHO[step.who]}, about ${formatMinutes(step.minutes.value)}${done ? '; done' : ''}`;
  const inner = { ...measure, width: measure.width - indent };
  const title = bound([
    ...wordPieces(`${number}. ${step.title}`, inner, { size: 15, bold: true }),
    ...wordPieces(about, inner, { size: 10 }),
  ]);
  const tick = piece(TICK_BOX, tickBox({ x: 0.3, y: ascent(15) - TICK_BOX + 0.2 }, done));
  const rule = piece(0.5, [line({ x: 0, y: 0 }, { x: measure.width, y: 0 }, 0.3)]);
  return [
    { ...rule, above: 6, staysWithNext: true },
    { ...beside(tick, title, indent), above: 2, staysWithNext: true },
  ];
}

/** The one number to set or to hit, large. */
export function bigPieces({ big }: Step, { rule, width }: Measure): readonly Piece[] {
  if (big === undefined) return [];
  const wide = rule(big.text, BIG, true);
  const base = ascent(BIG);
  const number = words({ x: 0, y: base }, big.text, BIG, { bold: true });
  if (wide + 4 + rule(big.caption, SIZE.words, false) > width) {
    const caption = bound(wordPieces(big.caption, { rule, width }));
    return [piece(leading(BIG), [number], { above: 1 }), caption];
  }
  const caption = words({ x: wide + 4, y: base }, big.caption, SIZE.words);
  return [piece(leading(BIG), [number, caption], { above: 1 })];
}
