import { datumWords } from '../../../plan/advice-board.js';
import { boardName } from '../../../plan/rack.js';
import { pieceGroups } from './choices.js';
import type { Bench, Stage } from './state.js';

/** What is asked above a list or a line. */
export function questionWords(stage: Stage, bench: Bench): readonly string[] {
  switch (stage.kind) {
    case 'piece':
      return ['Stop whatever runs first. What is it about?', ...orderWords(bench)];
    case 'what':
      return [`What happened to ${stage.choice.row.mark}, ${stage.choice.row.name.toLowerCase()}?`];
    case 'section':
      return ['Which board is it?'];
    case 'rule-pages':
      return ['What went wrong?'];
    case 'bad-board':
      return ['Which one is bad?'];
    case 'bad-stretch':
      return [
        `Where is ${boardName(stage.there.board)} bad?`,
        `Measured from ${datumWords(stage.there.board)}: 30 to 38, or 80 to end. Nothing typed: all of it.`,
      ];
    case 'left':
      if (stage.what === 'short') {
        return [
          `What does ${stage.choice.row.mark} measure now?`,
          'From end to end, with the tape that marked the others. Nothing typed: none of it is sound.',
        ];
      }
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

/** In what order the pieces stand, where there are enough of them to look for one. */
function orderWords(bench: Bench): readonly string[] {
  const { atHand, others } = pieceGroups(bench);
  if (others.length === 0) return [];
  const first =
    atHand.length === 0 ? 'Pieces' : 'First what this step works on, then the other pieces';
  return [`${first} by mark.`];
}
