import { sameLength } from '../measure/tolerance.js';
import type { Model } from '../model/part.js';
import type { StepRule } from '../recipe/recipe.js';
import { inSawOrder } from './cutting-order.js';
import type { CutRow, StopSetting } from './plan.js';
import { selectParts } from './select.js';

/** What is cut, and by which steps. */
export type ToSaw = {
  readonly cutList: readonly CutRow[];
  readonly rules: readonly StepRule[];
  readonly model: Model;
};

/**
 * Settings of the stop in the order of sawing: step by step as the recipe cuts them, and in each section by section
 * as in the cut list, those too short to be held first and then the others, longest first.
 */
export function sawOrder({ cutList, rules, model }: ToSaw): readonly StopSetting[] {
  const steps = rules
    .filter(({ cuts }) => cuts.length > 0)
    .map(({ cuts }) => new Set(selectParts(model, cuts).map(({ id }) => id)));
  const stepOf = ({ marks }: StopSetting) =>
    steps.findIndex(ids =>
      cutList.some(
        row => marks.some(it => it.mark === row.mark) && row.pieces.some(id => ids.has(id)),
      ),
    );
  const settings = inSawOrder(stopSettings(cutList), setting => setting);
  return settings.toSorted((a, b) => stepOf(a) - stepOf(b));
}

/** Equal lengths of a section at one setting, whatever they become. */
function stopSettings(rows: readonly CutRow[]): readonly StopSetting[] {
  const settings: StopSetting[] = [];
  for (const row of rows) {
    const at = settings.findIndex(
      setting =>
        setting.section === row.section && sameLength(setting.length.value, row.length.value),
    );
    const line = { mark: row.mark, name: row.name, count: row.count };
    const found = settings[at];
    if (found) {
      settings[at] = {
        ...found,
        count: found.count + row.count,
        marks: [...found.marks, line],
      };
      continue;
    }
    settings.push({
      id: `${row.section}/${settings.length + 1}`,
      section: row.section,
      length: row.length,
      count: row.count,
      marks: [line],
    });
  }
  return settings;
}
