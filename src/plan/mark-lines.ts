import { formatLength } from '../measure/format-length.js';
import type { Display } from '../measure/quantities.js';
import { sameLength } from '../measure/tolerance.js';
import type { Model, Spread } from '../model/part.js';
import { onTheTape } from './on-tape.js';
import type { SpacingRow, Step } from './plan.js';

type Given = {
  readonly model: Model;
  readonly spacing: readonly SpacingRow[];
  readonly display: Display;
};

/**
 * Steps that set evenly spaced pieces, with the marks of their near edges: nobody leafs through a plan
 * with a pencil in the hand. Told where the pieces are set first, not again where the whole is put up.
 */
export function withMarks(steps: readonly Step[], given: Given): readonly Step[] {
  const told = new Set<string>();
  return steps.map(step => {
    if (step.phase !== 'assemble') return step;
    const fresh = spreadsSet(step, given.model).filter(spread => !told.has(keyOf(spread)));
    for (const spread of fresh) told.add(keyOf(spread));
    const rows = given.spacing.filter(row => fresh.some(spread => isOf(row, spread)));
    const lines = rows.flatMap(row => markLines(row, rows.length > 1, given.display));
    return lines.length === 0 ? step : { ...step, settings: [...lines, ...step.settings] };
  });
}

function keyOf({ within, spreads, layout }: Spread): string {
  return `${within} ${spreads} ${layout}`;
}

function spreadsSet({ bright }: Step, { parts, spreads }: Model): readonly Spread[] {
  const set = new Set(bright);
  const paths = new Set(parts.filter(({ id }) => set.has(id)).map(({ path }) => path));
  return spreads.filter(({ spreads: path }) => paths.has(path));
}

function isOf(row: SpacingRow, spread: Spread): boolean {
  return (
    row.id.startsWith(`${spread.layout}/`) &&
    row.count === spread.count &&
    sameLength(row.over.value, spread.over) &&
    sameLength(row.piece.value, spread.piece)
  );
}

function markLines(
  { name, marks, gap }: SpacingRow,
  isOneOfMany: boolean,
  display: Display,
): Step['settings'] {
  const unit = display.system === 'inch' ? / in$/ : / mm$/;
  const listed = marks.map(mark => formatLength(mark, display).replace(unit, '')).join(', ');
  const which = isOneOfMany ? `${name}: ` : '';
  const end = display.system === 'inch' ? 'in' : 'mm';
  return [
    { name: 'Marks', text: `${which}${listed} ${end} from one end, near edges` },
    { name: 'Gap', text: `${onTheTape(gap.value, display)}, to check with` },
  ];
}
