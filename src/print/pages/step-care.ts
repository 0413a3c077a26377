import type { Step } from '../../plan/plan.js';
import type { Piece } from '../sheet/piece.js';
import { itemPieces, wordPieces } from '../sheet/set-words.js';
import type { Pack } from './pack.js';

/**
 * Each caution by its first line where the step before did not name it, else by its name. All of it
 * stands on the page of tools and cautions.
 */
export function carePieces(step: Step, number: number, { plan, measure }: Pack): readonly Piece[] {
  const before = new Set(plan.steps[number - 2]?.care ?? []);
  const named = plan.cautions.filter(({ id }) => step.care.includes(id));
  const fresh = named.filter(({ id }) => !before.has(id));
  const known = named.filter(({ id }) => before.has(id)).map(({ title }) => title);
  const lines = [
    ...fresh.map(({ title, lines: [first = ''] }) => `${title}: ${first}`),
    ...(known.length > 0 ? [`As before: ${known.join('; ')}.`] : []),
  ];
  return lines.flatMap((text, at) =>
    itemPieces(at === 0 ? `Mind! ${text}` : text, 'dash', measure, {
      size: 10,
      above: at === 0 ? 2 : 0.6,
    }),
  );
}

/** What the builder wrote down at a step. */
export function notePieces(step: Step, { build, measure }: Pack): readonly Piece[] {
  const notes = build?.progress.notes.filter(note => note.step === step.id) ?? [];
  return notes.flatMap(({ text }) =>
    wordPieces(`Note: ${text}`, measure, { bold: true, above: 1.5 }),
  );
}
