import { formatBoardLength } from '../../../measure/format-length.js';
import { parseLength } from '../../../measure/length.js';
import { type Parsed, parsed, unreadable } from '../../../measure/parsed.js';
import type { Mm } from '../../../measure/quantities.js';
import { lessThan } from '../../../measure/tolerance.js';
import type { Build } from '../../screen.js';
import { fieldText } from '../../widgets/field.js';
import type { Stage } from './state.js';

export type FieldStage = Extract<Stage, { readonly kind: 'left' | 'board' }>;

/** The length that stands in the line; of a spoiled piece an empty line means that nothing is left. */
export function typedLength(stage: FieldStage, build: Build): Parsed<Mm> {
  const { display } = build.plan;
  const text = fieldText(stage.field);
  if (stage.kind === 'left' && text.trim() === '') return parsed(0);
  const length = parseLength(text, display.system);
  if (!length.ok) return length;
  if (stage.kind === 'board') {
    return length.value > 0
      ? length
      : unreadable('A board of no length is none.', 'Measure it from end to end.');
  }
  const longest = longestBoard(stage.choice.row.section, build);
  if (!lessThan(longest, length.value)) return length;
  return unreadable(
    `That is longer than the longest board of the plan, ${formatBoardLength(longest, display)}.`,
    'Measure what is left of the piece.',
  );
}

/** The longest board that a piece of the section can have come from. */
function longestBoard(section: string, { plan, progress }: Build): Mm {
  const planned = plan.purchases
    .filter(purchase => purchase.section === section)
    .flatMap(({ boards }) => boards.map(({ length }) => length));
  const added = progress.rackChanges.flatMap(change =>
    change.kind === 'added' && change.section === section ? [change.length] : [],
  );
  return Math.max(0, ...planned, ...added);
}
