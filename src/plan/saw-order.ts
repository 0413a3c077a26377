import { sameLength } from '../measure/tolerance.js';
import { inSawOrder } from './cutting-order.js';
import type { CutRow, StopSetting } from './plan.js';

/**
 * Settings of the stop in the order of sawing: section by section as in the cut list, those too short to be held
 * first and then the others, longest first; equal lengths of a section at one setting whatever they become.
 */
export function sawOrder(rows: readonly CutRow[]): readonly StopSetting[] {
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
  return inSawOrder(settings, setting => setting);
}
