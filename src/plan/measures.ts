import { COMPUTED, type Figure, MEASURED } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import type { Mm } from '../measure/quantities.js';
import type { Measured } from '../model/measured.js';
import type { MeasureRule, StepRule } from '../recipe/recipe.js';
import type { CutRow } from './plan.js';

/** A length that can be measured, and what it is by the plan. */
export type MeasureRow = {
  /** `2x4.width`, `seat`, `end_panel.opening_height`. */
  readonly id: string;
  readonly say: string;
  /** `board`: a side of the boards of a section. `size`: a size of the piece. */
  readonly kind: 'board' | 'size';
  readonly take: MeasureRule['take'];
  /** Steps of the recipe at which it is measured; boards can be measured at any. */
  readonly steps: readonly string[];
  /** What it would be without this measurement. */
  readonly planned: Figure;
  /** None as long as the plan counts on the planned length. */
  readonly measured?: Figure;
};

type Given = {
  readonly rules: readonly StepRule[];
  /** The cut list before anything was measured. */
  readonly rows: readonly CutRow[];
  readonly measured: Measured;
  /** A size before anything was measured. */
  readonly planned: (path: string) => Mm | undefined;
};

/** All that can be measured on this piece: the boards of each section, then what the steps name. */
export function measureRows({ rules, rows, measured, planned }: Given): readonly MeasureRow[] {
  return [...boardRows(rows), ...sizeRows(rules, planned)].map(row => {
    const value = measured.get(row.id);
    if (value === undefined) return row;
    return { ...row, measured: figure(value, 'mm', 'with the tape, at the bench', MEASURED) };
  });
}

/**
 * Farther from the plan than a quarter, something else was measured, or the number was mistyped. A
 * judgment of ours.
 */
const FAR = 0.25;

export function isFar(measured: Mm, planned: Mm): boolean {
  return Math.abs(measured - planned) > planned * FAR;
}

/** True where a step of the plan, `cut-frame/2x4@457.20` for example, comes of that rule. */
export function isOfRule(step: string, rule: string): boolean {
  return step === rule || step.startsWith(`${rule}/`);
}

function boardRows(rows: readonly CutRow[]): readonly MeasureRow[] {
  const sections = [...new Map(rows.map(row => [row.section, row])).values()];
  return sections.flatMap(row =>
    (['width', 'thickness'] as const).map((side): MeasureRow => {
      const say = `${side === 'width' ? 'Width' : 'Thickness'} of the ${row.section}, on several boards`;
      const id = `${row.section}.${side}`;
      return { id, say, kind: 'board', take: 'average', steps: [], planned: row[side] };
    }),
  );
}

/** A size that several steps name is one row. */
function sizeRows(rules: readonly StepRule[], planned: Given['planned']): readonly MeasureRow[] {
  const found = new Map<string, MeasureRow>();
  for (const rule of rules) {
    for (const { size, say, take } of rule.measure) {
      const length = planned(size);
      if (length === undefined) continue;
      const steps = [...(found.get(size)?.steps ?? []), rule.id];
      const by = figure(length, 'mm', 'by the plan, before anything was measured', COMPUTED);
      found.set(size, { id: size, say, kind: 'size', take, steps, planned: by });
    }
  }
  return [...found.values()];
}
