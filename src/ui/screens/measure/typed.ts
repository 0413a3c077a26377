import { formatLength } from '../../../measure/format-length.js';
import { parseLength } from '../../../measure/length.js';
import { type Parsed, unreadable } from '../../../measure/parsed.js';
import type { Mm } from '../../../measure/quantities.js';
import { isDiagonal } from '../../../plan/frame-square.js';
import { isFar } from '../../../plan/measures.js';
import type { Build } from '../../screen.js';
import { fieldText } from '../../widgets/field.js';
import type { Asked, ReadingStage } from './state.js';

/** What it should be by the plan. */
export function plannedOf(of: Asked): Mm {
  switch (of.kind) {
    case 'length':
      return of.row.planned.value;
    case 'first':
      return of.cutting.length;
    case 'diagonals':
      return of.frame.diagonal.value;
  }
}

/** The length that stands in the line; one that cannot be meant is refused with what it should be near. */
export function typedReading({ of, field }: ReadingStage, { plan }: Build): Parsed<Mm> {
  const { display } = plan;
  const length = parseLength(fieldText(field), display.system);
  if (!length.ok) return length;
  const planned = plannedOf(of);
  const sides = of.kind === 'diagonals' ? sidesOf(of) : undefined;
  const isOdd =
    sides === undefined ? isFar(length.value, planned) : !isDiagonal(length.value, sides);
  if (!isOdd) return length;
  return unreadable(
    `By the plan it is ${formatLength(planned, display)}: that is too far off.`,
    'Measure again, or look whether it is the right thing.',
  );
}

/** The outside of a frame, as numbers. */
export function sidesOf({ frame }: Extract<Asked, { readonly kind: 'diagonals' }>) {
  return { long: frame.long.value, wide: frame.wide.value };
}
