import { sameLength } from '../measure/tolerance.js';
import type { CutRow, StopSetting } from './plan.js';

/** Settings of the stop in the order of sawing; equal lengths of a section at one setting, whatever they become. */
export function sawOrder(cutList: readonly CutRow[]): readonly StopSetting[] {
  const settings: StopSetting[] = [];
  for (const row of cutList.toSorted((a, b) => a.turn - b.turn)) {
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
